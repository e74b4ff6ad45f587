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

/**
 * What was read of a part of a file, or what is wrong where that is not all that stands there: the library that checks shapes takes a list for an
 * object without keys.
 */
export const unchanged = <T>(read: T, json: unknown): T | string =>
  isSame(read, json) ? read : 'a list stands where an object should';

/** Names that every object of the language has a meaning for: as keys some readers drop them, so what stands under them would be lost. */
const RESERVED: readonly string[] = ['__proto__', 'constructor', 'prototype'];

/** Deeper than any file of ours by far, and no danger to what reads it step by step. Chosen here. */
const DEEPEST = 100;

/** Why a file with this in it is not taken, in words; undefined where nothing speaks against it. */
export function unsafeIn(json: unknown): string | undefined {
  const open: { value: unknown; depth: number }[] = [{ value: json, depth: 0 }];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { value, depth } = next;
    // JSON knows no Infinity: it would be written as null.
    if (typeof value === 'number' && !Number.isFinite(value)) return 'it has a number too large to be kept';
    if (typeof value !== 'object' || value === null) continue;
    if (depth === DEEPEST) return `it is nested more than ${DEEPEST} deep`;
    const key = Array.isArray(value) ? undefined : Object.keys(value).find((name) => RESERVED.includes(name));
    if (key !== undefined) return `it has a key called "${key}", which no shop's file has`;
    for (const entry of Object.values(value)) open.push({ value: entry, depth: depth + 1 });
  }
  return undefined;
}
