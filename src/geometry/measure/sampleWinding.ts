import { boundsOf, type TriangleMesh } from '../triangleMesh';
import { windingAbout, type WindingTree } from './windingTree';

/** Cells along the longest side, and samples along each side of a cell that facets run through. The figures are chosen here. */
export interface Look {
  cells: number;
  fine: number;
}
const FULL_LOOK: Look = { cells: 24, fine: 3 };

/** Places about which the facets wind less or more than this share of the winding well inside are clearly out or in. Chosen here. */
const CLEARLY_OUT = 0.25;
const CLEARLY_IN = 0.75;

export interface WindingSamples {
  insideMm3: number;
  /** Neither clearly in nor clearly out, or wound the wrong way round. */
  unclearMm3: number;
  /** Standard deviation of `insideMm3` from the finite number of samples. */
  spreadMm3: number;
  spacingMm: number;
}

/**
 * Volume of the places about which the facets wind more than half of `insideWinding`. One sample at a random place of every cell
 * of a lattice, 27 where facets run through it, each in a part of its own, so that a face parallel to the lattice does not fall in
 * or out of it as a whole.
 *
 * @param look fewer cells and samples for a first one
 */
export function sampleWinding(
  tree: WindingTree,
  insideWinding: number,
  { cells, fine: finest }: Look = FULL_LOOK,
): WindingSamples {
  const lattice = makeLattice(tree.mesh, cells);
  const isCrossed = crossedCells(tree.mesh, lattice);
  const random = fixedRandom();
  const { counts, sizeMm } = lattice;
  const sums: WindingSamples = { insideMm3: 0, unclearMm3: 0, spreadMm3: 0, spacingMm: sizeMm };
  let squares = 0;
  for (let cell = 0; cell < isCrossed.length; cell++) {
    const fine = isCrossed[cell] === 1 ? finest : 1;
    const share = sizeMm ** 3 / fine ** 3;
    let inside = 0;
    for (let part = 0; part < fine ** 3; part++) {
      const at = (k: 0 | 1 | 2, place: number, piece: number): number =>
        lattice.low[k] + sizeMm * (place + (piece + random()) / fine);
      const winding =
        windingAbout(tree, [
          at(0, cell % counts[0], part % fine),
          at(1, Math.floor(cell / counts[0]) % counts[1], Math.floor(part / fine) % fine),
          at(2, Math.floor(cell / (counts[0] * counts[1])), Math.floor(part / (fine * fine))),
        ]) / insideWinding;
      if (winding > 0.5) inside++;
      if (winding < -CLEARLY_OUT || (winding > CLEARLY_OUT && winding < CLEARLY_IN)) sums.unclearMm3 += share;
    }
    sums.insideMm3 += inside * share;
    squares += inside * (1 - inside / fine ** 3) * share * share;
  }
  return { ...sums, spreadMm3: Math.sqrt(squares) };
}

interface CellLattice {
  low: [number, number, number];
  sizeMm: number;
  counts: [number, number, number];
}

function makeLattice(mesh: TriangleMesh, cells: number): CellLattice {
  const { min, max } = boundsOf(mesh);
  const sizeMm = Math.max(max[0] - min[0], max[1] - min[1], max[2] - min[2]) / cells;
  const along = (k: 0 | 1 | 2): number => Math.max(1, Math.ceil((max[k] - min[k]) / sizeMm));
  return { low: min, sizeMm, counts: [along(0), along(1), along(2)] };
}

/** 1 for the cells that the box around some facet touches. */
function crossedCells(
  { positions: p, triangles }: TriangleMesh,
  { low, sizeMm, counts }: CellLattice,
): Uint8Array {
  const [nx, ny, nz] = counts;
  const crossed = new Uint8Array(nx * ny * nz);
  const cellOf = (x: number, k: 0 | 1 | 2): number =>
    Math.min(counts[k] - 1, Math.max(0, Math.floor((x - low[k]) / sizeMm)));
  const first = [0, 0, 0];
  const last = [0, 0, 0];
  for (let t = 0; t < triangles.length; t += 3) {
    for (const k of [0, 1, 2] as const) {
      const a = p[3 * triangles[t]! + k]!;
      const b = p[3 * triangles[t + 1]! + k]!;
      const c = p[3 * triangles[t + 2]! + k]!;
      first[k] = cellOf(Math.min(a, b, c), k);
      last[k] = cellOf(Math.max(a, b, c), k);
    }
    for (let k = first[2]!; k <= last[2]!; k++)
      for (let j = first[1]!; j <= last[1]!; j++)
        crossed.fill(1, (k * ny + j) * nx + first[0]!, (k * ny + j) * nx + last[0]! + 1);
  }
  return crossed;
}

/** The same numbers for every call: a size must not change from one look to the next (Numerical Recipes, 32 bit). */
export function fixedRandom(): () => number {
  let state = 20130713;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
