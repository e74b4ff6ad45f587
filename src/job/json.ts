/** What a file can hold. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** A plain object, and neither a list nor nothing. */
export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Alike in all that a file would say of them, whatever the order of their keys. */
export function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((entry, index) => isSame(entry, other[index]));
  if (!isRecord(one) || !isRecord(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && isSame(one[key], other[key]))
  );
}

/** JSON whose keys stand in alphabetical order at every depth, so that the same content is the same text. */
export const stableText = (value: unknown): string => JSON.stringify(value, inOrder);

function inOrder(_key: string, value: unknown): unknown {
  if (!isRecord(value)) return value;
  // Entries, not assignments: a key called __proto__ stays a key.
  return Object.fromEntries(
    Object.keys(value)
      .sort()
      .map((key) => [key, value[key]]),
  );
}
