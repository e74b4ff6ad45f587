import type { Estimate } from '../estimate';
import {
  buildField,
  measureAndCheck,
  rimDoubtMm3,
  thinWalls,
  type Crew,
  type LevelVolume,
  type Rim,
  type SolidMeasure,
  type ThinWalls,
  type TriangleMesh,
} from '../geometry';
import { good, type Outcome } from '../problem';
import { chooseVoxel, type Accuracy, type VoxelChoice } from './chooseVoxel';
import { CUT_HEIGHT_DOUBT_MM, MM3_PER_CM3 } from './sizeDoubts';
import type { Scale } from './scale';

/** The body grown (positive) or shrunk (negative) by a distance, all round. */
export interface OffsetVolume {
  offsetMm: number;
  /** Of the solid: an inner void shrinks as the body grows. */
  volumeCm3: Estimate;
  /** The same round the envelope alone, its voids filled; only where there are voids. */
  envelopeCm3?: Estimate;
  /** Of the offset surface, cm2. */
  areaCm2: number;
}

export interface Offsets {
  volumes: OffsetVolume[];
  voxel: VoxelChoice;
  accuracy: Accuracy;
  /** The volume of the body by the field, beside the one of the size, and how well they should agree. */
  check: { fieldCm3: number; differenceCm3: number; toleranceCm3: number };
  /** Walls thinner than two voxels: offsets close to the surface are not sure there. */
  thin?: { thinnestMm: number; areaCm2: number };
}

export interface OffsetOptions {
  offsetsMm: readonly number[];
  accuracy?: Accuracy;
  voxelMm?: number;
  crew?: Crew;
  onProgress?: (share: number) => void;
  shouldStop?: () => boolean;
}

/**
 * What the field may be off by beyond what it says itself, at 95 of 100: a share of the volume, and a layer over the offset surface in
 * voxels. Measured over 400 seeded bodies: `npm run bench -- coverage` tells how many lie in their range.
 */
const FIELD_SHARE = 5e-5;
const FIELD_LAYER_VOXELS = 1.5e-3;

/**
 * Walls thinner than this are told; levels this close to the surface are in doubt there by a layer this thick. In voxels. Chosen here, by shells and
 * plates of 0.1 to 3 mm.
 */
const [THIN_VOXELS, CLOSE_VOXELS, THIN_LAYER_VOXELS] = [2, 4, 0.5];

/** The check is loud only beyond twice that: it is there for folds and inner walls, not for the grid. Chosen here. */
const CHECK_TIMES = 2;

/** Errors: STOPPED, those of `chooseVoxel`, SELF_INTERSECT as `buildField` has it. */
export function measureOffsets(solid: SolidMeasure, scale: Scale, options: OffsetOptions): Outcome<Offsets> {
  const accuracy = options.accuracy ?? 'normal';
  const walls = thinWalls(solid.chain, solid.bounds);
  const choice = voxelFor(solid, options.offsetsMm, options, walls);
  if (!choice.ok) return choice;
  const voxel = choice.value;
  const thin = walls.thinnerThan(THIN_VOXELS * voxel.voxelMm);
  const hasVoids = solid.envelope !== solid.chain;
  const halved = (from: number) => (share: number) =>
    options.onProgress?.(hasVoids ? from + share / 2 : share);
  const levels = levelsOf(solid.chain, solid, voxel.voxelMm, { ...options, onProgress: halved(0) });
  if (!levels.ok) return levels;
  const { volumes: grown, fieldMm3 } = levels.value;
  const around = hasVoids
    ? levelsOf(solid.envelope, solid, voxel.voxelMm, { ...options, onProgress: halved(0.5) })
    : undefined;
  if (around !== undefined && !around.ok) return around;
  const volumes = options.offsetsMm.map((offsetMm, i): OffsetVolume => {
    const estimate = (level: LevelVolume): Estimate =>
      offsetEstimate(solid, scale, level, { offsetMm, voxelMm: voxel.voxelMm, thinMm2: thin.areaMm2 });
    return {
      offsetMm,
      volumeCm3: estimate(grown[i]!),
      areaCm2: grown[i]!.areaMm2 / 100,
      ...(around === undefined ? {} : { envelopeCm3: estimate(around.value.volumes[i]!) }),
    };
  });
  return good({
    volumes,
    voxel,
    accuracy,
    check: {
      fieldCm3: fieldMm3 / MM3_PER_CM3,
      differenceCm3: (fieldMm3 - solid.volumeMm3) / MM3_PER_CM3,
      toleranceCm3: checkToleranceMm3(solid, voxel.voxelMm) / MM3_PER_CM3,
    },
    ...(thin.areaMm2 > 0 ? { thin: { thinnestMm: thin.thinnestMm, areaCm2: thin.areaMm2 / 100 } } : {}),
  });
}

