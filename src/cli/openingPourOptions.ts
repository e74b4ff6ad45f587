import type { Assumption } from '../estimate';
import type { Shop } from '../job/shop';
import type { OpeningPour } from '../plan';
import { finding, good, type Outcome, type Problem } from '../problem';
import { massRatio, mixedLiquidKgM3, POUR_BOUNDS, pourWindow, type FoamCard } from '../yield';
import { foamCardOption } from './batchOptions';
import type { OptionSpec, OptionValues } from './command';
import { defined, type Figure } from './moldFigures';
import { readBounded, readBoundedTimes, type Bounds } from './openingFigures';
import type { PourFigure } from './pourFigures';

/** What runs in, and how long there is for it. */
export const OPENING_POUR_OPTIONS: readonly OptionSpec[] = [
  { flags: '--foam <card>', about: 'foam card of the shop, by its exact name; figures below win over it' },
  { flags: '--free-rise <density>', about: 'free-rise density (bare number: kg/m3)' },
  { flags: '--pack <factor>', about: 'pack factor: molded over free-rise density (assumed 1.30)' },
  { flags: '--liquid-density <density>', about: 'liquid density of the mix (bare number: kg/m3)' },
  {
    flags: '--liquid-volume <volume>',
    about: 'liquid that is poured (bare number: cm3; else from free rise, pack and cavity)',
  },
  {
    flags: '--pour-within <time>',
    about: 'time left to pour (bare number: s; else from the cream time, as batch takes it)',
  },
  { flags: '--cream <time>', about: 'cream time by the data sheet (bare number: s)' },
  { flags: '--times-at <temperature>', about: 'temperature that the cream time holds at (bare number: C)' },
  { flags: '--room <temperature>', about: 'temperature of the room (bare number: C)' },
  {
    flags: '--ingredients <temperature>',
    about: 'temperature of A and B as they are mixed (bare number: C)',
  },
  { flags: '--mix-time <time>', about: 'time of mixing (bare number: s)' },
  { flags: '--carry-time <time>', about: 'time from the bench to the mold (bare number: s)' },
  {
    flags: '--mix-viscosity <viscosity>',
    about: 'viscosity of the mix, with its unit: Pa s, mPa s, cP, cps',
  },
  {
    flags: '--opening-length <length>',
    about: 'length of the tube that is poured through (bare number: mm; assumed 50)',
  },
  { flags: '--head <length>', about: 'liquid over the opening while you pour (bare number: mm; assumed 30)' },
  { flags: '--rise-time <time>', about: 'from full to still (bare number: s)' },
  {
    flags: '--foam-viscosity <viscosity>',
    about: 'of the rising foam, with its unit: only what your trimmed risers taught',
  },
];

type Key =
  | 'freeRiseKgM3'
  | 'packFactor'
  | 'liquidKgM3'
  | 'liquidCm3'
  | 'mixPaS'
  | 'foamPaS'
  | 'sprueLengthMm'
  | 'headMm'
  | 'timesAtC'
  | 'roomC'
  | 'ingredientsC';

const TEMPERATURE = { kind: 'temperature', bareUnit: 'C', allowZero: true } as const;

const FIGURES: readonly (Figure<Key> & { bounds?: Bounds })[] = [
  { key: 'freeRiseKgM3', option: 'freeRise', kind: 'density', bareUnit: 'kg/m3' },
  { key: 'packFactor', option: 'pack', kind: 'packFactor' },
  { key: 'liquidKgM3', option: 'liquidDensity', kind: 'density', bareUnit: 'kg/m3' },
  {
    key: 'liquidCm3',
    option: 'liquidVolume',
    kind: 'volume',
    bareUnit: 'cm3',
    bounds: POUR_BOUNDS.liquidCm3,
  },
  { key: 'mixPaS', option: 'mixViscosity', kind: 'viscosity', bounds: POUR_BOUNDS.mixPaS },
  { key: 'foamPaS', option: 'foamViscosity', kind: 'viscosity', bounds: POUR_BOUNDS.foamPaS },
  {
    ...{ key: 'sprueLengthMm', option: 'openingLength', kind: 'length', bareUnit: 'mm', allowZero: true },
    bounds: POUR_BOUNDS.sprueLengthMm,
  },
  {
    key: 'headMm',
    option: 'head',
    kind: 'length',
    bareUnit: 'mm',
    allowZero: true,
    bounds: POUR_BOUNDS.headMm,
  },
  { ...TEMPERATURE, key: 'timesAtC', option: 'timesAt', bounds: POUR_BOUNDS.statedAtC },
  { ...TEMPERATURE, key: 'roomC', option: 'room', bounds: POUR_BOUNDS.nowC },
  { ...TEMPERATURE, key: 'ingredientsC', option: 'ingredients', bounds: POUR_BOUNDS.nowC },
];

