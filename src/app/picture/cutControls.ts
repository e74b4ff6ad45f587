import type { CutPlane } from '../../worker/protocol';
import { formatLength } from '../../units';
import { oneTwoFive } from '../../viewer/oneTwoFive';

/** Bounds along the axes of the placed piece, mm. */
export interface BoxMm {
  min: readonly [number, number, number];
  max: readonly [number, number, number];
}

/** From where a cut is looked at. The side is the piece's right, as on the place card. */
export const CUT_WAYS = [
  { axis: 'y', word: 'Cut from the front', view: 'front', reads: ['behind its front', 'before its front'] },
  { axis: 'x', word: 'Cut from the side', view: 'right', reads: ['in from its right', 'out from its right'] },
  { axis: 'z', word: 'Cut from above', view: 'top', reads: ['below its top', 'above its top'] },
] as const;

export type CutWay = (typeof CUT_WAYS)[number];

export const wayOf = (axis: CutPlane['axis']): CutWay => CUT_WAYS.find((way) => way.axis === axis)!;

const axisNo = (axis: CutPlane['axis']): 0 | 1 | 2 => ({ x: 0, y: 1, z: 2 })[axis] as 0 | 1 | 2;

/** Positions of the plane over the box, in steps of a round number. Chosen here. */
const STEPS = 200;

export interface CutRange {
  /** Depth from the near side of what is drawn, mm. */
  mostMm: number;
  stepMm: number;
  depthMm: number;
}

/** Where a plane stands between the near and the far side of the box. */
export function cutRange({ axis, atMm }: CutPlane, box: BoxMm): CutRange {
  const k = axisNo(axis);
  const span = box.max[k] - box.min[k];
  const stepMm = oneTwoFive(Math.max(span, 1e-6) / STEPS);
  return { mostMm: Math.floor(span / stepMm) * stepMm, stepMm, depthMm: box.max[k] - atMm };
}

/** A plane so deep from the near side. */
export const planeAt = (axis: CutPlane['axis'], depthMm: number, box: BoxMm): CutPlane => ({
  axis,
  atMm: box.max[axisNo(axis)] - depthMm,
});

/** Through the middle of the sculpt. */
export const middlePlane = (axis: CutPlane['axis'], sculpt: BoxMm): CutPlane => ({
  axis,
  atMm: (sculpt.min[axisNo(axis)] + sculpt.max[axisNo(axis)]) / 2,
});

/** "62 mm (2.44 in) behind its front": of the sculpt, so that it can be found with a tape. */
export function cutWords({ axis, atMm }: CutPlane, sculpt: BoxMm): string {
  const depthMm = sculpt.max[axisNo(axis)] - atMm;
  const [inside, outside] = wayOf(axis).reads;
  const shown = Number(Math.abs(depthMm).toFixed(1));
  return `${formatLength(shown)} ${depthMm >= 0 ? inside : outside}`;
}

export const isSamePlane = (a: CutPlane | undefined, b: CutPlane | undefined): boolean =>
  a?.axis === b?.axis && a?.atMm === b?.atMm;
