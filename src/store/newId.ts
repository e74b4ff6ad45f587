/** A text that no other record has: 80 random bits, enough for any shop. Works on plain http as well, unlike randomUUID. */
export const newId = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => DIGITS[byte % 32]).join('');

/** Of base 32 without letters that look like figures. */
const DIGITS = 'abcdefghijkmnpqrstuvwxyz23456789';