type TimeKey = 'withinS' | 'riseS' | 'creamS' | 'mixS' | 'carryS';

const TIMES: readonly (PourFigure<TimeKey> & { bounds?: Bounds })[] = [
  { key: 'withinS', option: 'pourWithin', unit: 'seconds', bounds: POUR_BOUNDS.withinS },
  { key: 'riseS', option: 'riseTime', unit: 'seconds', bounds: POUR_BOUNDS.riseS },
  { key: 'creamS', option: 'cream', unit: 'seconds' },
  { key: 'mixS', option: 'mixTime', unit: 'seconds', allowZero: true },
  { key: 'carryS', option: 'carryTime', unit: 'seconds', allowZero: true },
];

export interface OpeningPourCall {
  pour: OpeningPour;
  assumptions: (Assumption & { basis?: string })[];
  findings: Problem[];
}

/** What is typed wins over the card. Errors: BAD_CALL, CARD_UNKNOWN, and those of `pourWindow` for a cream time that is typed. */
export function openingPourOptions(options: OptionValues, shop: Shop | undefined): Outcome<OpeningPourCall> {
  const card = foamCardOption(options, shop);
  if (!card.ok) return card;
  const read = readBounded(options, FIGURES);
  if (!read.ok) return read;
  const times = readBoundedTimes(options, TIMES);
  if (!times.ok) return times;
  const { timesAtC, roomC, ingredientsC, ...typed } = read.value;
  const { withinS, riseS, ...hands } = times.value;
  const window =
    withinS === undefined
      ? windowOf({ ...hands, timesAtC, nowC: ingredientsC ?? roomC }, card.value)
      : good(NO_WINDOW);
  if (!window.ok) return window;
  return good({
    pour: defined({
      ...typed,
      freeRiseKgM3: typed.freeRiseKgM3 ?? card.value?.freeRiseKgM3,
      liquidKgM3: typed.liquidKgM3 ?? liquidOf(card.value),
      riseS: riseS ?? card.value?.riseS,
      withinS: withinS ?? window.value.withinS,
    }),
    assumptions: window.value.assumptions,
    findings: window.value.findings,
  });
}

/** The liquid of the card, or of its parts by their densities, as the batch takes it. */
function liquidOf(card: FoamCard | undefined): number | undefined {
  if (card?.liquidDensityKgM3 !== undefined) return card.liquidDensityKgM3;
  if (card?.partDensities === undefined) return undefined;
  const ratio = massRatio(card.ratio, card.partDensities);
  return ratio.ok ? mixedLiquidKgM3(ratio.value, card.partDensities) : undefined;
}

type Window = Omit<OpeningPourCall, 'pour'> & { withinS?: number };

const NO_WINDOW: Window = { assumptions: [], findings: [] };

interface Hands {
  creamS?: number;
  mixS?: number;
  carryS?: number;
  timesAtC?: number | undefined;
  nowC?: number | undefined;
}

/** What the cream time leaves, as `batch` reckons it. That of a card that leaves nothing is told beside the plan; one that is typed is refused. */
function windowOf(
  { creamS, mixS, carryS, timesAtC, nowC }: Hands,
  card: FoamCard | undefined,
): Outcome<Window> {
  const known = creamS ?? card?.creamS;
  if (known === undefined) return good(NO_WINDOW);
  const found = pourWindow({ creamS: known, ...defined({ mixS, carryS, atC: timesAtC, nowC }) });
  if (!found.ok) {
    if (creamS !== undefined || found.problem.code !== 'POUR_WINDOW_NONE') return found;
    const { code, values } = found.problem;
    return good({ ...NO_WINDOW, findings: [finding(code, 'stop', values)] });
  }
  const { pourWindowS, assumptions } = found.value;
  const withinS = pourWindowS.value;
  const told: OpeningPourCall['assumptions'][number] = {
    name: 'pour_within',
    value: Number(withinS.toPrecision(4)),
    unit: 's',
    from: 'data-sheet',
    basis: 'cream time less mixing, carrying and a margin',
  };
  return good({ withinS, assumptions: [told, ...assumptions], findings: [] });
}