/** The voxel for these offsets of a solid. */
export function voxelFor(
  solid: SolidMeasure,
  offsetsMm: readonly number[],
  { accuracy, voxelMm }: { accuracy?: Accuracy | undefined; voxelMm?: number | undefined },
  walls: ThinWalls = thinWalls(solid.chain, solid.bounds),
): Outcome<VoxelChoice> {
  return chooseVoxel({
    bounds: solid.bounds,
    offsetsMm,
    thinnestMm: walls.thinnestMm,
    accuracy: accuracy ?? 'normal',
    ...(voxelMm === undefined ? {} : { voxelMm }),
  });
}

function levelsOf(
  chain: TriangleMesh,
  { bounds }: SolidMeasure,
  voxelMm: number,
  options: OffsetOptions,
): Outcome<{ volumes: LevelVolume[]; fieldMm3: number }> {
  const { offsetsMm } = options;
  const field = buildField(chain, bounds, { ...options, voxelMm, levelsMm: [0, ...offsetsMm] });
  if (!field.ok) return field;
  // The body itself comes along, as a check of its volume on a way of its own.
  const measured = measureAndCheck(field.value, offsetsMm, [0]);
  if (!measured.ok) return measured;
  const { volumes, checksMm3 } = measured.value;
  return good({ volumes, fieldMm3: checksMm3[0]! });
}

/** The check has no octants: its voxels are twice as large. */
const checkToleranceMm3 = ({ volumeMm3, areaMm2, doubt }: SolidMeasure, voxelMm: number): number =>
  CHECK_TIMES * Math.hypot(FIELD_SHARE * volumeMm3, FIELD_LAYER_VOXELS * 2 * voxelMm * areaMm2) +
  doubt.overlapMm3 +
  doubt.weldMm3;

/**
 * The range of an offset volume: what the field says of itself, and everything that makes the volume itself doubtful, carried outward. By a
 * share s of the scale V(L) changes by s (3 V - L A), as V(L) of a body k times as large is k^3 V(L / k).
 */
function offsetEstimate(
  { doubt, rims, areaMm2, cutAreaMm2 }: SolidMeasure,
  scale: Scale,
  level: LevelVolume,
  { offsetMm, voxelMm, thinMm2 }: { offsetMm: number; voxelMm: number; thinMm2: number },
): Estimate {
  const growth = Math.max(1, level.areaMm2 / areaMm2);
  const half = Math.hypot(
    fieldDoubtMm3(level, voxelMm),
    Math.abs(offsetMm) < CLOSE_VOXELS * voxelMm ? THIN_LAYER_VOXELS * voxelMm * thinMm2 : 0,
    capsDoubtMm3(rims, offsetMm, growth),
    growth * doubt.weldMm3,
    doubt.overlapMm3,
    scale.doubtShare * Math.abs(3 * level.volumeMm3 - offsetMm * level.areaMm2),
    growth * CUT_HEIGHT_DOUBT_MM * cutAreaMm2,
    growth * doubt.coordinatesMm3,
  );
  return {
    value: level.volumeMm3 / MM3_PER_CM3,
    low: Math.max(0, level.volumeMm3 - half) / MM3_PER_CM3,
    high: (level.volumeMm3 + half) / MM3_PER_CM3,
    from: scale.from === 'taped' ? 'taped' : 'scanned',
  };
}

/** Half-width of a level's volume by the field alone, mm3, at 95 of 100. */
export const fieldDoubtMm3 = ({ doubtMm3, volumeMm3, areaMm2 }: LevelVolume, voxelMm: number): number =>
  Math.hypot(doubtMm3, FIELD_SHARE * volumeMm3, FIELD_LAYER_VOXELS * voxelMm * areaMm2);

/**
 * What the closing of the rims could change at an offset. Outward it grows with the surface. A dent spreads as the body shrinks: a shallow
 * dome of volume D over an area A has curvature 4 pi D / A^2 (height 2 D / A over a radius of sqrt(A / pi)), and what lies below it spreads by that
 * for every mm (derived here).
 */
function capsDoubtMm3(rims: readonly Rim[], offsetMm: number, growth: number): number {
  return rims.reduce((total, rim) => {
    const doubtMm3 = rimDoubtMm3(rim);
    if (offsetMm >= 0) return total + growth * doubtMm3;
    // A folded rim has little area of its own: no less than a quarter of the circle of its length.
    const areaMm2 = Math.max(rim.areaMm2, rim.lengthMm ** 2 / (16 * Math.PI));
    return total + doubtMm3 * Math.max(growth, 1 + (4 * Math.PI * doubtMm3 * -offsetMm) / areaMm2 ** 2);
  }, 0);
}
