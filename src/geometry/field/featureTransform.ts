import type { Grid } from './grid';

/*
 * Nearest seed of every grid point, exact on the lattice: the separable lower-envelope method (Felzenszwalb and Huttenlocher 2012,
 * Theory of Computing 8:415; Maurer et al. 2003, IEEE TPAMI 25:265), which carries the seed's number along instead of its distance alone. Points
 * farther from every seed than `reach` steps get none: the envelopes stay short.
 */

/** Along x: nearest seed of the row within reach, as its grid number; -1 where there is none. Planes [from, to). */
export function seedsAlongX(
  grid: Grid,
  isSeed: Int32Array,
  site: Int32Array,
  reach: number,
  [from, to]: readonly [number, number],
): void {
  const { nx, ny } = grid;
  for (let row = from * ny; row < to * ny; row++) {
    const start = row * nx;
    let last = -1;
    for (let i = 0; i < nx; i++) {
      if (isSeed[start + i]! > 0) last = i;
      site[start + i] = last >= 0 && i - last <= reach ? start + last : -1;
    }
    if (last < 0) continue;
    let next = -1;
    for (let i = nx - 1; i >= 0; i--) {
      if (isSeed[start + i]! > 0) next = i;
      if (next < 0) continue;
      const known = site[start + i]!;
      const ahead = next - i;
      if (ahead <= reach && (known < 0 || ahead < start + i - known)) site[start + i] = start + next;
    }
  }
}

/** Room for one lower envelope: parabolas by position, height, seed, and where each takes over. */
interface Envelope {
  at: Int32Array;
  height: Float64Array;
  seed: Int32Array;
  from: Float64Array;
}

const newEnvelope = (length: number): Envelope => ({
  at: new Int32Array(length),
  height: new Float64Array(length),
  seed: new Int32Array(length),
  from: new Float64Array(length),
});

/**
 * One line of `count` points, `stride` apart from `base`: `sites` holds seeds (or -1), `squared` their squared distance across the
 * line; both are replaced by the nearest along it. A line without seeds is left alone.
 */
function sweepLine(
  envelope: Envelope,
  sites: Int32Array,
  squared: Float32Array,
  count: number,
  stride: number,
  base: number,
): void {
  const { at, height, seed, from } = envelope;
  let top = -1;
  for (let q = 0, place = base; q < count; q++, place += stride) {
    const s = sites[place]!;
    if (s < 0) continue;
    const f = squared[place]! + q * q;
    let start = -1e30;
    while (top >= 0) {
      start = (f - height[top]!) / (2 * (q - at[top]!));
      if (start > from[top]!) break;
      top--;
    }
    if (top < 0) start = -1e30;
    top++;
    at[top] = q;
    height[top] = f;
    seed[top] = s;
    from[top] = start;
  }
  if (top < 0) return;
  for (let q = 0, place = base, e = 0; q < count; q++, place += stride) {
    while (e < top && from[e + 1]! < q) e++;
    sites[place] = seed[e]!;
    const away = q - at[e]!;
    squared[place] = height[e]! - at[e]! * at[e]! + away * away;
  }
}

/** Along y, plane by plane: [from, to). */
export function seedsAlongY(
  grid: Grid,
  site: Int32Array,
  reach: number,
  [from, to]: readonly [number, number],
): void {
  const { nx, ny } = grid;
  const plane = nx * ny;
  const sites = new Int32Array(plane);
  const squared = new Float32Array(plane);
  const envelope = newEnvelope(ny);
  const most = reach * reach;
  for (let k = from; k < to; k++) {
    const start = k * plane;
    for (let v = 0; v < plane; v++) {
      const s = site[start + v]!;
      sites[v] = s;
      const away = s - start - v;
      squared[v] = away * away;
    }
    for (let i = 0; i < nx; i++) sweepLine(envelope, sites, squared, ny, nx, i);
    for (let v = 0; v < plane; v++) site[start + v] = sites[v]! >= 0 && squared[v]! <= most ? sites[v]! : -1;
  }
}

/** Along z, sheet by sheet (j constant): [from, to). */
export function seedsAlongZ(grid: Grid, site: Int32Array, [from, to]: readonly [number, number]): void {
  const { nx, ny, nz } = grid;
  const plane = nx * ny;
  const sites = new Int32Array(nx * nz);
  const squared = new Float32Array(nx * nz);
  const envelope = newEnvelope(nz);
  for (let j = from; j < to; j++) {
    for (let k = 0; k < nz; k++) {
      for (let i = 0, v = k * plane + j * nx, q = k * nx; i < nx; i++, v++, q++) {
        const s = site[v]!;
        sites[q] = s;
        if (s < 0) continue;
        const inPlane = s - k * plane;
        const sj = (inPlane / nx) | 0;
        const di = inPlane - sj * nx - i;
        squared[q] = di * di + (sj - j) * (sj - j);
      }
    }
    for (let i = 0; i < nx; i++) sweepLine(envelope, sites, squared, nz, nx, i);
    for (let k = 0; k < nz; k++) site.set(sites.subarray(k * nx, k * nx + nx), k * plane + j * nx);
  }
}
