import { finding, type Problem } from '../../problem';
import type { Field } from '../field/buildField';
import type { LevelVolume } from '../field/levelVolume';
import type { Sculpt } from './sculpt';

/** A level closer to the sculpt than this many grid steps is not told well by voxels. Chosen here. */
const CLOSE_STEPS = 1.5;

const isClose = ({ grid }: Pick<Field, 'grid'>, mm: number): boolean => mm < CLOSE_STEPS * grid.spacingMm;

/** Half the skin: measured too, for the coats; nothing where that is too close to the sculpt. */
export const measuredForCoats = (field: Field, coatsMm: readonly number[], skinMm: number): number[] =>
  coatsMm.length === 0 || isClose(field, skinMm / 2) ? [] : [skinMm / 2];

/**
 * What each coat brings. Volume against thickness is the curve of third degree with the volume and the area of the sculpt and of the skin
 * (Hermite), which is exact where Steiner's formula is, bent by a fourth degree to pass through what was measured half-way.
 */
export function coatVolumes(
  coatsMm: readonly number[],
  {
    skinMm,
    sculpt,
    grown,
    halfMm3,
  }: { skinMm: number; sculpt: Sculpt; grown: LevelVolume; halfMm3: number | undefined },
): { toMm: number; volumeMm3: number }[] {
  const bend = halfMm3 === undefined ? 0 : 16 * (halfMm3 - hermite(0.5, skinMm, sculpt, grown));
  const within = (mm: number): number => {
    const t = mm / skinMm;
    return hermite(t, skinMm, sculpt, grown) + bend * (t * (1 - t)) ** 2;
  };
  return [...coatsMm, skinMm].map((mm, i) => ({
    toMm: mm,
    volumeMm3: within(mm) - (i === 0 ? sculpt.volumeMm3 : within(coatsMm[i - 1]!)),
  }));
}

/** @param t share of the skin */
function hermite(t: number, skinMm: number, sculpt: Sculpt, grown: LevelVolume): number {
  const [t2, t3] = [t * t, t * t * t];
  return (
    (2 * t3 - 3 * t2 + 1) * sculpt.volumeMm3 +
    (t3 - 2 * t2 + t) * skinMm * sculpt.areaMm2 +
    (3 * t2 - 2 * t3) * grown.volumeMm3 +
    (t3 - t2) * skinMm * grown.areaMm2
  );
}

/** Says so where nothing between sculpt and skin could be measured. */
export const coatFindings = (field: Field, coatsMm: readonly number[], skinMm: number): Problem[] =>
  coatsMm.length > 0 && isClose(field, skinMm / 2)
    ? [finding('COATS_BY_AREA', 'fine', { voxelMm: field.voxelMm })]
    : [];
