import { UP_AXES, type UpAxis } from './place';
import { boundsOf, type TriangleMesh } from './triangleMesh';
import type { Vector } from './vector';

/** Cells along the longer side of a look: as fine as a picture of a thumb's size shows. Chosen here. */
const CELLS = 72;

/** How a mesh looks from its front, stood with some axis up: covered cells of a grid, row by row from the top. */
export interface Look {
  columns: number;
  rows: number;
  /** Of every stretch of covered cells: its row, its first column, and the column after its last. */
  runs: number[];
}

/**
 * Looks of a mesh for each axis up, its face toward the eye as `placeMesh` places it. Coarse: they tell one way up from another and
 * measure nothing. Two of the three faces of the file's box are enough, turned and mirrored.
 */
export function upLooks(mesh: TriangleMesh): Record<UpAxis, Look> {
  const faces = { xy: faceOf(mesh, 0, 1), xz: faceOf(mesh, 0, 2) };
  return Object.fromEntries(UP_AXES.map((up) => [up, lookOf(faces, up)])) as Record<UpAxis, Look>;
}

/** Covered cells of one face of the file's box: `across` and `along` count from its low corner. */
interface Face {
  across: number;
  along: number;
  covered: Uint8Array;
}

function faceOf(mesh: TriangleMesh, first: 0 | 1 | 2, second: 0 | 1 | 2): Face {
  const { min, max } = boundsOf(mesh);
  const [wide, high] = [max[first] - min[first], max[second] - min[second]];
  const cell = Math.max(wide, high) / CELLS || 1;
  const across = Math.max(1, Math.ceil(wide / cell));
  const along = Math.max(1, Math.ceil(high / cell));
  const covered = new Uint8Array(across * along);
  const face: Face = { across, along, covered };
  const cells = inCells(mesh.positions, { first, second, min, cell });
  const at = new Float64Array(6);
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    for (let c = 0; c < 3; c++) {
      const v = 2 * mesh.triangles[t + c]!;
      at[2 * c] = cells[v]!;
      at[2 * c + 1] = cells[v + 1]!;
    }
    cover(face, at);
  }
  return face;
}

/** Both coordinates of every vertex on the grid, from its low corner. */
function inCells(
  p: Float64Array,
  { first, second, min, cell }: { first: 0 | 1 | 2; second: 0 | 1 | 2; min: Vector; cell: number },
): Float64Array {
  const cells = new Float64Array((2 * p.length) / 3);
  for (let i = 0, v = 0; i < p.length; i += 3, v += 2) {
    cells[v] = (p[i + first]! - min[first]) / cell;
    cells[v + 1] = (p[i + second]! - min[second]) / cell;
  }
  return cells;
}

/** Marks the cells of a triangle's corners, and those it touches on the middle line of each row. */
function cover(face: Face, at: Float64Array): void {
  const [u, v] = [at[0]! | 0, at[1]! | 0];
  if ((at[2]! | 0) === u && (at[4]! | 0) === u && (at[3]! | 0) === v && (at[5]! | 0) === v) {
    // Most triangles of a scan lie in one cell.
    face.covered[clamp(v, face.along) * face.across + clamp(u, face.across)] = 1;
    return;
  }
  let low = Infinity;
  let high = -Infinity;
  for (let c = 0; c < 6; c += 2) {
    mark(face, Math.floor(at[c + 1]!), at[c]!, at[c]!);
    low = Math.min(low, at[c + 1]!);
    high = Math.max(high, at[c + 1]!);
  }
  for (let row = Math.ceil(low - 0.5); row < face.along && row + 0.5 <= high; row++) {
    let left = Infinity;
    let right = -Infinity;
    for (let c = 0; c < 6; c += 2) {
      const next = (c + 2) % 6;
      if (at[c + 1]! > row + 0.5 === at[next + 1]! > row + 0.5) continue;
      const share = (row + 0.5 - at[c + 1]!) / (at[next + 1]! - at[c + 1]!);
      const u = at[c]! + share * (at[next]! - at[c]!);
      left = Math.min(left, u);
      right = Math.max(right, u);
    }
    if (left <= right) mark(face, row, left, right);
  }
}

function mark({ across, along, covered }: Face, row: number, from: number, to: number): void {
  const start = clamp(row, along) * across;
  covered.fill(1, start + clamp(Math.floor(from), across), start + clamp(Math.floor(to), across) + 1);
}

const clamp = (cell: number, count: number): number => Math.max(0, Math.min(count - 1, cell));

/** Seen from the front, +x of the placed piece is at the left; the top row comes first. */
function lookOf({ xy, xz }: Record<'xy' | 'xz', Face>, up: UpAxis): Look {
  const isDown = up.startsWith('-');
  return readFace(up.endsWith('y') ? xy : xz, { isTurned: up.endsWith('x'), isDown });
}

/**
 * Upright, the file's x runs to the left. Turned, its x runs up and its z to the right, as x up places -z at the left; with -x up both are
 * the other way round.
 */
function readFace(
  { across, along, covered }: Face,
  { isTurned, isDown }: { isTurned: boolean; isDown: boolean },
): Look {
  const [columns, rows] = isTurned ? [along, across] : [across, along];
  const isCovered = (row: number, column: number): boolean => {
    const upward = isDown ? row : rows - 1 - row;
    if (isTurned) return covered[(isDown ? columns - 1 - column : column) * across + upward] === 1;
    return covered[upward * across + (columns - 1 - column)] === 1;
  };
  const runs: number[] = [];
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++) {
      if (!isCovered(row, column)) continue;
      const from = column;
      while (column + 1 < columns && isCovered(row, column + 1)) column++;
      runs.push(row, from, column + 1);
    }
  return { columns, rows, runs };
}
