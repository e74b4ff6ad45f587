import type { Lines } from './coveredLines';

/** Stretches by line: those of line l are number start[l] up to start[l + 1], from left to right. */
export interface Rows {
  start: Int32Array;
  left: Float64Array;
  right: Float64Array;
}

/** Crossing lines: rows run along u, one for each line of v; columns run along v. */
export interface Lattice {
  u: Lines;
  v: Lines;
  rows: Rows;
  columns: Rows;
}

/**
 * Closed polygons around what the lines cover, u and v per point, the covered on their left. A point stands on each step of a line from
 * a covered node of the lattice to a bare one, where the stretch ends; no node at the rim may be covered.
 */
export function traceOutlines(lattice: Lattice): Float64Array[] {
  const covered = coveredNodes(lattice);
  const next = stepsBetween(covered, lattice.u.lines, lattice.v.lines);
  const outlines: Float64Array[] = [];
  for (let start = 0; start < next.length; start++) {
    if (next[start]! < 0) continue;
    const points: number[] = [];
    for (let at = start; next[at]! >= 0;) {
      const to = next[at]!;
      next[at] = -1;
      points.push(...pointOn(lattice, covered, at));
      at = to;
    }
    outlines.push(Float64Array.from(points));
  }
  return outlines;
}

/** Which nodes are covered, row by row, as the rows say. */
function coveredNodes({ u, v, rows }: Lattice): Uint8Array {
  const covered = new Uint8Array(u.lines * v.lines);
  for (let j = 0; j < v.lines; j++)
    for (let s = rows.start[j]!; s < rows.start[j + 1]!; s++) {
      const from = Math.max(0, Math.ceil((rows.left[s]! - u.first) / u.spacingMm));
      const to = Math.min(u.lines - 1, Math.floor((rows.right[s]! - u.first) / u.spacingMm));
      if (from <= to) covered.fill(1, j * u.lines + from, j * u.lines + to + 1);
    }
  return covered;
}

/**
 * For each step of the lattice that leaves what is covered, the step the outline goes to. Step 2 n goes from node n to the right, step
 * 2 n + 1 up. Two covered corners of a cell that face each other are kept apart.
 */
function stepsBetween(covered: Uint8Array, width: number, height: number): Int32Array {
  const next = new Int32Array(2 * covered.length).fill(-1);
  for (let j = 0; j + 1 < height; j++)
    for (let i = 0; i + 1 < width; i++) {
      const n = j * width + i;
      const corners = [covered[n]!, covered[n + 1]!, covered[n + width + 1]!, covered[n + width]!];
      if (corners[0] === corners[1] && corners[1] === corners[2] && corners[2] === corners[3]) continue;
      // Around the cell counter-clockwise: bottom, right, top, left. The outline enters where the walk leaves the covered.
      const sides = [2 * n, 2 * (n + 1) + 1, 2 * (n + width), 2 * n + 1];
      for (let side = 0; side < 4; side++) {
        if (corners[side] === 0 || corners[(side + 1) % 4] === 1) continue;
        let back = side;
        while (corners[back] === 1) back = (back + 3) % 4;
        next[sides[side]!] = sides[back]!;
      }
    }
  return next;
}

/** The place where the outline crosses a step: where the first stretch seen from its bare end begins. */
function pointOn({ u, v, rows, columns }: Lattice, covered: Uint8Array, step: number): [number, number] {
  const node = step >> 1;
  const [i, j] = [node % u.lines, Math.floor(node / u.lines)];
  const isBareFirst = covered[node] === 0;
  if (step % 2 === 0) return [endOn(rows, j, u, i, isBareFirst), v.first + j * v.spacingMm];
  return [u.first + i * u.spacingMm, endOn(columns, i, v, j, isBareFirst)];
}

/**
 * End of a stretch of a line within one spacing after node k: the first left end, or the last right end. Rows and columns may differ
 * by rounding, so where the line has no end there the middle stands for it.
 */
function endOn(
  rows: Rows,
  line: number,
  { first, spacingMm }: Lines,
  k: number,
  isBareFirst: boolean,
): number {
  const low = first + k * spacingMm;
  const ends = isBareFirst ? rows.left : rows.right;
  let found = low + spacingMm / 2;
  for (let s = rows.start[line]!; s < rows.start[line + 1]!; s++) {
    const end = ends[s]!;
    if (end < low || end > low + spacingMm) continue;
    found = end;
    if (isBareFirst) break;
  }
  return found;
}
