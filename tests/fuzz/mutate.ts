import { pick, whole } from './target';

/** Mutations of bytes and of text. Each takes from none to a few of its parts away, doubles them, swaps them or puts others in. */

type Random = () => number;

/** Whole numbers at the edges of the types that files count in. Chosen here. */
const EDGES = [0, 1, 2, 3, 127, 128, 255, 256, 32767, 65535, 65536, 2147483647, 4294967295];

/** Floating-point numbers at the edges. Chosen here. */
const FLOATS = [0, -0, 1, -1, 1e-45, 1e-38, 1e8, 1.01e8, 3.4e38, NaN, Infinity, -Infinity];

/** Words at the edges of what is a number, and words of no number. Chosen here. */
const WORDS = [
  ...['0', '-0', '1', '-1', '2', '3', '4', '8', '9', '12', '255', '256', '65536', '2147483648', '4294967296'],
  ...['1e308', '1e309', '-1e999', '1e-400', '0.1', '.5', '5.', '1e1', '1.0', '+3', '--1', '1,5', '1.2.3'],
  ...['nan', 'NaN', 'inf', '-Infinity', '0x10', '1_000', '1e', '', '\\', '#', '/', '//', '1/1', '1//1', '-4'],
];

export function mutateBytes(bytes: Uint8Array, random: Random, other: Uint8Array): Uint8Array {
  let mutant = bytes;
  for (let left = 1 + whole(random, 3); left > 0; left--)
    mutant = pick(random, BYTE_STEPS)(mutant, random, other);
  return mutant;
}

type ByteStep = (bytes: Uint8Array, random: Random, other: Uint8Array) => Uint8Array;

const BYTE_STEPS: readonly ByteStep[] = [
  (bytes, random) => changed(bytes, (copy, at) => (copy[at]! ^= 1 << whole(random, 8)), random),
  (bytes, random) => changed(bytes, (copy, at) => (copy[at] = whole(random, 256)), random),
  (bytes, random) => changed(bytes, (copy, at) => (copy[at] = pick(random, EDGES) & 255), random),
  (bytes, random) =>
    written(bytes, random, 4, (view, at, little) => view.setUint32(at, pick(random, EDGES), little)),
  (bytes, random) =>
    written(bytes, random, 2, (view, at, little) => view.setUint16(at, pick(random, EDGES), little)),
  (bytes, random) =>
    written(bytes, random, 4, (view, at, little) => view.setFloat32(at, pick(random, FLOATS), little)),
  (bytes, random) =>
    joined(
      bytes,
      random,
      Uint8Array.from({ length: 1 + whole(random, 8) }, () => whole(random, 256)),
    ),
  // Taken away: a few bytes, or a longer stretch.
  (bytes, random) => without(bytes, whole(random, bytes.length + 1), 1 + whole(random, 4)),
  (bytes, random) => without(bytes, whole(random, bytes.length + 1), whole(random, bytes.length + 1)),
  (bytes, random) => bytes.subarray(0, whole(random, bytes.length + 1)),
  // Doubled, and moved.
  (bytes, random) => joined(bytes, random, stretch(bytes, random)),
  (bytes, random, other) => joined(bytes, random, stretch(other, random)),
  (bytes, random, other) =>
    both(bytes.subarray(0, whole(random, bytes.length + 1)), other.subarray(whole(random, other.length + 1))),
];

/** Steps of text keep the words whole. Text is Latin-1, one character a byte. */
export function mutateText(bytes: Uint8Array, random: Random, other: Uint8Array): Uint8Array {
  let text = textOf(bytes);
  for (let left = 1 + whole(random, 3); left > 0; left--)
    text = pick(random, TEXT_STEPS)(text, random, textOf(other));
  return Uint8Array.from(text, (char) => char.charCodeAt(0));
}

const textOf = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

type TextStep = (text: string, random: Random, other: string) => string;

const TEXT_STEPS: readonly TextStep[] = [
  ...words((parts, at, random) => (parts[at] = pick(random, WORDS))),
  ...words((parts, at, random) => (parts[at] = parts[wordAt(parts, random)]!)),
  ...words((parts, at) => (parts[at] = '')),
  ...words((parts, at) => (parts[at] = `${parts[at]} ${parts[at]}`)),
  ...words((parts, at, random) => (parts[at] = letterChanged(parts[at]!, random))),
  ...words((parts, at, random) => {
    const to = wordAt(parts, random);
    [parts[at], parts[to]] = [parts[to]!, parts[at]!];
  }),
  // The blank behind a word.
  ...words((parts, at, random) => {
    if (at + 1 < parts.length)
      parts[at + 1] = pick(random, [' ', '\n', '\r\n', '\r', '\t', '', '\\\n', '\v', '\0']);
  }),
  lines((all, at) => all.splice(at, 1)),
  lines((all, at) => all.splice(at, 0, all[at]!)),
  lines((all, at, random) => {
    const to = whole(random, all.length);
    [all[at], all[to]] = [all[to]!, all[at]!];
  }),
  (text, random, other) => {
    const [mine, theirs] = [text.split('\n'), other.split('\n')];
    mine.splice(whole(random, mine.length + 1), 0, pick(random, theirs));
    return mine.join('\n');
  },
];

/** Twice, as most of what a file says is in its words. */
function words(change: (parts: string[], at: number, random: Random) => void): TextStep[] {
  const step: TextStep = (text, random) => {
    const parts = text.split(/(\s+)/);
    change(parts, wordAt(parts, random), random);
    return parts.join('');
  };
  return [step, step];
}

const wordAt = (parts: readonly string[], random: Random): number =>
  2 * whole(random, (parts.length + 1) / 2);

function lines(change: (all: string[], at: number, random: Random) => void): TextStep {
  return (text, random) => {
    const all = text.split('\n');
    change(all, whole(random, all.length), random);
    return all.join('\n');
  };
}

function letterChanged(word: string, random: Random): string {
  const at = whole(random, word.length + 1);
  const letter = pick(random, [...'0123456789.-+eE,/#xyzvfn"\'<>=&:_ '.split(''), '']);
  return word.slice(0, at) + letter + word.slice(at + whole(random, 2));
}

function changed(
  bytes: Uint8Array,
  change: (copy: Uint8Array, at: number) => void,
  random: Random,
): Uint8Array {
  if (bytes.length === 0) return bytes;
  const copy = bytes.slice();
  change(copy, whole(random, copy.length));
  return copy;
}

function written(
  bytes: Uint8Array,
  random: Random,
  size: number,
  write: (view: DataView, at: number, little: boolean) => void,
): Uint8Array {
  if (bytes.length < size) return bytes;
  const copy = bytes.slice();
  write(new DataView(copy.buffer), whole(random, copy.length - size + 1), random() < 0.7);
  return copy;
}

function joined(bytes: Uint8Array, random: Random, more: Uint8Array): Uint8Array {
  const at = whole(random, bytes.length + 1);
  return both(both(bytes.subarray(0, at), more), bytes.subarray(at));
}

const without = (bytes: Uint8Array, at: number, count: number): Uint8Array =>
  both(bytes.subarray(0, at), bytes.subarray(at + count));

function stretch(bytes: Uint8Array, random: Random): Uint8Array {
  const at = whole(random, bytes.length + 1);
  return bytes.subarray(at, at + 1 + whole(random, 200));
}

function both(one: Uint8Array, other: Uint8Array): Uint8Array {
  const all = new Uint8Array(one.length + other.length);
  all.set(one);
  all.set(other, one.length);
  return all;
}
