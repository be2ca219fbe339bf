interface Answer {
  matched: boolean;
  response?: { body: unknown; headers: Record<string, string | string[] | undefined> } | undefined;
}

/** One chunk, put in before anybody reads: nothing is left to be put in when a reader has gone. */
function streamOf(bytes: Uint8Array): ReadableStream<Uint8Array> {
  return new ReadableStream({
    start(controller) {
      controller.enqueue(bytes);
      controller.close();
    },
  });
}

/**
 * Sends an answer that holds a file in one piece. Node's own stream of a form goes on writing after
 * its reader has left, and throws where nobody can catch it, which would end the core with every
 * window that talks to it.
 */
export async function wholeAnswer<T extends Answer>({
  next,
}: {
  next: () => Promise<T>;
}): Promise<T> {
  const result = await next();
  const { response } = result;
  if (response === undefined || !(response.body instanceof FormData)) return result;
  const form = new Response(response.body);
  const bytes = new Uint8Array(await form.arrayBuffer());
  const headers = {
    ...response.headers,
    'content-type': form.headers.get('content-type') ?? 'multipart/form-data',
    'content-length': String(bytes.length),
  };
  return { ...result, response: { ...response, headers, body: streamOf(bytes) } };
}
