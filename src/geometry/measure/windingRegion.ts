/*
 * Area and boundary of the region that closed outlines in a plane wind around at least once. The plane is cut into slabs at
 * every vertex and, within a slab, at every crossing of two segments; in what is left no segment begins, ends or crosses, so
 * widths are linear and the width half-way times the height is the area. Exact but for rounding: no lattice. Slabs after
 * Bentley and Ottmann 1979 (IEEE Trans. Comput. C-28:643), without their tree: few segments meet a slab of a section.
 */

export interface WindingRegion {
  areaMm2: number;
  /** Length of the boundary of the region; what of one outline lies inside another does not count. */
  perimeterMm: number;
}

/** Segments closer than this share of the size are one: walls of two bodies that touch are no boundary. Chosen here. */
const TOUCHING_SHARE = 1e-12;

/**
 * @param segments u0, v0, u1, v1 of each directed segment, mm, the region on their left; together they make closed outlines, and
 * neighbors share their ends bit for bit. A segment along u bounds no width and its length does not count: turn the frame
 * (`planeFrame` does).
 */
export function measureRegion(segments: Float64Array): WindingRegion {
  const sweep = startSweep(segments);
  const { edges, levels, active } = sweep;
  let next = 0;
  for (let i = 0; i + 1 < levels.length; i++) {
    const low = levels[i]!;
    let kept = 0;
    for (let k = 0; k < sweep.count; k++) if (edges.highV[active[k]!]! > low) active[kept++] = active[k]!;
    while (next < edges.lowV.length && edges.lowV[next]! <= low) active[kept++] = next++;
    sweep.count = kept;
    addSlab(sweep, low, levels[i + 1]!);
  }
  return { areaMm2: sweep.areaMm2, perimeterMm: sweep.perimeterMm };
}

/** Segments with their lower end first, ordered by it. */
interface Edges {
  lowU: Float64Array;
  lowV: Float64Array;
  highU: Float64Array;
  highV: Float64Array;
  /** What the winding number gains where a line towards +u meets the segment. */
  turn: Int8Array;
}

interface Sweep {
  edges: Edges;
  /** v of all ends, ascending, each once. */
  levels: Float64Array;
  /** Edges through the slab in hand, the first `count`, in their order of the slab before. */
  active: Int32Array;
  u: Float64Array;
  count: number;
  touchingMm: number;
  areaMm2: number;
  perimeterMm: number;
}

function startSweep(segments: Float64Array): Sweep {
  const edges = orderedEdges(segments);
  const count = edges.lowV.length;
  const ends = new Float64Array(2 * count);
  ends.set(edges.lowV);
  ends.set(edges.highV, count);
  const levels = ends.sort().filter((v, i) => i === 0 || v !== ends[i - 1]);
  const size = count === 0 ? 0 : levels[levels.length - 1]! - levels[0]!;
  return {
    edges,
    levels,
    active: new Int32Array(count),
    u: new Float64Array(count),
    count: 0,
    touchingMm: TOUCHING_SHARE * size,
    areaMm2: 0,
    perimeterMm: 0,
  };
}

function orderedEdges(segments: Float64Array): Edges {
  const order: number[] = [];
  const lowest = (i: number): number => Math.min(segments[i + 1]!, segments[i + 3]!);
  for (let i = 0; i < segments.length; i += 4) if (segments[i + 1] !== segments[i + 3]) order.push(i);
  order.sort((i, j) => lowest(i) - lowest(j));
  const column = (pick: (i: number, lower: 0 | 2) => number): Float64Array =>
    Float64Array.from(order, (i) => pick(i, segments[i + 1]! < segments[i + 3]! ? 0 : 2));
  return {
    lowU: column((i, lower) => segments[i + lower]!),
    lowV: column((i, lower) => segments[i + lower + 1]!),
    highU: column((i, lower) => segments[i + 2 - lower]!),
    highV: column((i, lower) => segments[i + 3 - lower]!),
    // Going down, the region on the left lies towards +u.
    turn: Int8Array.from(order, (i) => (segments[i + 1]! < segments[i + 3]! ? -1 : 1)),
  };
}

/** A slab without ends of segments: whole where nothing crosses, else cut at the crossings. */
function addSlab(sweep: Sweep, low: number, high: number): void {
  sortAt(sweep, (low + high) / 2);
  if (isOrderedAt(sweep, low) && isOrderedAt(sweep, high)) return addWidths(sweep, low, high);
  let from = low;
  for (const v of crossingsIn(sweep, low, high)) {
    addWidths(sweep, from, v);
    from = v;
  }
  addWidths(sweep, from, high);
}

function uAt({ lowU, lowV, highU, highV }: Edges, edge: number, v: number): number {
  const share = (v - lowV[edge]!) / (highV[edge]! - lowV[edge]!);
  return lowU[edge]! + share * (highU[edge]! - lowU[edge]!);
}

/** By insertion: the order of the slab before is almost right. */
function sortAt({ edges, active, u, count }: Sweep, v: number): void {
  for (let k = 0; k < count; k++) {
    const edge = active[k]!;
    const at = uAt(edges, edge, v);
    let i = k;
    for (; i > 0 && u[i - 1]! > at; i--) {
      active[i] = active[i - 1]!;
      u[i] = u[i - 1]!;
    }
    active[i] = edge;
    u[i] = at;
  }
}

function isOrderedAt({ edges, active, count }: Sweep, v: number): boolean {
  for (let k = 1, before = uAt(edges, active[0]!, v); k < count; k++) {
    const at = uAt(edges, active[k]!, v);
    if (at < before) return false;
    before = at;
  }
  return true;
}

function crossingsIn({ edges, active, count }: Sweep, low: number, high: number): number[] {
  const found: number[] = [];
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const atLow = uAt(edges, active[i]!, low) - uAt(edges, active[j]!, low);
      const atHigh = uAt(edges, active[i]!, high) - uAt(edges, active[j]!, high);
      if (atLow * atHigh < 0) found.push(low + (high - low) * (atLow / (atLow - atHigh)));
    }
  }
  return found.sort((a, b) => a - b);
}

function addWidths(sweep: Sweep, low: number, high: number): void {
  const { edges, active, u, count } = sweep;
  const height = high - low;
  if (height <= 0) return;
  sortAt(sweep, (low + high) / 2);
  let winding = 0;
  let wasInside = false;
  for (let k = 0; k < count; k++) {
    winding += edges.turn[active[k]!]!;
    const isInside = winding >= 1;
    const gap = k + 1 < count ? u[k + 1]! - u[k]! : Infinity;
    if (isInside) sweep.areaMm2 += gap * height;
    if (gap <= sweep.touchingMm) continue;
    if (isInside !== wasInside) sweep.perimeterMm += lengthOf(edges, active[k]!, height);
    wasInside = isInside;
  }
}

/** Length of the part of a segment in a slab. */
function lengthOf({ lowU, lowV, highU, highV }: Edges, edge: number, height: number): number {
  const rise = highV[edge]! - lowV[edge]!;
  return (height / rise) * Math.hypot(highU[edge]! - lowU[edge]!, rise);
}
