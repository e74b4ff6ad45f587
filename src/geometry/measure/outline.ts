import type { TriangleMesh } from '../triangleMesh';
import { coverLines, type Stretches } from './coveredLines';
import { traceOutlines, type Lattice } from './outlineTrace';
import { simplified } from './outlineSimplify';
import type { ViewAxes } from './outlineViews';
import { coordinatesAlong, rangeOf, type Vector } from './planeFrame';

/** Lines across the larger extent, and the least across the smaller one: a plate seen edge on is still seen. Chosen here. */
const LINES = 400;
const FEWEST_LINES = 64;

/** Golden-ratio offset: keeps lines off the round coordinates of modeled parts. */
const OFFSET = 0.3819660113;

/**
 * How far a simplified outline may leave the traced one: the least of these, the shares of the larger and of the smaller extent. Chosen
 * here: finer than a pen at any scale. Without the last the shadow of a plate, 300 by 0.5 mm, was 0.6 % too small.
 */
const AWAY = { mm: 0.3, ofLarger: 1 / 1600, ofSmaller: 1 / 200 };

/** An outline around less than this many cells of the lattice is a speck: it is left out. Chosen here. */
const SPECK_CELLS = 4;

/**
 * Outlines of the shadow of any list of triangles (mm): closed polygons, right and up per point on the axes of the view, mm, the last
 * point joined to the first, counter-clockwise around the shadow and clockwise around its holes. Which way triangles face does not
 * matter, and they need not be closed. Two families of parallel lines say exactly where on them the shadow begins and ends; the outline
 * joins these ends cell by cell (marching squares, Lorensen and Cline 1987 in the plane) and drops points (Douglas and Peucker 1973).
 * What is narrower than a cell, 1/400 of the size, may be lost. Empty where there is no shadow.
 */
export function shadowOutlines(mesh: TriangleMesh, { right, up }: ViewAxes): Float64Array[] {
  const us = coordinatesAlong(mesh.positions, right, ORIGIN);
  const vs = coordinatesAlong(mesh.positions, up, ORIGIN);
  const [u, v] = [rangeOf(us, mesh.triangles), rangeOf(vs, mesh.triangles)];
  const sizeMm = Math.max(u.high - u.low, v.high - v.low);
  const slimMm = Math.min(u.high - u.low, v.high - v.low);
  if (!(slimMm > 0)) return [];
  const [across, along] = [linesOver(u, sizeMm), linesOver(v, sizeMm)];
  const lattice: Lattice = {
    u: across,
    v: along,
    rows: rowsOf(coverLines(mesh.triangles, us, vs, along), along.lines),
    columns: rowsOf(coverLines(mesh.triangles, vs, us, across), across.lines),
  };
  const awayMm = Math.min(AWAY.mm, AWAY.ofLarger * sizeMm, AWAY.ofSmaller * slimMm);
  const speckMm2 = SPECK_CELLS * across.spacingMm * along.spacingMm;
  return traceOutlines(lattice)
    .filter((outline) => Math.abs(areaIn(outline)) >= speckMm2)
    .map((outline) => simplified(outline, awayMm))
    .filter((outline) => outline.length >= 6);
}

const ORIGIN: Vector = [0, 0, 0];

/** Lines over a range, the first and the last beside it. */
function linesOver({ low, high }: { low: number; high: number }, sizeMm: number): Lattice['u'] {
  const cells = Math.max(FEWEST_LINES, Math.round((LINES * (high - low)) / sizeMm));
  const spacingMm = (high - low) / cells;
  return { first: low - OFFSET * spacingMm, spacingMm, lines: cells + 2 };
}

/** The stretches with the number of the first of each line. */
function rowsOf({ line, left, right, count }: Stretches, lines: number): Lattice['rows'] {
  const start = new Int32Array(lines + 1);
  for (let i = 0; i < count; i++) start[line[i]! + 1]!++;
  for (let l = 1; l <= lines; l++) start[l]! += start[l - 1]!;
  return { start, left, right };
}

/** Signed area of a closed polygon of pairs, mm2: above 0 counter-clockwise (Gauss's formula). */
function areaIn(outline: Float64Array): number {
  let twice = 0;
  const [u0, v0] = [outline[0] ?? 0, outline[1] ?? 0];
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    twice += (outline[i]! - u0) * (outline[j + 1]! - v0) - (outline[j]! - u0) * (outline[i + 1]! - v0);
  }
  return twice / 2;
}
