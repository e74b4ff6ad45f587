import { stableText } from './json';
import type { Shop } from './shop';

/** The order of a shop's keys in its file; what a later version added follows, in alphabetical order. */
const ORDER = ['schema', 'name', 'scale', 'settings', 'foams', 'silicones', 'stock', 'pieces'];

/**
 * A shop as the text of its file: one line a key, and one a piece, a scan or a photo. The same shop is the same text: keys stand in
 * a fixed order, and there is no time of writing in it. Lists keep theirs.
 */
export const shopText = (shop: Shop): string => [...shopLines(shop)].join('');

/** The pieces that the text is joined from, so that the scans and photos of a large shop never stand in one string. */
export function* shopLines({ scans, photos, ...shop }: Shop): Generator<string> {
  const keys = [
    ...ORDER.filter((key) => key in shop),
    ...Object.keys(shop)
      .filter((key) => !ORDER.includes(key))
      .sort(),
  ];
  yield '{';
  for (const [index, key] of keys.entries()) {
    yield `${index === 0 ? '' : ','}\n${JSON.stringify(key)}:`;
    yield key === 'pieces' ? linesOf(shop.pieces) : stableText((shop as Record<string, unknown>)[key]);
  }
  yield* linesApart('scans', scans);
  if (photos !== undefined) yield* linesApart('photos', photos);
  yield '\n}\n';
}

function* linesApart(key: string, record: Readonly<Record<string, unknown>>): Generator<string> {
  yield `,\n${JSON.stringify(key)}:{`;
  const ids = Object.keys(record).sort();
  for (const [index, id] of ids.entries())
    yield `${index === 0 ? '' : ','}\n${JSON.stringify(id)}:${stableText(record[id])}`;
  yield `${ids.length === 0 ? '' : '\n'}}`;
}

function linesOf(record: Record<string, unknown>): string {
  const lines = Object.keys(record)
    .sort()
    .map((key) => `${JSON.stringify(key)}:${stableText(record[key])}`);
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}\n}`;
}
