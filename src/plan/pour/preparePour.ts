import type { Assumption } from '../../estimate';
import { good, type Outcome, type Problem } from '../../problem';
import {
  bestMeasurement,
  comparePacks,
  coreLift,
  scaleColor,
  sizeAwarePack,
  type BestMeasurement,
  type ColorRecipe,
  type CoreLift,
  type CupPlan,
  type PackComparison,
  type SizeAwarePack,
} from '../../yield';
import { planPour, type Pour } from '../planPour';
import { correctedInputs, type AirStep } from './air';
import { checksOf } from './checks';
import { cupsFor } from './cups';
import { forcesOf, type Forces } from './forces';
import { justFills, type JustFills } from './justFills';
import type { PourAsk } from './pourAsk';
import { timesOf, type Times } from './times';
import { warmthOf, type Warmth } from './warmth';

/** A pour with everything that a careful practitioner looks at first. What was not told is absent, or says that it is not known. */
export interface PreparedPour extends Pour {
  air?: AirStep;
  /** Cup by cup; of one cup where nothing limits it. */
  cups: CupPlan;
  forces: Forces;
  times: Times;
  warmth: Warmth;
  bestMeasurement: BestMeasurement;
  /** Left out where no pack within bounds is that sure. */
  justFills?: JustFills;
  sizeAware?: SizeAwarePack;
  packs?: PackComparison;
  color?: ColorRecipe;
  coreLift?: CoreLift;
  assumptions: Assumption[];
  /** Of the batch and of every step beside it. */
  findings: Problem[];
  /** The checks of the pour, one finding each, fine ones and unanswered ones too. */
  checks: Problem[];
  /** Keys of the cautions that apply to this pour. */
  cautions: string[];
}

/**
 * From everything that is told to a pour: batch in the air of the day, cups, pressure and straps, times, warmth, packs side by side. Errors: those of
 * `planPour` and of each step for what it was told.
 *
 * @example
 * const ready = preparePour({ pour: { cavity: { size }, freeRiseKgM3, ratio }, cups: { cupCm3: 2000 }, air: { altitudeM: 500 } });
 */
export function preparePour(ask: PourAsk): Outcome<PreparedPour> {
  const air = correctedInputs(ask);
  if (!air.ok) return air;
  const inputs = air.value.inputs;
  const pour = planPour(inputs);
  if (!pour.ok) return pour;
  const { batch } = pour.value;
  const cups = cupsFor(pour.value, ask);
  if (!cups.ok) return cups;
  const forces = forcesOf(pour.value, ask, air.value.step?.correction.stationKPa.value);
  if (!forces.ok) return forces;
  const times = timesOf(ask, cups.value);
  if (!times.ok) return times;
  const warmth = warmthOf(ask);
  if (!warmth.ok) return warmth;
  const batchInputs = withCavity(inputs, pour.value);
  const best = bestMeasurement(batchInputs);
  if (!best.ok) return best;
  const stationKPa = air.value.step?.correction.stationKPa.value;
  const extras = extrasOf(ask, pour.value, { inputs: batchInputs, stationKPa });
  if (!extras.ok) return extras;
  const { packs, sizeAware, color, lift } = extras.value;
  const fills = justFills(batch, batchInputs);
  const known = { pour: pour.value, cups: cups.value, forces: forces.value, times: times.value };
  return good({
    ...pour.value,
    ...(air.value.step === undefined ? {} : { air: air.value.step }),
    cups: cups.value,
    forces: forces.value,
    times: times.value,
    warmth: warmth.value,
    bestMeasurement: best.value,
    ...(fills === undefined ? {} : { justFills: fills }),
    ...(sizeAware === undefined ? {} : { sizeAware }),
    ...(packs === undefined ? {} : { packs }),
    ...(color === undefined ? {} : { color }),
    ...(lift?.lift === undefined ? {} : { coreLift: lift.lift }),
    assumptions: onceEach([
      ...batch.assumptions,
      ...cups.value.assumptions,
      ...forces.value.assumptions,
      ...times.value.assumptions,
      ...(sizeAware?.assumptions ?? []),
      ...(color?.assumptions ?? []),
    ]),
    findings: [
      ...batch.findings,
      ...(air.value.step?.correction.findings ?? []),
      ...cups.value.findings,
      ...forces.value.findings,
      ...times.value.findings,
      ...warmth.value.findings,
      ...(lift?.findings ?? []),
    ],
    ...checksOf(ask, known),
  });
}

interface Extras {
  packs: PackComparison | undefined;
  sizeAware: SizeAwarePack | undefined;
  color: ColorRecipe | undefined;
  lift: { lift?: CoreLift; findings: Problem[] } | undefined;
}

type BatchLike = Parameters<typeof bestMeasurement>[0];

const withCavity = ({ cavity: _, ...inputs }: PourAsk['pour'], { cavityCm3 }: Pour): BatchLike => ({
  ...inputs,
  cavityCm3,
});

/** What is only reckoned where it was asked for. */
function extrasOf(
  ask: PourAsk,
  { batch, cavityCm3 }: Pour,
  { inputs, stationKPa }: { inputs: BatchLike; stationKPa: number | undefined },
): Outcome<Extras> {
  const { clamp = {}, prices, past } = ask;
  const packs =
    ask.packs === undefined
      ? undefined
      : comparePacks(inputs, {
          ...ask.packs,
          ...(stationKPa === undefined ? {} : { ambientKPa: stationKPa }),
          ...(clamp.projectedCm2 === undefined ? {} : { projectedCm2: clamp.projectedCm2 }),
          ...(clamp.lidG === undefined ? {} : { lidG: clamp.lidG }),
          ...(clamp.straps === undefined ? {} : { straps: clamp.straps }),
          ...(clamp.measuredPeak === undefined ? {} : { measuredPeak: clamp.measuredPeak }),
          ...(prices === undefined ? {} : { prices }),
          ...(past === undefined ? {} : { past }),
        });
  if (packs?.ok === false) return packs;
  const sizeAware =
    ask.castingCm2 === undefined
      ? undefined
      : sizeAwarePack({
          castingCm2: ask.castingCm2,
          cavityCm3: cavityCm3.value,
          ...(ask.skinMm === undefined ? {} : { skinMm: ask.skinMm }),
        });
  if (sizeAware?.ok === false) return sizeAware;
  const color =
    ask.colors === undefined || ask.colors.length === 0
      ? undefined
      : scaleColor({ colors: ask.colors, partAG: batch.partAG, partBG: batch.partBG });
  if (color?.ok === false) return color;
  const lift =
    ask.core === undefined
      ? undefined
      : coreLift({
          ...ask.core,
          liquidKgM3: batch.liquidKgM3,
          moldedKgM3: batch.moldedDensityKgM3,
        });
  if (lift?.ok === false) return lift;
  return good({
    packs: packs?.value,
    sizeAware: sizeAware?.value,
    color: color?.value,
    lift: lift?.value,
  });
}

const onceEach = (assumptions: readonly Assumption[]): Assumption[] =>
  assumptions.filter((one, n) => assumptions.findIndex(({ name }) => name === one.name) === n);
