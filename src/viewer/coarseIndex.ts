/** Cells along the longest side. Chosen here: coarse, but so many triangles are turned in time without graphics hardware. */
const CELLS = 32;

/**
 * A coarser surface on the same vertices: all vertices in a cell become the first one in it, and triangles that shrink to nothing go. Only to be
 * looked at while it moves.
 */
export function coarseIndex(positions: Float32Array, index: Uint32Array): Uint32Array {
  const standIn = standIns(positions);
  const kept = new Uint32Array(index.length);
  let at = 0;
  for (let t = 0; t < index.length; t += 3) {
    const a = standIn[index[t]!]!,
      b = standIn[index[t + 1]!]!,
      c = standIn[index[t + 2]!]!;
    if (a === b || b === c || c === a) continue;
    kept[at++] = a;
    kept[at++] = b;
    kept[at++] = c;
  }
  return kept.slice(0, at);
}

/** For every vertex the first one of its cell. */
function standIns(p: Float32Array): Uint32Array {
  const { min, cell } = cellsOf(p);
  // One more than the vertex; 0 where none was met.
  const first = new Uint32Array((CELLS + 1) ** 3);
  const standIn = new Uint32Array(p.length / 3);
  for (let v = 0; v < standIn.length; v++) {
    const x = Math.floor((p[3 * v]! - min[0]) / cell),
      y = Math.floor((p[3 * v + 1]! - min[1]) / cell),
      z = Math.floor((p[3 * v + 2]! - min[2]) / cell);
    const no = (x * (CELLS + 1) + y) * (CELLS + 1) + z;
    if (first[no] === 0) first[no] = v + 1;
    standIn[v] = first[no]! - 1;
  }
  return standIn;
}

function cellsOf(p: Float32Array): { min: [number, number, number]; cell: number } {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < p.length; i++) {
    const [k, c] = [i % 3, p[i]!];
    if (c < min[k]!) min[k] = c;
    if (c > max[k]!) max[k] = c;
  }
  return { min, cell: Math.max(...max.map((high, k) => high - min[k]!)) / CELLS || 1 };
}
