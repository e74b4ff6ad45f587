/** Directed segments in rows of equal height, to find those that a line along u meets. */
export interface SegmentRows {
  /** u0, v0, u1, v1 each. */
  segments: Float64Array;
  lowV: number;
  rowsPerUnit: number;
  /** Segments of row r are `items` from `starts[r]` to `starts[r + 1]`. */
  starts: Int32Array;
  items: Int32Array;
}

/** A row per segment, but no more: a long segment is listed in all of its rows. Chosen here. */
const MOST_ROWS = 2048;

export function segmentRows(segments: Float64Array): SegmentRows {
  let lowV = Infinity;
  let highV = -Infinity;
  for (let i = 1; i < segments.length; i += 2) {
    lowV = Math.min(lowV, segments[i]!);
    highV = Math.max(highV, segments[i]!);
  }
  const count = Math.max(1, Math.min(MOST_ROWS, segments.length / 4));
  const rowsPerUnit = highV > lowV ? count / (highV - lowV) : 0;
  const rows: SegmentRows = {
    segments,
    lowV,
    rowsPerUnit,
    starts: new Int32Array(count + 1),
    items: new Int32Array(0),
  };
  eachRow(rows, (row) => rows.starts[row + 1]!++);
  for (let row = 0; row < count; row++) rows.starts[row + 1]! += rows.starts[row]!;
  rows.items = new Int32Array(rows.starts[count]!);
  const fill = rows.starts.slice();
  eachRow(rows, (row, segment) => (rows.items[fill[row]!++] = segment));
  return rows;
}

function eachRow(rows: SegmentRows, take: (row: number, segment: number) => void): void {
  const { segments } = rows;
  for (let i = 0; i < segments.length; i += 4) {
    const [one, other] = [rowOf(rows, segments[i + 1]!), rowOf(rows, segments[i + 3]!)];
    for (let row = Math.min(one, other); row <= Math.max(one, other); row++) take(row, i / 4);
  }
}

/** Never falls as v rises, so a line meets only segments of its own row. */
const rowOf = ({ lowV, rowsPerUnit, starts }: SegmentRows, v: number): number =>
  Math.max(0, Math.min(starts.length - 2, Math.floor((v - lowV) * rowsPerUnit)));

/** How often the segments wind around a point: 0 outside. On a segment it is that of one of its sides. */
export function windingAt(rows: SegmentRows, u: number, v: number): number {
  const { segments, starts, items } = rows;
  const row = rowOf(rows, v);
  let winding = 0;
  for (let k = starts[row]!; k < starts[row + 1]!; k++) {
    const i = 4 * items[k]!;
    const [v0, v1] = [segments[i + 1]!, segments[i + 3]!];
    const isUp = v0 < v1;
    // An end belongs to the segment above it, so a line through a corner counts it once.
    if ((isUp ? v0 : v1) > v || (isUp ? v1 : v0) <= v) continue;
    // Down, the region on the left lies towards +u.
    if (crossing(segments, i, isUp, v) < u) winding += isUp ? -1 : 1;
  }
  return winding;
}

/** u of a segment at v, from its lower end, so that walls that touch give the same. */
function crossing(segments: Float64Array, i: number, isUp: boolean, v: number): number {
  const [low, high] = isUp ? [i, i + 2] : [i + 2, i];
  const share = (v - segments[low + 1]!) / (segments[high + 1]! - segments[low + 1]!);
  return segments[low]! + share * (segments[high]! - segments[low]!);
}
