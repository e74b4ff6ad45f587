import type { Assumption } from '../estimate';
import type { FoamFacts, PourAsk } from '../plan';
import { bad, good, type Outcome } from '../problem';
import type { FoamCard, PastCasting } from '../yield';
import { listOf, type OptionSpec, type OptionValues } from './command';
import { defined, figureIn, readFigures, type Figure } from './moldFigures';
import { COLOR_OPTION, colorOptions } from './pourColors';
import { POUR_FACT_OPTIONS, pourFacts } from './pourFactOptions';
import { readPourFigures, type PourFigure } from './pourFigures';
import { WARM_OPTIONS, warmOptions } from './pourWarmOptions';

/** Everything about a pour beside its batch, its cavity and its packs. */
export const POUR_OPTIONS: readonly OptionSpec[] = [
  { flags: '--room <temperature>', about: 'temperature of the room (bare number: C)' },
  {
    flags: '--ingredients <temperature>',
    about: 'temperature of A and B as they are mixed (bare number: C)',
  },
  { flags: '--mold-temp <temperature>', about: 'inner surface of the mold, measured (bare number: C)' },
  { flags: '--pressure <pressure>', about: 'air pressure read at the bench, with its unit: kPa, hPa, inHg' },
  { flags: '--altitude <height>', about: 'height of the bench above the sea (bare number: m)' },
  { flags: '--cream <time>', about: 'cream time by the data sheet (bare number: s)' },
  { flags: '--open <time>', about: 'time to opening by the data sheet (bare number: min)' },
  {
    flags: '--times-at <temperature>',
    about: 'temperature that times and density hold at (bare number: C)',
  },
  { flags: '--nco <share>', about: 'NCO of part A by mass, as "28 %"' },
  { flags: '--water <share>', about: 'water in part B by mass, as "1.5 %"' },
  { flags: '--cup-volume <volume>', about: 'mixing cup, full to its rim (bare number: cm3)' },
  { flags: '--cup-fill <share>', about: 'how far the liquid may fill it, half at most (assumed a third)' },
  { flags: '--mixers <count>', about: 'persons who mix and pour at the same time (assumed 1)' },
  { flags: '--mix-time <time>', about: 'time of mixing (bare number: s)' },
  { flags: '--carry-time <time>', about: 'time from the bench to the mold (bare number: s)' },
  {
    flags: '--projected-area <area>',
    about: 'shadow of the cavity along the way the mold opens (bare number: cm2)',
  },
  { flags: '--lid <mass>', about: 'what lies on top and holds it shut (bare number: g)' },
  { flags: '--plug-area <area>', about: 'plug or lid in the opening; 0 for none (bare number: cm2)' },
  { flags: '--straps <count>', about: 'straps there are, each over the parting twice' },
  { flags: '--strap-tension <force>', about: 'what one can be tightened to (bare number: N; assumed 200)' },
  { flags: '--peak-pressure <pressure>', about: 'peak pressure you measured in this mold, with its unit' },
  { flags: '--peak-pack <factor>', about: 'pack factor it was measured at' },
  ...WARM_OPTIONS,
  { flags: '--panel <length>', about: 'thickness of the flat panels of the jacket (bare number: mm)' },
  {
    flags: '--skin-depth <length>',
    about: 'depth of the skin of a casting (bare number: mm; assumed 1), for advice on the pack',
  },
  COLOR_OPTION,
  { flags: '--price-a <price>', about: 'price of 1 kg of A, in your own money' },
  { flags: '--price-b <price>', about: 'price of 1 kg of B' },
  { flags: '--failure-cost <price>', about: 'what a failed casting costs beside its mix' },
  {
    flags: '--past <pack=result>',
    about: 'a casting you made with this foam and mold, as "1.3=filled" or "1.3=short"',
    repeat: true,
  },
  ...POUR_FACT_OPTIONS,
];

