import type { MoldShell } from './moldShell';

/**
 * An upright prism over a convex outline (x and y in turn, counter-clockwise) between two heights. The chain has every corner once; drawn, each
 * face has its own, so that edges are sharp, but the sides of a round one share theirs.
 */
export function prismShell(
  outline: readonly number[],
  [fromMm, toMm]: readonly [number, number],
  isRound: boolean,
): Omit<MoldShell, 'part'> {
  const n = outline.length / 2;
  const rings = [fromMm, toMm].flatMap((z) =>
    Array.from({ length: n }, (_, i) => [outline[2 * i]!, outline[2 * i + 1]!, z]).flat(),
  );
  const lids = fan(n, 0, true).concat(fan(n, n, false));
  const walls = range(n).flatMap((i) => wall(i, (i + 1) % n, n + ((i + 1) % n), n + i));
  const drawn: Drawn = { positions: [], normals: [], index: [] };
  addFace(drawn, ringOf(rings, 0, n), () => [0, 0, -1], fan(n, 0, true));
  addFace(drawn, ringOf(rings, n, n), () => [0, 0, 1], fan(n, 0, false));
  if (isRound) addFace(drawn, rings, (i) => outwardAt(outline, i % n), walls);
  else
    for (const i of range(n)) {
      const corners = [i, (i + 1) % n, n + ((i + 1) % n), n + i];
      addFace(
        drawn,
        corners.flatMap((c) => rings.slice(3 * c, 3 * c + 3)),
        () => outwardOf(outline, i, (i + 1) % n),
        wall(0, 1, 2, 3),
      );
    }
  return {
    chain: { positions: Float64Array.from(rings), triangles: Int32Array.from([...lids, ...walls]) },
    positions: Float32Array.from(drawn.positions),
    normals: Float32Array.from(drawn.normals),
    index: Uint32Array.from(drawn.index),
  };
}

interface Drawn {
  positions: number[];
  normals: number[];
  index: number[];
}

const range = (n: number): number[] => Array.from({ length: n }, (_, i) => i);
const ringOf = (rings: readonly number[], from: number, n: number): number[] =>
  rings.slice(3 * from, 3 * (from + n));
const wall = (a: number, b: number, c: number, d: number): number[] => [a, b, c, a, c, d];

/** A flat lid over a ring of `n` corners from number `from` on. */
const fan = (n: number, from: number, isUnder: boolean): number[] =>
  range(n - 2).flatMap((i) =>
    isUnder ? [from, from + i + 2, from + i + 1] : [from, from + i + 1, from + i + 2],
  );

function addFace(
  { positions, normals, index }: Drawn,
  corners: readonly number[],
  normalOf: (corner: number) => readonly number[],
  triangles: readonly number[],
): void {
  const first = positions.length / 3;
  positions.push(...corners);
  for (let c = 0; c < corners.length / 3; c++) normals.push(...normalOf(c));
  index.push(...triangles.map((c) => first + c));
}

/** Unit direction out of the side between two corners. */
function outwardOf(outline: readonly number[], from: number, to: number): number[] {
  const x = outline[2 * to + 1]! - outline[2 * from + 1]!;
  const y = outline[2 * from]! - outline[2 * to]!;
  const length = Math.hypot(x, y);
  return [x / length, y / length, 0];
}

/** Unit direction out of a round outline at a corner: between its two sides. */
function outwardAt(outline: readonly number[], at: number): number[] {
  const n = outline.length / 2;
  const [before, after] = [outwardOf(outline, (at + n - 1) % n, at), outwardOf(outline, at, (at + 1) % n)];
  const [x, y] = [before[0]! + after[0]!, before[1]! + after[1]!];
  const length = Math.hypot(x, y);
  return [x / length, y / length, 0];
}
