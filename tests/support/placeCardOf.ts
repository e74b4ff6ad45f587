import { expect } from 'vitest';
import { boundsOf, shadowOutlines, VIEW_AXES, VIEW_NAMES, type TriangleMesh } from '../../src/geometry';
import type { CardDot, PlaceCard, Vector } from '../../src/plan/placeCard';
import { placeCard, type PlaceCardMeta } from '../../src/sheet';
import { between, lcg } from './lcg';
import { box } from './shapes';
import { textOf } from './sheetOf';

const META = { version: '0.0.0-test' };
export const cardOf = (
  mesh: TriangleMesh,
  dots: readonly CardDot[],
  more: Partial<PlaceCard> = {},
): PlaceCard => ({
  boundsMm: boundsOf(mesh),
  views: VIEW_NAMES.map((name) => ({ name, outlines: shadowOutlines(mesh, VIEW_AXES[name]) })),
  upWhenPoured: [0, 0, 1],
  dots,
  ...more,
});
export const htmlOf = (card: PlaceCard, meta: Partial<PlaceCardMeta> = {}): string =>
  placeCard(card, { ...META, ...meta });

export const dot = (n: number, atMm: Vector, normal?: Vector, more: Partial<CardDot> = {}): CardDot => ({
  n,
  kind: 'vent',
  atMm,
  text: 'Vent 2 mm',
  ...(normal === undefined ? {} : { normal }),
  ...more,
});

/** So many dots anywhere in the bounds, facing anywhere; half of them crowd in one corner. */
export function manyDots(mesh: TriangleMesh, count: number, seed: number): CardDot[] {
  const random = lcg(seed);
  const { min, max } = boundsOf(mesh);
  return Array.from({ length: count }, (_, i) => {
    const share = i % 2 === 0 ? 1 : 0.05;
    const at = [0, 1, 2].map((k) => min[k]! + share * random() * (max[k]! - min[k]!));
    const normal = [0, 1, 2].map(() => between(random, -1, 1));
    return dot(i + 1, at as unknown as Vector, normal as unknown as Vector);
  });
}

const attributes = (tag: string): Record<string, string> =>
  Object.fromEntries([...tag.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key!, value!]));
const numbersOf = (tag: string, ...keys: string[]): number[] =>
  keys.map((key) => Number(attributes(tag)[key]));

export interface Drawn {
  scale: number;
  width: number;
  height: number;
  left: number;
  rings: { n: number; view: string; x: number; y: number; r: number; className: string; text: number }[];
  outlines: { view: string; xs: number[]; ys: number[] }[];
  leaders: { x: number; y: number; toX: number; toY: number }[];
}

/** What the drawing says, read back from its text, mm on paper. */
export function drawnIn(html: string): Drawn {
  const svg = /<svg class="drawing"(.*?)>(.*?)<\/svg>/s.exec(html)!;
  const [left, , width, height] = attributes(svg[1]!).viewBox!.split(' ').map(Number) as [
    number,
    number,
    number,
    number,
  ];
  expect(attributes(svg[1]!)).toMatchObject({ width: `${width}mm`, height: `${height}mm` });
  const rings = [
    ...svg[2]!.matchAll(
      /<g data-dot="(\d+)" data-view="(\w+)"><circle([^>]*)\/><text[^>]*>(\d+)<\/text><\/g>/g,
    ),
  ].map(([, n, view, circle, text]) => {
    const [x, y, r] = numbersOf(circle!, 'cx', 'cy', 'r') as [number, number, number];
    return { n: Number(n), view: view!, x, y, r, className: attributes(circle!).class!, text: Number(text) };
  });
  const outlines = svg[2]!
    .split('<g data-view="')
    .slice(1)
    .map((view) => {
      const points = /class="outline" d="([^"]*)"/
        .exec(view)![1]!
        .match(/-?[\d.]+/g)!
        .map(Number);
      const half = (odd: number): number[] => points.filter((_, i) => i % 2 === odd);
      return { view: view.slice(0, view.indexOf('"')), xs: half(0), ys: half(1) };
    });
  const leaders = [
    ...svg[2]!.matchAll(/class="leader \w+" d="M([\d.-]+) ([\d.-]+)L([\d.-]+) ([\d.-]+)"/g),
  ].map(([, ...at]) => {
    const [x, y, toX, toY] = at.map(Number) as [number, number, number, number];
    return { x, y, toX, toY };
  });
  return { scale: Number(attributes(svg[1]!)['data-scale']), width, height, left, rings, outlines, leaders };
}

export const rowsIn = (html: string): string[][] =>
  [...html.matchAll(/<tr data-row="\d+">(.*?)<\/tr>/gs)].map(([, row]) =>
    row!
      .split('</td>')
      .slice(0, -1)
      .map((cell) => textOf(cell).trim()),
  );

export const EEL = box([520, 90, 60]);
export const PUPPET_HAND = box([60, 25, 58], [-30, -10, 5]);
export const HEAD = box([250, 260, 300], [-125, -130, 0]);
export const GIANT = box([1900, 1700, 2600]);
