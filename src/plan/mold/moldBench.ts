import type { Estimate } from '../../estimate';
import {
  buildField,
  moldWork,
  searchPull,
  standSculpt,
  type BaseChoice,
  type Crew,
  type Field,
  type MoldBody,
  type MoldKey,
  type MoldShell,
  type MoldSettings,
  type PullChoice,
  type ScanFile,
  type Sculpt,
  type Thickness,
} from '../../geometry';
import { good, type Outcome } from '../../problem';
import { chooseVoxel, type Accuracy, type VoxelChoice } from '../chooseVoxel';
import type { SettledSolid } from '../settleSolid';
import type { SizeOptions } from '../sizeOptions';
import { settleForSize, sizeSettled, type Size } from '../sizeScan';

/**
 * A scan laid out for molds: measured once, stood on its board, with a field around it that is built when a type first asks for one and kept for the
 * next thickness. What changes inside is only this memory.
 */
export interface MoldBench {
  settled: SettledSolid;
  /** Of the sculpt, as the size has it. */
  volumeCm3: Estimate;
  accuracy: Accuracy;
  options: FieldWish;
  sculpts: Map<BaseChoice, Sculpt>;
  fields: Map<BaseChoice, Standing>;
  pulls: Map<string, PullChoice>;
  /** By base and side. */
  thicknesses: Map<string, Thickness>;
  /** Of the last settings of each type. */
  shells: Map<MoldKey, { key: string; shells: MoldShell[] }>;
}

export interface Standing {
  field: Field;
  reachMm: number;
  voxel: VoxelChoice;
}

export interface FieldWish {
  accuracy?: Accuracy | undefined;
  voxelMm?: number | undefined;
  crew?: Crew | undefined;
  onProgress?: ((share: number) => void) | undefined;
  shouldStop?: (() => boolean) | undefined;
}

/** So much farther than asked the field reaches, mm: the next thickness then needs no new one. Chosen here. */
const SPARE_MM = 5;

/** Up to this reach the voxel is the same, so that it does not depend on what was asked first. Chosen here. */
const USUAL_REACH_MM = 60;

/** The size of a scan, and the bench for its molds: it is measured once for both. Errors: those of `sizeScan`. */
export function openMoldBench(
  scan: ScanFile,
  options: SizeOptions = {},
): Outcome<{ size: Size; bench: MoldBench }> {
  const settled = settleForSize(scan, options);
  if (!settled.ok) return settled;
  const size = sizeSettled(scan, settled.value, options);
  if (!size.ok) return size;
  const bench = moldBenchOf(settled.value, size.value.volumeCm3, options);
  return good({ size: size.value, bench });
}

const moldBenchOf = (settled: SettledSolid, volumeCm3: Estimate, options: FieldWish): MoldBench => ({
  settled,
  volumeCm3,
  accuracy: options.accuracy ?? 'normal',
  options,
  sculpts: new Map(),
  fields: new Map(),
  pulls: new Map(),
  thicknesses: new Map(),
  shells: new Map(),
});

/** The sculpt and its field for one type with its settings. Errors: those of `standSculpt`, `chooseVoxel` and `buildField`. */
export function bodyFor(
  bench: MoldBench,
  key: MoldKey,
  settings: MoldSettings,
): Outcome<MoldBody & { voxel?: VoxelChoice }> {
  const base: BaseChoice = settings.base === 'closed' ? 'closed' : 'open';
  const sculpt = sculptOn(bench, base);
  if (!sculpt.ok) return sculpt;
  const reachMm = moldWork(key).reachMm(settings, sculpt.value);
  if (reachMm === 0 || sculpt.value.chain === undefined) return good({ sculpt: sculpt.value });
  const standing = fieldAround(bench, base, sculpt.value, reachMm);
  if (!standing.ok) return standing;
  const { field, voxel } = standing.value;
  const body = { sculpt: sculpt.value, field, voxel };
  if (settings.pull !== 'best') return good(body);
  const pull = bestPull(bench, base, { sculpt: sculpt.value, field, parts: String(settings.parts) });
  return pull.ok ? good({ ...body, pull: pull.value }) : pull;
}

/** Searched once for a base and a number of pieces, so that it does not depend on which thickness was asked for first. */
function bestPull(
  bench: MoldBench,
  base: BaseChoice,
  { sculpt, field, parts }: { sculpt: Sculpt; field: Field; parts: string },
): Outcome<PullChoice> {
  const key = `${base} ${parts}`;
  const known = bench.pulls.get(key);
  if (known !== undefined) return good(known);
  const found = searchPull(field, { pieces: parts === '1' ? 1 : 2, onBoard: sculpt.boardMm !== undefined });
  if (found.ok) bench.pulls.set(key, found.value);
  return found;
}

/** The sculpt as it stands on its board or hangs free; worked out once. Errors: those of `standSculpt`. */
export function sculptOn(bench: MoldBench, base: BaseChoice): Outcome<Sculpt> {
  const known = bench.sculpts.get(base);
  if (known !== undefined) return good(known);
  const stood = standSculpt(bench.settled.solid, base);
  if (stood.ok) bench.sculpts.set(base, stood.value);
  return stood;
}

function fieldAround(bench: MoldBench, base: BaseChoice, sculpt: Sculpt, reachMm: number): Outcome<Standing> {
  const known = bench.fields.get(base);
  const { crew, onProgress, shouldStop, voxelMm } = bench.options;
  const watched = {
    ...(onProgress === undefined ? {} : { onProgress }),
    ...(shouldStop === undefined ? {} : { shouldStop }),
  };
  if (known !== undefined && known.reachMm >= reachMm) {
    const { voxelMm: edge, levelsMm, baseMm, crew: team } = known.field.options;
    const options = {
      voxelMm: edge,
      levelsMm,
      ...(baseMm === undefined ? {} : { baseMm }),
      ...(team === undefined ? {} : { crew: team }),
      ...watched,
    };
    return good({ ...known, field: { ...known.field, options } });
  }
  const spareMm = reachMm + SPARE_MM;
  const voxel = chooseVoxel({
    bounds: sculpt.bounds,
    offsetsMm: [Math.max(spareMm, USUAL_REACH_MM)],
    thinnestMm: undefined,
    accuracy: bench.accuracy,
    ...(voxelMm === undefined ? {} : { voxelMm }),
  });
  if (!voxel.ok) return voxel;
  const field = buildField(sculpt.chain!, sculpt.bounds, {
    voxelMm: voxel.value.voxelMm,
    levelsMm: [spareMm],
    ...(sculpt.boardMm === undefined ? {} : { baseMm: sculpt.boardMm }),
    ...(crew === undefined ? {} : { crew }),
    ...watched,
  });
  if (!field.ok) return field;
  const standing = { field: field.value, reachMm: spareMm, voxel: voxel.value };
  bench.fields.set(base, standing);
  return good(standing);
}
