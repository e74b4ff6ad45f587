import type { Bounds, TriangleMesh } from '../triangleMesh';
import { collectCrossings, makeLattice, sortByLine, type Axis, type Lattice } from './lineCrossings';

/*
 * Winding along lines. A square lattice of lines runs through the body along one axis (called x
 * below, the others y and z, in cyclic order); on each, the signed crossings of the closed
 * surface, sorted, give the whole winding number of every stretch. Stretches counted twice, or below zero, are where shells
 * overlap or fold: there a plain sum of signed volumes is not the volume of the solid.
 *
 * The sum over a closed surface is zero on every line, exactly (lineCrossings.ts): no leaks. Stretches are exact along x; the only error is that of the
 * lattice in y and z.
 */

export interface WindingSums {
  /** Volume by these lines of the signed sum, the cross-check of the divergence theorem. */
  signedMm3: number;
  /** What the signed sum counts beyond once, and below zero (a negative number). */
  doubledMm3: number;
  negativeMm3: number;
  /**
   * Largest disagreement of the four half-dense lattices about doubled + negative, but no less than ERROR_FLOOR of it: they can
   * agree by luck.
   */
  latticeErrorMm3: number;
  spacingMm: number;
}

/** Share of what was found that is always left in doubt. Chosen here: over ten times the largest miss seen in
 * tests of known overlaps. */
const ERROR_FLOOR = 5e-4;

/**
 * @param mesh closed chain of triangles (caps included), mm
 * @param bounds of that chain
 * @param lines `axes` they run along (0 x, 1 y, 2 z), all in one pass over the triangles; `across` how many over the longer of
 * the two other sides: 64 means cells of about 1.6 % of the size
 * @returns sums in the order of the axes
 */
export function windingAlongLines(
  mesh: TriangleMesh,
  bounds: Bounds,
  lines: { axes: readonly Axis[]; across: number },
): WindingSums[] {
  const lattices = lines.axes.map((axis) => makeLattice(bounds, axis, lines.across));
  collectCrossings(mesh, lattices);
  return lattices.map(sumLattice);
}

function sumLattice(lattice: Lattice): WindingSums {
  const { found, columns, rows } = lattice;
  const order = sortByLine(found, columns * rows);
  const doubled = [0, 0, 0, 0];
  const negative = [0, 0, 0, 0];
  let signed = 0;
  for (let line = 0; line < columns * rows; line++) {
    const [from, to] = [order.start[line]!, order.start[line + 1]!];
    if (from === to) continue;
    const parity = ((line % columns) & 1) + 2 * (((line / columns) | 0) & 1);
    let winding = 0;
    for (let i = from; i < to; i++) {
      const c = order.crossing[i]!;
      winding += found.sign[c]!;
      if (i + 1 === to) break;
      const length = found.x[order.crossing[i + 1]!]! - found.x[c]!;
      signed += winding * length;
      if (winding > 1) doubled[parity]! += (winding - 1) * length;
      else if (winding < 0) negative[parity]! += winding * length;
    }
  }
  return summed(lattice.spacing, signed, doubled, negative);
}

function summed(spacing: number, signed: number, doubled: number[], negative: number[]): WindingSums {
  const cell = spacing * spacing;
  const total = (a: number[]): number => a.reduce((x, y) => x + y, 0) * cell;
  const excess = total(doubled) + total(negative);
  const spread = doubled.map((d, i) => Math.abs(4 * (d + negative[i]!) * cell - excess));
  return {
    signedMm3: signed * cell,
    doubledMm3: total(doubled),
    negativeMm3: total(negative),
    latticeErrorMm3: Math.max(...spread, ERROR_FLOOR * (total(doubled) - total(negative))),
    spacingMm: spacing,
  };
}

/** A stretch of one line inside the body: its length and the triangles (3 * number) where it enters and leaves. */
export interface Stretch {
  lengthMm: number;
  enter: number;
  leave: number;
  /** Cross-section that the line stands for. */
  cellMm2: number;
}

/** Calls `visit` for every stretch of the lines along each axis on which the winding number is 1 or more; one pass over the triangles. */
export function insideStretches(
  mesh: TriangleMesh,
  bounds: Bounds,
  { axes, across }: { axes: readonly Axis[]; across: number },
  visit: (stretch: Stretch, axis: Axis) => void,
): void {
  const lattices = axes.map((axis) => makeLattice(bounds, axis, across));
  collectCrossings(mesh, lattices);
  lattices.forEach((lattice, i) => visitStretches(lattice, (stretch) => visit(stretch, axes[i]!)));
}

function visitStretches(lattice: Lattice, visit: (stretch: Stretch) => void): void {
  const { found, columns, rows, spacing } = lattice;
  const order = sortByLine(found, columns * rows);
  for (let line = 0; line < columns * rows; line++) {
    let winding = 0;
    let enter = -1;
    for (let i = order.start[line]!; i < order.start[line + 1]!; i++) {
      const c = order.crossing[i]!;
      const wasInside = winding >= 1;
      winding += found.sign[c]!;
      if (wasInside === winding >= 1) continue;
      if (!wasInside) enter = c;
      else
        visit({
          lengthMm: found.x[c]! - found.x[enter]!,
          enter: found.triangle[enter]!,
          leave: found.triangle[c]!,
          cellMm2: spacing * spacing,
        });
    }
  }
}
