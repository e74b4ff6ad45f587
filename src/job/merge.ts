import { isRecord, isSame } from './json';

/**
 * What becomes of one record that two have changed: every change of `mine` since `base`, on top of `theirs`. Objects are
 * merged key by key to any depth, and lists are taken whole; where both changed the same value, mine stands.
 */
export function merge<T>({ base, mine, theirs }: { base: T; mine: T; theirs: T }): T {
  return merged(base, mine, theirs) as T;
}

function merged(base: unknown, mine: unknown, theirs: unknown): unknown {
  if (isSame(base, mine)) return theirs;
  if (!isRecord(mine) || !isRecord(theirs)) return mine;
  const from = isRecord(base) ? base : {};
  const keys = [...new Set([...Object.keys(theirs), ...Object.keys(mine)])];
  return Object.fromEntries(
    keys
      .filter((key) => isKept(key, from, mine, theirs))
      .map((key) => [
        key,
        Object.hasOwn(mine, key) ? merged(own(from, key), mine[key], own(theirs, key)) : theirs[key],
      ]),
  );
}

/** A key that one of them took away is gone, unless the other has changed what stood there. */
function isKept(
  key: string,
  base: Record<string, unknown>,
  mine: Record<string, unknown>,
  theirs: Record<string, unknown>,
): boolean {
  if (Object.hasOwn(mine, key) && Object.hasOwn(theirs, key)) return true;
  if (!Object.hasOwn(base, key)) return true;
  const left = Object.hasOwn(mine, key) ? mine[key] : theirs[key];
  return !isSame(left, base[key]);
}

const own = (record: Record<string, unknown>, key: string): unknown =>
  Object.hasOwn(record, key) ? record[key] : undefined;
