import { collectCrossings, noCrossings, sortByLine, type Lattice } from '../measure/lineCrossings';
import { coordinatesAlong, planeFrame, rangeOf } from '../measure/planeFrame';
import type { TriangleMesh } from '../triangleMesh';
import { dot, type Vector } from '../vector';

/*
 * A body as columns: lines along "up", and on each the stretches (runs) that lie inside it, their ends exact on the facets. What liquid and air do in a
 * body hangs on heights only, so columns along up know it far better than voxels do: the level of a ceiling is exact at every column, whatever the step.
 */

/** Unit vectors in the axes of the mesh: of a row, across rows, and up. */
export interface ColumnAxes {
  u: Vector;
  v: Vector;
  up: Vector;
}

/** A closed chain in a frame whose first axis is up: height, u, v of every vertex, mm. */
export interface UprightBody {
  axes: ColumnAxes;
  mesh: TriangleMesh;
  /** Of u and v over the triangles. */
  u: { low: number; high: number };
  v: { low: number; high: number };
  height: { low: number; high: number };
  /** Then the space around the body is meant, from this height up to SKY_MM over the body. */
  aroundFromMm?: number;
}

/** So far over the body the space around it is told, mm. */
export const SKY_MM = 10;

/** Where columns stand: `columns` times `rows` of them, a step apart. */
export interface ColumnGrid {
  u0: number;
  v0: number;
  stepMm: number;
  columns: number;
  rows: number;
}

export interface Columns {
  grid: ColumnGrid;
  /** Runs of column c (row * columns + column): from start[c] up to start[c + 1], lowest first. */
  start: Int32Array;
  /** Column of every run. */
  column: Int32Array;
  lowMm: Float64Array;
  highMm: Float64Array;
  /** Facet (3 * number) in which a run ends above; -1 around a body. */
  roof: Int32Array;
  count: number;
}

/** Golden-ratio offset: keeps columns off the round coordinates of modeled parts. */
const OFFSET = 0.3819660113;

/** Stands a body (mm) so that `up` points up; heights count from the origin of the mesh. */
export function standUpright({ positions, triangles }: TriangleMesh, up: Vector): UprightBody {
  const frame = planeFrame(up);
  const origin: Vector = [0, 0, 0];
  const heights = coordinatesAlong(positions, frame.n, origin);
  const us = coordinatesAlong(positions, frame.u, origin);
  const vs = coordinatesAlong(positions, frame.v, origin);
  const turned = new Float64Array(positions.length);
  for (let i = 0, at = 0; i < heights.length; i++) {
    turned[at++] = heights[i]!;
    turned[at++] = us[i]!;
    turned[at++] = vs[i]!;
  }
  return {
    axes: { u: frame.u, v: frame.v, up: frame.n },
    mesh: { positions: turned, triangles },
    u: rangeOf(us, triangles),
    v: rangeOf(vs, triangles),
    height: rangeOf(heights, triangles),
  };
}

/** Columns over the whole body, and `around` more on every side. */
export function gridOver({ u, v }: UprightBody, stepMm: number, around = 1): ColumnGrid {
  return {
    stepMm,
    u0: u.low + (OFFSET - around) * stepMm,
    v0: v.low + (OFFSET - around) * stepMm,
    columns: Math.ceil((u.high - u.low) / stepMm) + 2 * around,
    rows: Math.ceil((v.high - v.low) / stepMm) + 2 * around,
  };
}

/** Stretches of every column inside the body, or around it where that is meant. One pass over the triangles. */
export function columnsThrough(body: UprightBody, grid: ColumnGrid): Columns {
  const inside = columnsInside(body.mesh, grid);
  return body.aroundFromMm === undefined
    ? inside
    : columnsAroundBody(inside, body.aroundFromMm, body.height.high + SKY_MM);
}

