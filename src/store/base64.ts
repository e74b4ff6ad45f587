/** Bytes as base64 (RFC 4648, section 4). In pieces of a multiple of three, so that they join without padding between. */
export function toBase64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += CHUNK)
    parts.push(btoa(String.fromCharCode(...bytes.subarray(at, at + CHUNK))));
  return parts.join('');
}

/** Divisible by three, and few enough to be the arguments of one call. */
const CHUNK = 3 * 8192;

/** The bytes that a base64 text stands for. Throws where it is none. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  const chars = atob(text);
  const bytes = new Uint8Array(chars.length);
  for (let i = 0; i < chars.length; i++) bytes[i] = chars.charCodeAt(i);
  return bytes;
}
