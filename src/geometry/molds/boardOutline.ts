import type { Sheared } from './sheared';

/** Values of a sheared field over the board: `nu` by `nv` of them, `spacingMm` apart, in grid coordinates x and y. */
export interface BoardValues {
  nx: number;
  ny: number;
  spacingMm: number;
  oxMm: number;
  oyMm: number;
  values: Float64Array;
}

/**
 * The field at the height of the board (grid z, mm), carried down from the three layers above it: below the board the body ends, and what is measured
 * there bends away from it.
 */
export function valuesOnBoard(
  sheared: Sheared,
  values: Float32Array,
  { nx, ny, ox, oy, boardMm }: { nx: number; ny: number; ox: number; oy: number; boardMm: number },
): BoardValues {
  const step = sheared.spacingMm;
  const found = new Float64Array(nx * ny);
  for (let j = 0; j < ny; j++)
    for (let i = 0; i < nx; i++)
      for (const { over, weight } of LAYERS) {
        const z = boardMm + over * step;
        found[j * nx + i]! += weight * valueAt(sheared, values, ox + i * step, oy + j * step, z);
      }
  return { nx, ny, spacingMm: step, oxMm: ox, oyMm: oy, values: found };
}

/** Layers above the board, in steps, and their weights: a parabola through them, at the board. */
const LAYERS = [
  { over: 0.5, weight: 15 / 8 },
  { over: 1.5, weight: -10 / 8 },
  { over: 2.5, weight: 3 / 8 },
] as const;

/** Linear between the eight points around a place in grid coordinates; the nearest ones at the rim. */
function valueAt(sheared: Sheared, values: Float32Array, x: number, y: number, z: number): number {
  const { nu, nv, nw, axes, originMm, spacingMm, slopeU, slopeV } = sheared;
  const at = [x, y, z].map((c, axis) => (c - originMm[axis]!) / spacingMm);
  const w = clamp(at[axes[2]]!, nw);
  const k = Math.floor(w);
  const share = w - k;
  let value = 0;
  for (const [plane, weight] of [
    [k, 1 - share],
    [k + 1, share],
  ] as const) {
    if (weight === 0) continue;
    // Along the pull a place keeps its row: only the planes' own shift is taken off.
    const u = clamp(at[axes[0]]! - plane * slopeU, nu);
    const v = clamp(at[axes[1]]! - plane * slopeV, nv);
    const [i, j] = [Math.floor(u), Math.floor(v)];
    const [a, b] = [u - i, v - j];
    const p = (plane * nv + j) * nu + i;
    value +=
      weight *
      ((1 - a) * (1 - b) * values[p]! +
        a * (1 - b) * values[p + 1]! +
        (1 - a) * b * values[p + nu]! +
        a * b * values[p + nu + 1]!);
  }
  return value;
}

const clamp = (value: number, count: number): number => Math.min(count - 1 - 1e-6, Math.max(0, value));

/**
 * Outline of the region where the values are at most `level`, as directed segments u0, v0, u1, v1, the region on their left: marching squares
 * (Lorensen and Cline 1987 in the plane), neighbors sharing their ends bit for bit. Where a square's corners alternate the two parts stay apart.
 */
export function outlineOf(
  { nx, ny, spacingMm: s, oxMm, oyMm, values }: BoardValues,
  level: number,
): Float64Array {
  const segments: number[] = [];
  const over = (i: number, j: number): number => values[j * nx + i]! - level;
  // A point on the edge from (i, j) to its neighbor along x or y, computed the same way from both sides.
  const onX = (i: number, j: number): [number, number] => {
    const t = over(i, j) / (over(i, j) - over(i + 1, j));
    return [oxMm + (i + t) * s, oyMm + j * s];
  };
  const onY = (i: number, j: number): [number, number] => {
    const t = over(i, j) / (over(i, j) - over(i, j + 1));
    return [oxMm + i * s, oyMm + (j + t) * s];
  };
  for (let j = 0; j + 1 < ny; j++) {
    for (let i = 0; i + 1 < nx; i++) {
      const code =
        Number(over(i, j) <= 0) +
        2 * Number(over(i + 1, j) <= 0) +
        4 * Number(over(i + 1, j + 1) <= 0) +
        8 * Number(over(i, j + 1) <= 0);
      for (const [from, to] of EDGES[code]!) {
        const ends = [from, to].map((edge) =>
          edge === 0 ? onX(i, j) : edge === 1 ? onY(i + 1, j) : edge === 2 ? onX(i, j + 1) : onY(i, j),
        );
        segments.push(...ends[0]!, ...ends[1]!);
      }
    }
  }
  return Float64Array.from(segments);
}

/** Edges of a square: 0 below, 1 right, 2 above, 3 left. From which to which the outline runs, the region on its left, by the corners inside (1, 2, 4, 8 around). */
const EDGES: readonly (readonly (readonly [number, number])[])[] = [
  [],
  [[0, 3]],
  [[1, 0]],
  [[1, 3]],
  [[2, 1]],
  [
    [0, 3],
    [2, 1],
  ],
  [[2, 0]],
  [[2, 3]],
  [[3, 2]],
  [[0, 2]],
  [
    [1, 0],
    [3, 2],
  ],
  [[1, 2]],
  [[3, 1]],
  [[0, 1]],
  [[3, 0]],
  [],
];
