import type { Outcome } from '../../problem';
import type { Field } from '../field/buildField';
import { sampleField, type SampleLevel, type Samples } from '../field/sampleField';
import type { Vector } from '../measure/planeFrame';
import { shear, type Sheared } from './sheared';
import { larger, sweep } from './sweep';
import { volumeWithin, type Within } from './volumeWithin';

/** How a rigid jacket leaves the rubber: in one piece along the pull, or in two drawn apart along it and against it. */
export interface Leaving {
  /** Unit vector in the scan's axes. */
  pull: Vector;
  pieces: 1 | 2;
  draftDegrees: number;
}

/** The rubber with everything filled that would hold the jacket. */
export interface SweptBody {
  sheared: Sheared;
  /** Distance from the body swept by the pieces; not more than the distance itself. */
  swept: Float32Array;
  /** Within the skin: as it is, and with its undercuts filled. */
  skin: Within;
  filled: Within;
  /** Within the jacket's outer face. */
  jacketed: Within;
  /** Length of the line where two pieces meet, above the board, mm. */
  partingMm: number;
}

/** Distances for the skin and the jacket around it: exact from the skin to where the draft carries it. Errors: STOPPED. */
export function sampleSkin(
  field: Field,
  { skinMm, jacketMm, draftMm = 0 }: { skinMm: number; jacketMm: number; draftMm?: number },
): Outcome<Samples> {
  const outerMm = skinMm + jacketMm;
  const levels: SampleLevel[] = draftMm > 0 ? [[skinMm, outerMm + draftMm]] : [skinMm, outerMm];
  return sampleField(field, levels);
}

/** How far a draft can carry the skin over this height. */
export const draftReachMm = (draftDegrees: number, tallMm: number): number =>
  draftDegrees === 0 ? 0 : tallMm * Math.tan((draftDegrees * Math.PI) / 180);

export function sweepBody(
  field: Field,
  samples: Samples,
  { skinMm, jacketMm }: { skinMm: number; jacketMm: number },
  leaving: Leaving,
): SweptBody {
  const outerMm = skinMm + jacketMm;
  const sheared = shear(samples, { pull: toGrid(field, leaving.pull) });
  const swept = sweptBy(sheared, leaving);
  return {
    sheared,
    swept,
    partingMm: leaving.pieces === 2 ? partingMm(sheared, skinMm) : 0,
    skin: volumeWithin(sheared, sheared.values, skinMm),
    filled: volumeWithin(sheared, swept, skinMm),
    jacketed: volumeWithin(sheared, swept, outerMm),
  };
}

/**
 * Length of the outline of the skin's shadow along the pull, above the board. Along a line of the pull the least distance is the distance of the
 * line from the body: a distance in the plane, whose area within a level grows by the length of the outline (Steiner). The shadow's
 * own plane stands across the pull; places of the array are as much closer as the pull leans.
 */
function partingMm(sheared: Sheared, skinMm: number): number {
  const { nu, nv, values, spacingMm: step, stepMm, height } = sheared;
  const shadow = new Float32Array(nu * nv).fill(Infinity);
  const plane = new Int32Array(nu * nv);
  for (let v = 0; v < values.length; v++) {
    const p = v % (nu * nv);
    if (values[v]! >= shadow[p]!) continue;
    shadow[p] = values[v]!;
    plane[p] = Math.floor(v / (nu * nv));
  }
  let grown = 0;
  for (let j = 0, p = 0; j < nv; j++)
    for (let i = 0; i < nu; i++, p++) {
      const over =
        height === undefined
          ? 0
          : height.atZero + height.perU * i + height.perV * j + height.perW * plane[p]!;
      if (over <= -1) continue;
      const share = (far: number): number => Math.min(1, Math.max(0, 0.5 - far / step));
      const far = shadow[p]! - skinMm;
      grown += (share(far - step / 2) - share(far + step / 2)) * (over >= 0 ? 1 : over + 1);
    }
  // A cell of the array covers step^2 times the cosine of the lean; the level moved by one step.
  return (grown * step * step) / stepMm;
}

/** The swept distance of all pieces. */
export function sweptBy(sheared: Sheared, { pieces, draftDegrees }: Omit<Leaving, 'pull'>): Float32Array {
  const ahead = sweep(sheared, { draftDegrees });
  return pieces === 1 ? ahead : larger(ahead, sweep(sheared, { sense: -1, draftDegrees }));
}

/** A direction of the scan in the axes of the field's grid. */
export function toGrid({ surface }: Field, [x, y, z]: Vector): Vector {
  const r = surface.frame.rows;
  return [r[0] * x + r[1] * y + r[2] * z, r[3] * x + r[4] * y + r[5] * z, r[6] * x + r[7] * y + r[8] * z];
}

/** A direction of the grid in the axes of the scan. */
export function fromGrid({ surface }: Field, [x, y, z]: Vector): Vector {
  const r = surface.frame.rows;
  return [r[0] * x + r[3] * y + r[6] * z, r[1] * x + r[4] * y + r[7] * z, r[2] * x + r[5] * y + r[8] * z];
}

/** A place in grid coordinates as a point of the scan. */
export function pointFromGrid(field: Field, place: Vector): Vector {
  const [x, y, z] = fromGrid(field, place);
  const o = field.surface.frame.originMm;
  return [x + o[0], y + o[1], z + o[2]];
}

/** Grid coordinates of a place of a sheared array, mm. */
export function placeIn(
  { axes, originMm, spacingMm, slopeU, slopeV }: Sheared,
  i: number,
  j: number,
  k: number,
): Vector {
  const at: [number, number, number] = [...originMm];
  at[axes[0]]! += (i + k * slopeU) * spacingMm;
  at[axes[1]]! += (j + k * slopeV) * spacingMm;
  at[axes[2]]! += k * spacingMm;
  return at;
}
