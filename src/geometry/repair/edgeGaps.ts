import type { TriangleMesh } from '../triangleMesh';
import { nextCorner, OPEN, pairEdges } from './edges';
import { dropCollapsed } from './facets';
import { addPoint, makeCells, pointsNear, type PointCells } from './pointCells';

/** Open edges whose partner is looked for, and edges whose length is asked, spread over the list. Chosen here. */
const GAP_SAMPLES = 600;
const LENGTH_SAMPLES = 3000;

/** What stands between open edges and the edges that should be theirs. */
export interface EdgeGaps {
  /** Of all edges of all facets, mm. */
  medianEdgeMm: number;
  /** For the sampled open edges that have a partner within reach: the wider of the gaps at its two ends, rising. */
  gapsMm: number[];
  /** Share of the sampled open edges that have one. */
  partneredShare: number;
}

/**
 * Looks, at a sample of the open edges, for the nearest edge of another facet that could be the same edge: each of its ends lies
 * within `reach` (a share of the median edge) of one of theirs. Tells how coarse a weld must be before one is tried. Undefined
 * where no edge is open.
 */
export function edgeGaps(input: TriangleMesh, reach: number): EdgeGaps | undefined {
  const { mesh } = dropCollapsed(input);
  const open = openEdges(mesh);
  const medianEdgeMm = medianEdge(mesh);
  if (open.length === 0 || !(medianEdgeMm > 0)) return undefined;
  const near = cornersByPlace(mesh, reach * medianEdgeMm);
  const sample = spread(open.length, GAP_SAMPLES).map((i) => open[i]!);
  const gapsMm = sample
    .map((h) => gapOf(mesh, near, h))
    .filter((gap) => gap !== undefined)
    .sort((a, b) => a - b);
  return { medianEdgeMm, gapsMm, partneredShare: gapsMm.length / sample.length };
}

const spread = (count: number, wanted: number): number[] =>
  Array.from({ length: Math.min(count, wanted) }, (_, i) =>
    Math.floor(((i + 0.5) * count) / Math.min(count, wanted)),
  );

function openEdges(mesh: TriangleMesh): Int32Array {
  const { mate, openCount } = pairEdges(mesh);
  const open = new Int32Array(openCount);
  for (let h = 0, at = 0; h < mate.length; h++) if (mate[h] === OPEN) open[at++] = h;
  return open;
}

function medianEdge({ positions, triangles }: TriangleMesh): number {
  const lengths = spread(triangles.length, LENGTH_SAMPLES)
    .map((h) => distance(positions, triangles[h]!, triangles[nextCorner(h)]!))
    .sort((a, b) => a - b);
  return lengths[lengths.length >> 1] ?? 0;
}

interface Corners {
  cells: PointCells;
  /** The corners of each vertex: list[start[v]..start[v + 1]). */
  start: Int32Array;
  list: Int32Array;
}

function cornersByPlace({ positions, triangles }: TriangleMesh, reachMm: number): Corners {
  const start = new Int32Array(positions.length / 3 + 1);
  for (const v of triangles) start[v + 1]!++;
  const cells = makeCells(positions, reachMm);
  for (let v = 0; v + 1 < start.length; v++) {
    if (start[v + 1]! > 0) addPoint(cells, v);
    start[v + 1]! += start[v]!;
  }
  const fill = start.slice();
  const list = new Int32Array(triangles.length);
  for (let c = 0; c < triangles.length; c++) list[fill[triangles[c]!]!++] = c;
  return { cells, start, list };
}

/** The smallest reach at which some edge of another facet falls together with this one. */
function gapOf({ positions: p, triangles }: TriangleMesh, near: Corners, h: number): number | undefined {
  const facet = Math.floor(h / 3);
  const [from, to] = [triangles[h]!, triangles[nextCorner(h)]!];
  let least: number | undefined;
  for (const v of pointsNear(near.cells, p[3 * from]!, p[3 * from + 1]!, p[3 * from + 2]!)) {
    const here = distance(p, v, from);
    for (let i = near.start[v]!; i < near.start[v + 1]!; i++) {
      const corner = near.list[i]!;
      if (Math.floor(corner / 3) === facet) continue;
      for (const other of [nextCorner(corner), nextCorner(nextCorner(corner))]) {
        const gap = Math.max(here, distance(p, triangles[other]!, to));
        if (gap <= near.cells.reachMm && (least === undefined || gap < least)) least = gap;
      }
    }
  }
  return least;
}

const distance = (p: Float64Array, a: number, b: number): number =>
  Math.hypot(p[3 * a]! - p[3 * b]!, p[3 * a + 1]! - p[3 * b + 1]!, p[3 * a + 2]! - p[3 * b + 2]!);
