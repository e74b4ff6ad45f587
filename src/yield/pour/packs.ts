import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { planBatch } from '../batch';
import type { Batch } from '../batch';
import type { BatchInputs } from '../batchInputs';
import { checkPack } from '../packFactor';
import { RULES } from '../rules';
import { settleBatch } from '../settleBatch';
import { clampForce } from './clamp';
import type { Clamp } from './clamp';
import { fillRate } from './fillRate';
import type { FillRate } from './fillRate';
import { packCost } from './packCost';
import type { PackCost, PourPrices } from './packCost';
import { packLevels } from './packLevels';
import type { PackLevels } from './packLevels';
import { peakPressure } from './peakPressure';
import type { MeasuredPeak, PeakPressure } from './peakPressure';
import { POUR_RULES as R } from './rules';
import { stiffnessRatio } from './stiffness';
import { planStraps } from './straps';
import type { StrapPlan, StrapSettings } from './straps';

export interface PackOptions extends PackLevels {
  /** The pack that the stiffness is told against. */
  referencePack?: number;
  /** Air of the room, 101.325 kPa when left out. */
  ambientKPa?: number;
  measuredPeak?: MeasuredPeak;
  /** Shadow of the cavity along the opening direction; without it no force is told. */
  projectedCm2?: number;
  lidG?: number;
  safety?: number;
  straps?: StrapSettings;
  prices?: PourPrices;
  past?: readonly PastCasting[];
}

export interface PastCasting {
  packFactor: number;
  filled: boolean;
}

export interface PackColumn {
  packFactor: number;
  refused?: undefined;
  batch: Batch;
  stiffnessRatio: Estimate;
  pressureKPa: PeakPressure;
  clamp?: Clamp;
  straps?: StrapPlan;
  cost?: PackCost;
  past?: FillRate;
}

/** A pack that cannot be: the problem says why. */
export interface RefusedPack {
  packFactor: number;
  refused: Problem;
}

export interface PackComparison {
  columns: (PackColumn | RefusedPack)[];
  reference: { packFactor: number; from: 'given' | 'assumed'; basis: string };
}

/**
 * Packs side by side: for each the batch, its stiffness against a stated pack (one formulation only), the peak pressure with its
 * range and caveats, the clamp force and straps where the shadow of the cavity is known, the cost where prices are, and the
 * past castings of that level. The pack of `inputs` is not used but as the reference. Errors: those of the batch apart from its
 * pack, PACK_LEVELS, INPUT_OUT_OF_BOUNDS of an option; a pack that is refused has a column that says why.
 */
export function comparePacks(inputs: BatchInputs, options: PackOptions = {}): Outcome<PackComparison> {
  const base = withoutPack(inputs);
  const settled = settleBatch(base);
  if (!settled.ok) return settled;
  const levels = packLevels(options);
  if (!levels.ok) return levels;
  const reference = referenceOf(inputs, options);
  const known = checkPack(reference.packFactor);
  if (!known.ok) return known;
  const columns: PackComparison['columns'] = [];
  for (const packFactor of levels.value) {
    const batch = planBatch({ ...base, packFactor: { value: packFactor, from: 'given' } });
    if (!batch.ok) {
      columns.push({ packFactor, refused: batch.problem });
      continue;
    }
    const column = columnOf(batch.value, reference.packFactor, options);
    if (!column.ok) return column;
    columns.push(column.value);
  }
  return good({ columns, reference });
}

function withoutPack(inputs: BatchInputs): BatchInputs {
  const base = { ...inputs };
  delete base.packFactor;
  delete base.shortFillChance;
  delete base.overpackShare;
  return base;
}

function referenceOf({ packFactor }: BatchInputs, options: PackOptions): PackComparison['reference'] {
  if (options.referencePack !== undefined) {
    return { packFactor: options.referencePack, from: 'given', basis: 'named as the reference' };
  }
  if (packFactor !== undefined) {
    return { packFactor: packFactor.value, from: 'given', basis: 'the pack of the batch' };
  }
  return { packFactor: RULES.packFactor.value, from: 'assumed', basis: RULES.packFactor.from };
}

function columnOf(batch: Batch, referencePack: number, options: PackOptions): Outcome<PackColumn> {
  const { packFactor, inputs, liquidKgM3 } = batch;
  const stiffness = stiffnessRatio({ packFactor, referencePack });
  if (!stiffness.ok) return stiffness;
  const foam = { freeRiseKgM3: inputs.freeRiseKgM3, liquidKgM3, packFactor };
  const { ambientKPa, measuredPeak } = options;
  const pressure = peakPressure(
    { ...foam, ...(ambientKPa === undefined ? {} : { ambientKPa }) },
    measuredPeak,
  );
  if (!pressure.ok) return pressure;
  const holding = holdingOf(pressure.value.designKPa, options);
  if (!holding.ok) return holding;
  const column: PackColumn = {
    packFactor,
    batch,
    stiffnessRatio: stiffness.value,
    pressureKPa: pressure.value,
    ...holding.value,
  };
  if (options.prices !== undefined) {
    const cost = packCost(batch, options.prices);
    if (!cost.ok) return cost;
    column.cost = cost.value;
  }
  if (options.past !== undefined) {
    const past = pastAt(packFactor, options.past);
    if (!past.ok) return past;
    column.past = past.value;
  }
  return good(column);
}

function holdingOf(gaugeKPa: number, options: PackOptions): Outcome<Pick<PackColumn, 'clamp' | 'straps'>> {
  const { projectedCm2, lidG, safety } = options;
  if (projectedCm2 === undefined) return good({});
  const clamp = clampForce({
    gaugeKPa,
    projectedCm2,
    ...(safety === undefined ? {} : { safety }),
    ...(lidG === undefined ? {} : { lidG }),
  });
  if (!clamp.ok) return clamp;
  const straps = planStraps(clamp.value.clampN, options.straps);
  return straps.ok ? good({ clamp: clamp.value, straps: straps.value }) : straps;
}

function pastAt(packFactor: number, past: readonly PastCasting[]): Outcome<FillRate> {
  const near = past.filter((casting) => Math.abs(casting.packFactor - packFactor) <= NEAR);
  return fillRate({ poured: near.length, filled: near.filter(({ filled }) => filled).length });
}

/** The last digit of a level must not throw a casting out. */
const NEAR = R.samePack.value * (1 + 1e-9);