type Key =
  | 'roomC'
  | 'ingredientsC'
  | 'moldC'
  | 'stationKPa'
  | 'openMin'
  | 'timesAtC'
  | 'ncoShare'
  | 'waterShare'
  | 'cupCm3'
  | 'cupFillShare'
  | 'mixers'
  | 'projectedCm2'
  | 'lidG'
  | 'plugCm2'
  | 'straps'
  | 'peakKPa'
  | 'peakPack'
  | 'skinMm'
  | 'panelMm'
  | 'aPerKg'
  | 'bPerKg'
  | 'failurePrice';

const FIGURES: readonly Figure<Key>[] = [
  { key: 'roomC', option: 'room', kind: 'temperature', bareUnit: 'C', allowZero: true },
  { key: 'ingredientsC', option: 'ingredients', kind: 'temperature', bareUnit: 'C', allowZero: true },
  { key: 'moldC', option: 'moldTemp', kind: 'temperature', bareUnit: 'C', allowZero: true },
  { key: 'stationKPa', option: 'pressure', kind: 'pressure' },
  { key: 'openMin', option: 'open', kind: 'minutes' },
  { key: 'timesAtC', option: 'timesAt', kind: 'temperature', bareUnit: 'C', allowZero: true },
  { key: 'ncoShare', option: 'nco', kind: 'share' },
  { key: 'waterShare', option: 'water', kind: 'share', allowZero: true },
  { key: 'cupCm3', option: 'cupVolume', kind: 'volume', bareUnit: 'cm3' },
  { key: 'cupFillShare', option: 'cupFill', kind: 'share' },
  { key: 'mixers', option: 'mixers', kind: 'plain' },
  { key: 'projectedCm2', option: 'projectedArea', kind: 'area' },
  { key: 'lidG', option: 'lid', kind: 'mass', bareUnit: 'g', allowZero: true },
  { key: 'plugCm2', option: 'plugArea', kind: 'area', allowZero: true },
  { key: 'straps', option: 'straps', kind: 'plain' },
  { key: 'peakKPa', option: 'peakPressure', kind: 'pressure' },
  { key: 'peakPack', option: 'peakPack', kind: 'packFactor' },
  { key: 'skinMm', option: 'skinDepth', kind: 'length', bareUnit: 'mm' },
  { key: 'panelMm', option: 'panel', kind: 'length', bareUnit: 'mm' },
  { key: 'aPerKg', option: 'priceA', kind: 'plain', allowZero: true },
  { key: 'bPerKg', option: 'priceB', kind: 'plain', allowZero: true },
  { key: 'failurePrice', option: 'failureCost', kind: 'plain', allowZero: true },
];

const POUR_FIGURES: readonly PourFigure<'creamS' | 'mixS' | 'carryS' | 'altitudeM' | 'strapN'>[] = [
  { key: 'creamS', option: 'cream', unit: 'seconds' },
  { key: 'mixS', option: 'mixTime', unit: 'seconds', allowZero: true },
  { key: 'carryS', option: 'carryTime', unit: 'seconds', allowZero: true },
  { key: 'altitudeM', option: 'altitude', unit: 'height', allowZero: true, signed: true },
  { key: 'strapN', option: 'strapTension', unit: 'force' },
];

type Values = Partial<
  Record<Key | 'creamS' | 'mixS' | 'carryS' | 'altitudeM' | 'strapN', number | undefined>
>;

/** All that the call says of the pour; the cavity, its core and its surface are the caller's. */
export interface PourWish {
  ask: Omit<PourAsk, 'pour'>;
  /** Thickness of the flat panels of the jacket. */
  panelMm?: number;
  assumptions: (Assumption & { basis: string })[];
}

