/** SHA-256 as 64 hexadecimal digits, computed off the thread that answers the doors. */
export async function sha256Of(bytes: Uint8Array): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', bytes as BufferSource);
  return Buffer.from(digest).toString('hex');
}
