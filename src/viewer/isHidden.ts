import type { Vector } from '../geometry';
import { CUT_NORMALS, type Cut } from './cut';
import type { Drawable } from './drawable';

/** The place is looked for this far above the surface, as a share of the piece: what is drawn is a simpler surface. Chosen here. */
const ABOVE_SHARE = 0.008;

/** Whether the piece itself stands between a place on it and the eye. What a cut takes away hides nothing. */
export function isHidden(
  { positions: p, index, halfUnits }: Drawable,
  place: { at: Vector; normal?: Vector | undefined; toEye: Vector },
  cut: Cut | undefined,
): boolean {
  const { at, toEye } = place;
  const above = ABOVE_SHARE * Math.max(...halfUnits);
  const off = place.normal ?? toEye;
  const [x, y, z] = [at[0] + above * off[0], at[1] + above * off[1], at[2] + above * off[2]];
  const [dx, dy, dz] = toEye;
  const [nx, ny, nz] = cut === undefined ? [0, 0, 0] : CUT_NORMALS[cut.axis];
  const limit = cut?.at ?? 1;
  for (let t = 0; t < index.length; t += 3) {
    const [a, b, c] = [3 * index[t]!, 3 * index[t + 1]!, 3 * index[t + 2]!];
    const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!];
    const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!];
    const [hx, hy, hz] = [dy * vz - dz * vy, dz * vx - dx * vz, dx * vy - dy * vx];
    const det = ux * hx + uy * hy + uz * hz;
    if (det === 0) continue;
    const [sx, sy, sz] = [x - p[a]!, y - p[a + 1]!, z - p[a + 2]!];
    const alongU = (sx * hx + sy * hy + sz * hz) / det;
    if (alongU < 0 || alongU > 1) continue;
    const [qx, qy, qz] = [sy * uz - sz * uy, sz * ux - sx * uz, sx * uy - sy * ux];
    const alongV = (dx * qx + dy * qy + dz * qz) / det;
    if (alongV < 0 || alongU + alongV > 1) continue;
    const far = (vx * qx + vy * qy + vz * qz) / det;
    if (far <= 0) continue;
    const [px, py, pz] = [x + far * dx, y + far * dy, z + far * dz];
    if (nx * px + ny * py + nz * pz <= limit) return true;
  }
  return false;
}
