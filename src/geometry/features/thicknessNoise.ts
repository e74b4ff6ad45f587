import type { Neighbors } from './thicknessNeighbors';
import type { SurfaceSamples } from './thicknessSamples';

/*
 * How rough a scan is: around some samples a paraboloid is laid through their neighbors by least squares; what is left over is noise (or a texture as
 * fine as noise: it is treated alike). The median over the samples, so that creases and thin edges do not count.
 */

/** Samples asked. Chosen here. */
const ASKED = 1500;

/** Neighbors that look as the sample does, by this cosine, lie on the same smooth stretch: not beyond an edge. Chosen here. */
const ALIKE = 0.7;

/** Terms of a paraboloid: 1, u, v, u2, uv, v2. */
const TERMS = 6;

/** Root mean square height of the samples over the smooth surface through them, mm. 0 where too few have neighbors. */
export function roughnessMm(samples: SurfaceSamples, neighbors: Neighbors, onStep: () => void): number {
  const step = Math.max(1, Math.floor(samples.count / ASKED));
  const heights: number[] = [];
  for (let s = 0; s < samples.count; s += step) {
    onStep();
    const height = leftOver(samples, neighbors, s);
    if (height !== undefined) heights.push(height);
  }
  heights.sort((a, b) => a - b);
  return heights[heights.length >> 1] ?? 0;
}

/** Root mean square of what the paraboloid through a sample's neighbors leaves, by the degrees of freedom. */
function leftOver(samples: SurfaceSamples, { start, list }: Neighbors, s: number): number | undefined {
  const { u, v, n } = tangentFrame(samples, s);
  const rows: number[][] = [];
  for (let m = start[s]!; m < start[s + 1]!; m++) {
    const looks = n.reduce((sum, x, a) => sum + x * samples.inward[3 * list[m]! + a]!, 0);
    if (looks < ALIKE) continue;
    const d = [0, 1, 2].map(
      (a) => (samples.at[3 * list[m]! + a]! - samples.at[3 * s + a]!) / samples.spacingMm,
    );
    const [x, y, z] = [u, v, n].map((axis) => axis[0]! * d[0]! + axis[1]! * d[1]! + axis[2]! * d[2]!);
    rows.push([1, x!, y!, x! * x!, x! * y!, y! * y!, z!]);
  }
  if (rows.length < 2 * TERMS) return undefined;
  const terms = leastSquares(rows);
  if (terms === undefined) return undefined;
  const sum = rows.reduce(
    (total, row) => total + (row[TERMS]! - terms.reduce((z, term, c) => z + term * row[c]!, 0)) ** 2,
    0,
  );
  return samples.spacingMm * Math.sqrt(sum / (rows.length - TERMS));
}

function tangentFrame({ inward }: SurfaceSamples, s: number): { u: number[]; v: number[]; n: number[] } {
  const n = [0, 1, 2].map((a) => inward[3 * s + a]!);
  const least = n.reduce((best, x, a) => (Math.abs(x) < Math.abs(n[best]!) ? a : best), 0);
  const side = [0, 1, 2].map((a) => (a === least ? 1 : 0) - n[least]! * n[a]!);
  const length = Math.hypot(...side);
  const u = side.map((x) => x / length);
  const v = [0, 1, 2].map((a) => n[(a + 1) % 3]! * u[(a + 2) % 3]! - n[(a + 2) % 3]! * u[(a + 1) % 3]!);
  return { u, v, n };
}

/** Solves the normal equations by elimination with pivots; undefined where they do not say enough. */
function leastSquares(rows: readonly number[][]): number[] | undefined {
  const m = Array.from({ length: TERMS }, (_, r) =>
    Array.from({ length: TERMS + 1 }, (_, c) => rows.reduce((sum, row) => sum + row[r]! * row[c]!, 0)),
  );
  for (let c = 0; c < TERMS; c++) {
    let pivot = c;
    for (let r = c + 1; r < TERMS; r++) if (Math.abs(m[r]![c]!) > Math.abs(m[pivot]![c]!)) pivot = r;
    if (Math.abs(m[pivot]![c]!) < 1e-6) return undefined;
    [m[c], m[pivot]] = [m[pivot]!, m[c]!];
    for (let r = 0; r < TERMS; r++) {
      if (r === c) continue;
      const share = m[r]![c]! / m[c]![c]!;
      for (let k = c; k <= TERMS; k++) m[r]![k]! -= share * m[c]![k]!;
    }
  }
  return m.map((row, r) => row[TERMS]! / row[r]!);
}