/** What is typed wins over the card. Errors: BAD_CALL. */
export function pourOptions(options: OptionValues, card: FoamCard | undefined): Outcome<PourWish> {
  const read = readFigures(options, FIGURES);
  if (!read.ok) return read;
  const more = readPourFigures(options, POUR_FIGURES);
  if (!more.ok) return more;
  const values: Values = { ...read.value, ...more.value };
  const warm = warmOptions(options);
  if (!warm.ok) return warm;
  const clamp = clampOf(values);
  if (!clamp.ok) return clamp;
  const prices = pricesOf(values);
  if (!prices.ok) return prices;
  const past = pastOf(listOf(options, 'past'));
  if (!past.ok) return past;
  const colors = colorOptions(options);
  if (!colors.ok) return colors;
  const facts = pourFacts(options);
  if (!facts.ok) return facts;
  const { roomC, ingredientsC, moldC, skinMm, stationKPa, altitudeM } = values;
  const { cupCm3, cupFillShare, mixers, mixS, carryS } = values;
  return good({
    ask: defined({
      foam: foamFacts(values, card),
      air: orNothing(defined({ stationKPa, altitudeM })),
      roomC,
      ingredientsC,
      moldC,
      skinMm,
      cups: orNothing(defined({ cupCm3, cupFillShare, mixers, mixS, carryS })),
      clamp: clamp.value,
      warm: warm.value?.warm,
      prices: prices.value,
      past: past.value.length === 0 ? undefined : past.value,
      colors: colors.value.length === 0 ? undefined : colors.value,
      facts: values.plugCm2 === 0 ? { ...facts.value, plugN: 0 } : facts.value,
    }),
    ...defined({ panelMm: values.panelMm }),
    assumptions: warm.value?.assumptions ?? [],
  });
}

const orNothing = <T extends object>(values: T): T | undefined =>
  Object.keys(values).length === 0 ? undefined : values;

function foamFacts(
  { creamS, openMin, timesAtC, ncoShare, waterShare }: Values,
  card: FoamCard | undefined,
): FoamFacts {
  return defined({
    creamS: creamS ?? card?.creamS,
    openMin: openMin ?? card?.openMin,
    timesAtC,
    ncoShare,
    waterShare,
  });
}

/** A plug of 0 cm2 is none: it is a fact of the checks, and no area to push on. */
function clampOf(values: Values): Outcome<PourAsk['clamp']> {
  const { projectedCm2, lidG, plugCm2, straps, strapN, peakKPa, peakPack } = values;
  if ((peakKPa === undefined) !== (peakPack === undefined))
    return bad('BAD_CALL', {
      text: '--peak-pressure and --peak-pack belong together.',
      hint: 'Give both: the peak you measured, and the pack factor it was measured at.',
    });
  const measuredPeak =
    peakKPa === undefined || peakPack === undefined ? undefined : { peakKPa, packFactor: peakPack };
  return good(
    orNothing(
      defined({
        projectedCm2,
        lidG,
        plugCm2: plugCm2 === 0 ? undefined : plugCm2,
        straps: orNothing(defined({ strapN, straps })),
        measuredPeak,
      }),
    ),
  );
}

function pricesOf({ aPerKg, bPerKg, failurePrice }: Values): Outcome<PourAsk['prices']> {
  if (aPerKg !== undefined && bPerKg !== undefined)
    return good({ aPerKg, bPerKg, ...defined({ failurePrice }) });
  if (aPerKg === undefined && bPerKg === undefined && failurePrice === undefined) return good(undefined);
  return bad('BAD_CALL', {
    text: 'A cost needs the price of both parts.',
    hint: 'Give --price-a and --price-b, for 1 kg each, in the same money.',
  });
}

/** "1.3=filled", "1.3=short". */
function pastOf(texts: readonly string[]): Outcome<PastCasting[]> {
  const past: PastCasting[] = [];
  for (const text of texts) {
    const match = /^\s*(\S+)\s*=\s*(filled|short)\s*$/.exec(text);
    if (match === null)
      return bad('BAD_CALL', {
        text: `--past "${text}" is not a casting.`,
        hint: 'Write its pack factor and what came of it: "1.3=filled" or "1.3=short".',
      });
    const pack = figureIn({}, '--past', match[1]!);
    if (!pack.ok) return pack;
    past.push({ packFactor: pack.value, filled: match[2] === 'filled' });
  }
  return good(past);
}
