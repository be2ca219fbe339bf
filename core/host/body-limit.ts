import { maxAttachmentBytes } from '../../shared/attachments.ts';
import { ShopError } from '../../shared/errors.ts';
import { refusal } from './refusals.ts';

/** Calls without a file are small. */
const callBytes = 8 * 1024 * 1024;
/** A file a little too large still comes in, so that its refusal can name it. */
const fileBytes = maxAttachmentBytes + callBytes;

const takesFile = /\/attachments\/add$/;

interface Call {
  request: { url: URL; headers: Record<string, string | readonly string[] | undefined> };
}

const tooMuch = 'This is more than the program takes at once. Send less text.';
const tooMuchFile = 'A file may have at most 25 MB. Save it smaller, then add it again.';
const noLength = 'The program takes only calls that tell their length.';

/**
 * Refuses a call by the length it announces, before a byte of it is read; Node never hands over
 * more than was announced. The rest is read and dropped, so that the caller hears the sentence.
 */
export async function refuseLargeBody<T>({
  request,
  next,
}: Call & { next: () => Promise<T> }): Promise<T> {
  const { headers, url } = request;
  if (headers['transfer-encoding'] !== undefined) {
    throw refusal(new ShopError('BAD_INPUT', noLength));
  }
  const isFile = takesFile.test(url.pathname);
  const length = Number(headers['content-length'] ?? 0);
  if (length <= (isFile ? fileBytes : callBytes)) return next();
  throw refusal(new ShopError('BAD_INPUT', isFile ? tooMuchFile : tooMuch));
}
