/** Parallel lines: the first at v = `first`, the others a spacing apart. */
export interface Lines {
  first: number;
  spacingMm: number;
  lines: number;
}

/** Covered stretches of lines, the first `count` of each array. */
export interface Stretches {
  line: Int32Array;
  left: Float64Array;
  right: Float64Array;
  count: number;
}

/**
 * What a list of triangles covers of lines along u, given the vertices' u and v: stretches that do not overlap, by line and from
 * left to right. No object is made per line or stretch. Linear in the crossings but for sorting each line.
 */
export function coverLines(
  triangles: Int32Array,
  us: Float64Array,
  vs: Float64Array,
  lattice: Lines,
): Stretches {
  let held = emptyStretches(1 << 16);
  const { first, spacingMm, lines } = lattice;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = vs[triangles[t]!]!;
    const b = vs[triangles[t + 1]!]!;
    const c = vs[triangles[t + 2]!]!;
    const low = a < b ? (a < c ? a : c) : b < c ? b : c;
    const high = a > b ? (a > c ? a : c) : b > c ? b : c;
    const firstLine = Math.max(0, Math.floor((low - first) / spacingMm));
    const lastLine = Math.min(lines - 1, Math.ceil((high - first) / spacingMm));
    if (held.count + lines > held.line.length) held = withRoom(held, lines);
    for (let line = firstLine; line <= lastLine; line++)
      coverLine(triangles, t, us, vs, first + line * spacingMm, line, held);
  }
  return merged(held, lines);
}

/** Stretches held before they are merged: 80 MB at the most, unless the merged ones alone fill half of it. */
const MERGE_AT = 1 << 22;

/** Records the stretch of one line that a triangle covers, if any. An edge is crossed from its lower-numbered vertex. */
function coverLine(
  triangles: Int32Array,
  t: number,
  us: Float64Array,
  vs: Float64Array,
  v: number,
  line: number,
  held: Stretches,
): void {
  let left = Infinity;
  let right = -Infinity;
  for (let e = 0; e < 3; e++) {
    const a = triangles[t + e]!;
    const b = triangles[t + (e === 2 ? 0 : e + 1)]!;
    if (vs[a]! < v === vs[b]! < v) continue;
    const low = a < b ? a : b;
    const high = a < b ? b : a;
    const u = us[low]! + ((v - vs[low]!) / (vs[high]! - vs[low]!)) * (us[high]! - us[low]!);
    if (u < left) left = u;
    if (u > right) right = u;
  }
  if (left >= right) return;
  held.line[held.count] = line;
  held.left[held.count] = left;
  held.right[held.count++] = right;
}

const emptyStretches = (length: number): Stretches => ({
  line: new Int32Array(length),
  left: new Float64Array(length),
  right: new Float64Array(length),
  count: 0,
});

/** Merges what is held once it is much, then doubles the arrays where that was not enough. */
function withRoom(held: Stretches, lines: number): Stretches {
  const kept = held.count + lines > MERGE_AT ? merged(held, lines) : held;
  if (2 * kept.count + lines <= held.line.length) return padded(kept, held.line.length);
  return padded(kept, 2 * Math.max(kept.count + lines, held.line.length));
}

function padded(held: Stretches, length: number): Stretches {
  const roomy = emptyStretches(length);
  roomy.line.set(held.line.subarray(0, held.count));
  roomy.left.set(held.left.subarray(0, held.count));
  roomy.right.set(held.right.subarray(0, held.count));
  roomy.count = held.count;
  return roomy;
}

/**
 * The union of the stretches of each line. How often a place is covered is the number of left ends before it less that of right
 * ends, so the two are sorted apart, as plain numbers.
 */
function merged(held: Stretches, lines: number): Stretches {
  const { start, left, right } = byLine(held, lines);
  const union = emptyStretches(held.count);
  for (let line = 0; line < lines; line++) {
    const [from, to] = [start[line]!, start[line + 1]!];
    left.subarray(from, to).sort();
    right.subarray(from, to).sort();
    for (let i = from, began = from; i < to; i++) {
      // i + 1 right ends are behind; where no more left ends are, nothing covers the gap to the next.
      if (i + 1 < to && left[i + 1]! <= right[i]!) continue;
      union.line[union.count] = line;
      union.left[union.count] = left[began]!;
      union.right[union.count++] = right[i]!;
      began = i + 1;
    }
  }
  return union;
}

/** Left and right ends of each line side by side, by a counting sort. */
function byLine({ line, left, right, count }: Stretches, lines: number): Ends {
  const start = new Int32Array(lines + 1);
  for (let i = 0; i < count; i++) start[line[i]! + 1]!++;
  for (let l = 1; l <= lines; l++) start[l]! += start[l - 1]!;
  const fill = start.slice();
  const ends = { start, left: new Float64Array(count), right: new Float64Array(count) };
  for (let i = 0; i < count; i++) {
    const to = fill[line[i]!]!++;
    ends.left[to] = left[i]!;
    ends.right[to] = right[i]!;
  }
  return ends;
}

interface Ends {
  start: Int32Array;
  left: Float64Array;
  right: Float64Array;
}
