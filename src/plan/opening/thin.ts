import {
  buildField,
  extentsOf,
  measureThickness,
  shareThinner,
  type BaseChoice,
  type Sculpt,
  type Thickness,
  type Vector,
  type Watched,
} from '../../geometry';
import { good, type Outcome } from '../../problem';
import { DEMOLD_RULES } from '../../yield';
import { chooseVoxel } from '../chooseVoxel';
import type { MoldBench } from '../mold/moldBench';

/** A thin place, in mm on the placed piece. */
export interface ThinSpot {
  atMm: Vector;
  thicknessMm: number;
  areaCm2: number;
  /** How far the thin part reaches, and that over its thickness: ears, fins, fingers. */
  lengthMm: number;
  slenderness: number;
}

/** Thickness of the casting, or of the rubber between two of its parts. */
export interface ThicknessFound {
  minMm: number;
  p05Mm: number;
  medianMm: number;
  /** Thicker than this is told as this. */
  cappedMm: number;
  /** Thinner than this is thin, and so much of the whole surface is. */
  thinMm: number;
  shareThin: number;
  /** Share of the surface near edges and on wide flat faces that has no thickness. */
  notMeasuredShare: number;
  roughnessMm: number;
  places: ThinSpot[];
}

const WEB_MOST_MM = DEMOLD_RULES.rubberLooked.value;

/** Casting: largest balls inside. Errors: those of `chooseVoxel`, `buildField`, `measureThickness`. */
export function castingThickness(
  bench: MoldBench,
  base: BaseChoice,
  sculpt: Sculpt,
  { thinMm = DEMOLD_RULES.castingStop.value, ...watch }: { thinMm?: number } & Watched,
): Outcome<ThicknessFound> {
  const found = castingSamples(bench, base, sculpt, watch);
  return found.ok ? good(foundIn(found.value, thinMm)) : found;
}

/** The same with every sample of the surface; measured once for a bench. */
export const castingSamples = (
  bench: MoldBench,
  base: BaseChoice,
  sculpt: Sculpt,
  watch: Watched,
): Outcome<Thickness> =>
  thicknessOn(bench, sculpt, {
    key: `${base} inside`,
    levelMm: -Math.min(...extentsOf(sculpt.bounds)) / 2,
    side: 'inside',
    ...watch,
  });

/** Rubber in the gaps between the sculpt's own parts, as far as DEMOLD_RULES.rubberLooked. Errors: as above. */
export function webThickness(
  bench: MoldBench,
  base: BaseChoice,
  sculpt: Sculpt,
  watch: Watched,
): Outcome<ThicknessFound> {
  const found = thicknessOn(bench, sculpt, {
    key: `${base} outside`,
    levelMm: WEB_MOST_MM / 2,
    side: 'outside',
    ...watch,
  });
  return found.ok ? good(foundIn(found.value, DEMOLD_RULES.rubberStop.value)) : found;
}

interface ThicknessWish extends Watched {
  key: string;
  levelMm: number;
  side: 'inside' | 'outside';
}

/** Share of the work that is the field. */
const FIELD_SHARE = 0.3;

function thicknessOn(
  bench: MoldBench,
  sculpt: Sculpt,
  { key, levelMm, side, onProgress, shouldStop }: ThicknessWish,
): Outcome<Thickness> {
  const known = bench.thicknesses.get(key);
  if (known !== undefined) return good(known);
  const { crew, voxelMm } = bench.options;
  const voxel = chooseVoxel({
    bounds: sculpt.bounds,
    offsetsMm: [Math.max(0, levelMm)],
    thinnestMm: undefined,
    accuracy: bench.accuracy,
    ...(voxelMm === undefined ? {} : { voxelMm }),
  });
  if (!voxel.ok) return voxel;
  const told = (from: number, to: number): Watched => ({
    ...(onProgress === undefined ? {} : { onProgress: (share) => onProgress(from + (to - from) * share) }),
    ...(shouldStop === undefined ? {} : { shouldStop }),
  });
  const field = buildField(sculpt.chain!, sculpt.bounds, {
    voxelMm: voxel.value.voxelMm,
    levelsMm: [levelMm],
    ...(crew === undefined ? {} : { crew }),
    ...told(0, FIELD_SHARE),
  });
  if (!field.ok) return field;
  const found = measureThickness(field.value, {
    side,
    ...(side === 'outside' ? { mostMm: WEB_MOST_MM } : {}),
    ...(sculpt.boardMm === undefined ? {} : { baseMm: sculpt.boardMm }),
    ...told(FIELD_SHARE, 1),
  });
  if (found.ok) bench.thicknesses.set(key, found.value);
  return found;
}

function foundIn(found: Thickness, thinMm: number): ThicknessFound {
  const { minMm, p05Mm, medianMm, cappedMm, notMeasuredShare, roughnessMm } = found;
  return {
    minMm,
    p05Mm,
    medianMm,
    cappedMm,
    thinMm,
    shareThin: (1 - notMeasuredShare) * shareThinner(found, thinMm),
    notMeasuredShare,
    roughnessMm,
    places: found.thinnest.map(({ atMm, thicknessMm, areaMm2, lengthMm, slenderness }) => ({
      atMm,
      thicknessMm,
      areaCm2: areaMm2 / 100,
      lengthMm,
      slenderness,
    })),
  };
}