/** Where the chain winds once or more. */
function columnsInside(mesh: TriangleMesh, grid: ColumnGrid): Columns {
  const lattice = latticeOf(grid);
  collectCrossings(mesh, [lattice]);
  const { found } = lattice;
  const lines = grid.columns * grid.rows;
  const order = sortByLine(found, lines);
  const columns = roomForRuns(grid, found.count >> 1);
  for (let line = 0; line < lines; line++) {
    let winding = 0;
    let low = 0;
    for (let i = order.start[line]!; i < order.start[line + 1]!; i++) {
      const crossing = order.crossing[i]!;
      const wasInside = winding >= 1;
      winding += found.sign[crossing]!;
      if (wasInside === winding >= 1) continue;
      if (!wasInside) low = found.x[crossing]!;
      else addRun(columns, line, low, found.x[crossing]!, found.triangle[crossing]!);
    }
    columns.start[line + 1] = columns.count;
  }
  return columns;
}

/** The gaps between the runs of every column, from the floor to the sky. No facet is told. */
function columnsAroundBody(
  { grid, start, lowMm, highMm, count }: Columns,
  fromMm: number,
  skyMm: number,
): Columns {
  const lines = grid.columns * grid.rows;
  const gaps = roomForRuns(grid, count + lines);
  for (let line = 0; line < lines; line++) {
    let floor = fromMm;
    for (let run = start[line]!; run < start[line + 1]!; run++) {
      addRun(gaps, line, floor, lowMm[run]!, -1);
      floor = Math.max(floor, highMm[run]!);
    }
    addRun(gaps, line, floor, skyMm, -1);
    gaps.start[line + 1] = gaps.count;
  }
  return gaps;
}

const roomForRuns = (grid: ColumnGrid, room: number): Columns => ({
  grid,
  start: new Int32Array(grid.columns * grid.rows + 1),
  column: new Int32Array(room),
  lowMm: new Float64Array(room),
  highMm: new Float64Array(room),
  roof: new Int32Array(room),
  count: 0,
});

/** Shells that touch face to face are one: a gap no wider than this, mm, is rounding. */
const TOUCH_MM = 1e-6;

function addRun(columns: Columns, line: number, low: number, high: number, roof: number): void {
  if (!(high > low + TOUCH_MM)) return;
  const last = columns.count - 1;
  if (last >= columns.start[line]! && low <= columns.highMm[last]! + TOUCH_MM) {
    columns.highMm[last] = high;
    columns.roof[last] = roof;
    return;
  }
  columns.column[columns.count] = line;
  columns.lowMm[columns.count] = low;
  columns.highMm[columns.count] = high;
  columns.roof[columns.count++] = roof;
}

function latticeOf({ u0, v0, stepMm, columns, rows }: ColumnGrid): Lattice {
  return {
    kx: 0,
    ky: 1,
    kz: 2,
    y0: u0,
    z0: v0,
    spacing: stepMm,
    columns,
    rows,
    found: noCrossings(),
  };
}

/** The point of a column at a height, in the axes of the mesh, mm. */
export function pointOf(axes: ColumnAxes, grid: ColumnGrid, column: number, heightMm: number): Vector {
  const u = grid.u0 + (column % grid.columns) * grid.stepMm;
  const v = grid.v0 + Math.floor(column / grid.columns) * grid.stepMm;
  const at = (k: 0 | 1 | 2): number => u * axes.u[k] + v * axes.v[k] + heightMm * axes.up[k];
  return [at(0), at(1), at(2)];
}

/** Columns within a half width of a point, seen along up. */
export function columnsAround(axes: ColumnAxes, grid: ColumnGrid, atMm: Vector, halfMm: number): number[] {
  const place = (dot(atMm, axes.u) - grid.u0) / grid.stepMm;
  const row = (dot(atMm, axes.v) - grid.v0) / grid.stepMm;
  const half = halfMm / grid.stepMm;
  const found: number[] = [];
  for (let j = Math.max(0, Math.ceil(row - half)); j <= Math.min(grid.rows - 1, row + half); j++)
    for (let i = Math.max(0, Math.ceil(place - half)); i <= Math.min(grid.columns - 1, place + half); i++)
      found.push(j * grid.columns + i);
  return found;
}
