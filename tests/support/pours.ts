import type { TriangleMesh } from '../../src/geometry';
import { findAirTraps, type AirTraps } from '../../src/geometry/features/airTraps';
import { lipHeights, mouthOn, type Mouth } from '../../src/geometry/features/mouth';
import { openRuns } from '../../src/geometry/features/openRuns';
import { pourColumns } from '../../src/geometry/features/pourColumns';
import { adviseVents, type VentAdvice } from '../../src/geometry/features/vents';
import { mapPoints } from './meshTools';
import type { Vec3 } from './shapes';

/** A body with one hole, poured: everything in mm. */
export interface Pour {
  atMm: Vec3;
  diameterMm: number;
  up?: Vec3;
  normal?: Vec3;
  vents?: readonly Vec3[];
  stepMm?: number;
  /** Smaller pockets are pinholes. */
  leastMm3?: number;
}

export const UP: Vec3 = [0, 0, 1];
export const DEGREES = Math.PI / 180;

export const mouthOf = (body: TriangleMesh, { atMm, diameterMm, normal }: Pour): Mouth =>
  mouthOn(body, { atMm, diameterMm, ...(normal === undefined ? {} : { normal }) });

export function trapsOf(body: TriangleMesh, pour: Pour): AirTraps {
  const { up = UP, vents = [], stepMm = 1, leastMm3 = 1000 } = pour;
  const columns = pourColumns(body, up, stepMm);
  const holes = { mouth: mouthOf(body, pour), vents: vents.map((atMm) => ({ atMm })) };
  return findAirTraps(columns, openRuns(columns.columns, columns.body.axes, holes), { leastMm3 });
}

export function ventsFor(body: TriangleMesh, pour: Pour): VentAdvice {
  const { up = UP, vents = [], stepMm = 1, leastMm3 = 1000 } = pour;
  return adviseVents(pourColumns(body, up, stepMm), {
    mouth: mouthOf(body, pour),
    vents: vents.map((atMm) => ({ atMm })),
    leastMm3,
  });
}

/** Height of the highest point of the rim. */
export const upperLipMm = (body: TriangleMesh, pour: Pour): number =>
  lipHeights(mouthOf(body, pour), pour.up ?? UP).highMm;

export type Turn = (p: Vec3) => Vec3;

/** About an axis through the origin, by the right hand (Rodrigues' formula). */
export function turnAbout(axis: Vec3, degrees: number): Turn {
  const length = Math.hypot(...axis);
  const [x, y, z] = axis.map((a) => a / length) as [number, number, number];
  const [c, s] = [Math.cos(degrees * DEGREES), Math.sin(degrees * DEGREES)];
  return ([px, py, pz]) => {
    const along = (1 - c) * (x * px + y * py + z * pz);
    return [
      c * px + s * (y * pz - z * py) + along * x,
      c * py + s * (z * px - x * pz) + along * y,
      c * pz + s * (x * py - y * px) + along * z,
    ];
  };
}

export const turnedBy = (body: TriangleMesh, turn: Turn): TriangleMesh => mapPoints(body, (p) => turn(p));

/** The pour of a body turned in the same way. */
export const pourTurned = (pour: Pour, turn: Turn): Pour => ({
  ...pour,
  atMm: turn(pour.atMm),
  up: turn(pour.up ?? UP),
  ...(pour.normal === undefined ? {} : { normal: turn(pour.normal) }),
  ...(pour.vents === undefined ? {} : { vents: pour.vents.map(turn) }),
});
