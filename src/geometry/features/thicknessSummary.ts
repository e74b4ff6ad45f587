import type { Field } from '../field/buildField';
import type { Vector } from '../measure/planeFrame';
import type { Covered, Valley } from './thicknessPlaces';

/** How thick a body is, or how wide its gaps are. Lengths in mm, places in the scan's own axes. */
export interface Thickness {
  /** Samples of the surface, with the root of the mean area of one. */
  sampleCount: number;
  spacingMm: number;
  /**
   * Share of the area without a thickness. At edges and corners no ball lies between two faces that face each other; nor does it over most of
   * the faces of a cube, where the nearest other face stands across. There it is at least as thick as what is found next to it.
   */
  notMeasuredShare: number;
  /** What is this thick or thicker is told as this. */
  cappedMm: number;
  /** Root mean square roughness of the surface, and how far beyond a ball a sample may lie because of it. */
  roughnessMm: number;
  toleranceMm: number;
  /** Of the thinnest place: single spots too small for a place do not count, unless there is no place. NaN where nothing was measured. */
  minMm: number;
  /** A twentieth, and half, of the measured area is thinner. NaN where nothing was measured. */
  p05Mm: number;
  medianMm: number;
  /** At most ten, thinnest first. */
  thinnest: ThinPlace[];
  /** Three numbers a sample. */
  positions: Float32Array;
  /** NaN: not measured. */
  thicknessMm: Float32Array;
  /** What a sample stands for. */
  areaMm2: Float32Array;
}

/** A thin place: the region around its thinnest spot that is at most half as thick again. */
export interface ThinPlace {
  /** On the surface, in the middle of where it is thinnest. */
  atMm: Vector;
  thicknessMm: number;
  /** Of the region, both faces of a fin. */
  areaMm2: number;
  /** How far the region reaches from where it joins thicker material: height of a fin, length of a finger. */
  lengthMm: number;
  /** Length by thickness. */
  slenderness: number;
}

/** Share of the measured area that is thinner than this; 0 where nothing was measured. */
export function shareThinner(
  { thicknessMm, areaMm2 }: Pick<Thickness, 'thicknessMm' | 'areaMm2'>,
  thinMm: number,
): number {
  let thin = 0;
  let all = 0;
  thicknessMm.forEach((mm, s) => {
    if (Number.isNaN(mm)) return;
    all += areaMm2[s]!;
    if (mm < thinMm) thin += areaMm2[s]!;
  });
  return all === 0 ? 0 : thin / all;
}

export function summaryOf(
  field: Field,
  { covered, valleys }: { covered: Covered; valleys: readonly Valley[] },
): Omit<Thickness, 'cappedMm' | 'roughnessMm' | 'toleranceMm'> {
  const { samples, thicknessMm } = covered;
  const order = Array.from(thicknessMm.keys()).filter((s) => thicknessMm[s]! > 0);
  order.sort((a, b) => thicknessMm[a]! - thicknessMm[b]!);
  const measured = order.reduce((sum, s) => sum + samples.areaMm2[s]!, 0);
  const all = samples.areaMm2.reduce((sum, area) => sum + area, 0);
  const atShare = (share: number): number => {
    let sum = 0;
    const s = order.find((one) => (sum += samples.areaMm2[one]!) >= share * measured);
    return s === undefined ? NaN : thicknessMm[s]!;
  };
  return {
    sampleCount: samples.count,
    spacingMm: samples.spacingMm,
    notMeasuredShare: all === 0 ? 1 : Math.max(0, 1 - measured / all),
    minMm: valleys[0]?.thicknessMm ?? atShare(0),
    p05Mm: atShare(0.05),
    medianMm: atShare(0.5),
    thinnest: valleys.map((valley) => placeOf(field, covered, valley)),
    positions: toScan(field, samples.at),
    thicknessMm,
    areaMm2: samples.areaMm2,
  };
}

function placeOf(field: Field, { samples }: Covered, valley: Valley): ThinPlace {
  const at = toScan(field, samples.at.subarray(3 * valley.sample, 3 * valley.sample + 3));
  return {
    atMm: [at[0]!, at[1]!, at[2]!],
    thicknessMm: valley.thicknessMm,
    areaMm2: valley.areaMm2,
    lengthMm: valley.lengthMm,
    slenderness: valley.lengthMm / valley.thicknessMm,
  };
}

/** From the field's frame into the scan's axes: the turn backward, by the columns of its rows. */
function toScan({ surface }: Field, at: Float32Array): Float32Array {
  const { rows, originMm } = surface.frame;
  const turned = new Float32Array(at.length);
  for (let p = 0; p < at.length; p += 3)
    for (let a = 0; a < 3; a++)
      turned[p + a] =
        originMm[a]! + rows[a]! * at[p]! + rows[3 + a]! * at[p + 1]! + rows[6 + a]! * at[p + 2]!;
  return turned;
}
