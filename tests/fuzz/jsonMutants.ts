import { pick, whole } from './target';

/** Mutations of a JSON text that keep it JSON: keys and values taken away, doubled, changed in kind, moved, and nested. */

type Random = () => number;
type Tree = { [key: string]: unknown } | unknown[];

/** Keys that objects have of themselves, and others that are hard to keep apart. */
const KEYS = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  '',
  '0',
  'id',
  'a',
  ' a',
  'é',
  'x'.repeat(300),
];

const VALUES: readonly unknown[] = [
  ...[
    null,
    true,
    false,
    0,
    -1,
    1,
    1.5,
    1e308,
    -0,
    1e-320,
    2 ** 53 + 2,
    '',
    'a',
    '0',
    '__proto__',
    '<b>x</b>',
  ],
  ...[
    '2026-02-30',
    'AAAA',
    'AA==',
    '*',
    'x'.repeat(1000),
    '\ud800',
    '\u0000',
    [],
    {},
    [[]],
    { a: 1 },
    ['a'],
    [null],
  ],
];

export function mutateJson(text: string, random: Random): string {
  const json = JSON.parse(text) as Tree;
  for (let left = 1 + whole(random, 3); left > 0; left--) pick(random, STEPS)(json, random);
  return pick(random, WRITERS)(JSON.stringify(json), random);
}

type Step = (json: Tree, random: Random) => void;

const STEPS: readonly Step[] = [
  (json, random) => at(json, random, (tree, key) => remove(tree, key)),
  (json, random) => at(json, random, (tree, key) => remove(tree, key)),
  (json, random) => at(json, random, (tree, key) => set(tree, key, pick(random, VALUES))),
  (json, random) => at(json, random, (tree, key) => set(tree, key, pick(random, VALUES))),
  (json, random) => at(json, random, (tree) => set(tree, pick(random, KEYS), pick(random, VALUES))),
  (json, random) => at(json, random, (tree, key) => set(tree, pick(random, KEYS), get(tree, key))),
  (json, random) =>
    at(json, random, (tree, key) => {
      const value = get(tree, key);
      remove(tree, key);
      set(tree, pick(random, KEYS), value);
    }),
  (json, random) => at(json, random, (tree, key) => set(tree, key, bent(get(tree, key), random))),
  (json, random) => at(json, random, (tree, key) => set(tree, key, bent(get(tree, key), random))),
  // One part in the place of another.
  (json, random) =>
    at(json, random, (tree, key) =>
      at(json, random, (from, other) => set(tree, key, copy(get(from, other)))),
    ),
  (json, random) =>
    at(json, random, (one, key) =>
      at(json, random, (other, otherKey) => {
        const [a, b] = [copy(get(one, key)), copy(get(other, otherKey))];
        set(one, key, b);
        set(other, otherKey, a);
      }),
    ),
];

/** The value, a little off. */
function bent(value: unknown, random: Random): unknown {
  if (typeof value === 'number')
    return pick(random, [-value, value + 1, value * 1e9, value / 1e9, String(value), NaN]);
  if (typeof value === 'boolean') return !value;
  if (typeof value === 'string') {
    const cut = whole(random, value.length + 1);
    return pick(random, [
      value.slice(0, cut),
      value + value,
      value.slice(0, cut) + '*' + value.slice(cut),
      [value],
    ]);
  }
  if (Array.isArray(value))
    return pick(random, [value.concat(value), value.slice(1), { ...value }, value[0]]);
  return pick(random, [[value], null, Object.values(value ?? {}), JSON.stringify(value)]);
}

/** How the text is written, and what is done to it as a text. */
const WRITERS: readonly ((text: string, random: Random) => string)[] = [
  (text) => text,
  (text) => text,
  (text) => text,
  (text) => text,
  (text, random) => replaced(text, random, /"\w+":/g, `"${pick(random, KEYS)}":`),
  (text, random) =>
    replaced(text, random, /-?\d+(\.\d+)?/g, pick(random, ['1e999', '-1e999', '1e400', '9'.repeat(400)])),
  (text, random) => {
    const depth = pick(random, [5, 60, 200, 20_000]);
    return replaced(text, random, /-?\d+(\.\d+)?/g, '['.repeat(depth) + ']'.repeat(depth));
  },
  (text, random) => {
    const [name = '"a":'] = pick(random, [...text.matchAll(/"\w+":/g)]);
    return replaced(text, random, /"\w+":/g, name);
  },
  (text, random) => text.slice(0, whole(random, text.length)),
  (text, random) =>
    replaced(text, random, /shop@\d/g, pick(random, ['shop@1', 'shop@3', 'shop@99', 'shop@', 'other@2'])),
];

function replaced(text: string, random: Random, pattern: RegExp, by: string): string {
  const found = [...text.matchAll(pattern)];
  if (found.length === 0) return text;
  const one = pick(random, found);
  return text.slice(0, one.index) + by + text.slice(one.index + one[0].length);
}

/** Does something at a random place: any depth, each step down as likely as staying. */
function at(json: Tree, random: Random, change: (tree: Tree, key: string) => void): void {
  let tree = json;
  for (;;) {
    const keys = Object.keys(tree);
    if (keys.length === 0) return;
    const key = pick(random, keys);
    const value = get(tree, key);
    if (typeof value !== 'object' || value === null || random() < 0.2) return change(tree, key);
    tree = value as Tree;
  }
}

const get = (tree: Tree, key: string): unknown => (tree as Record<string, unknown>)[key];
const copy = (value: unknown): unknown =>
  value === undefined ? undefined : JSON.parse(JSON.stringify(value));

/** Also a key that would else set what an object inherits. */
function set(tree: Tree, key: string, value: unknown): void {
  if (Array.isArray(tree)) tree[Number(key) >= 0 ? Number(key) % (tree.length + 1) : 0] = value;
  else Object.defineProperty(tree, key, { value, enumerable: true, configurable: true, writable: true });
}

function remove(tree: Tree, key: string): void {
  if (Array.isArray(tree)) tree.splice(Number(key), 1);
  else delete tree[key];
}
