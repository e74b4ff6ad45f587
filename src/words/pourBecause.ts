import type { Casting, PreparedPour } from '../plan';
import { formatDensity, formatQuantity, formatTemperature, formatVolume, type Show } from '../units';
import { CAVEAT_WORDS, MEASUREMENT_WORDS } from './packWords';
import { amount, counted, percent } from './sentence';

/** Where the rest of a prepared pour comes from, one line each: air, cups, pressure, straps, times, warmth, doubt, size. */
export function pourBecause(prepared: PreparedPour, show: Show = 'both', casting?: Casting): string[] {
  return [
    ...(casting === undefined ? [] : [castingLine(casting, show)]),
    ...airLine(prepared, show),
    ...cupsLine(prepared),
    pressureLine(prepared, show),
    ...strapsLine(prepared),
    ...timesLines(prepared, show),
    ...warmthLines(prepared, show),
    ...doubtLine(prepared),
    ...sizeLine(prepared),
    ...liftLine(prepared),
  ];
}

/** `low to high unit`, in round figures: none of these is known to the digit. */
function about({ low, high }: { low: number; high: number }, unit: string): string {
  const [from, to] = [amount(low, 2), amount(high, 2)];
  return from === to ? `${from} ${unit}` : `${from} to ${to} ${unit}`;
}

function castingLine({ shrink, volumeShare, castingTempC, roomTempC }: Casting, show: Show): string {
  const warm =
    castingTempC === roomTempC
      ? ''
      : ` and ${castingTempC > roomTempC ? 'grows' : 'shrinks'} from ${formatTemperature(roomTempC, show)} to ${formatTemperature(castingTempC, show)}`;
  return `The mold shrinks by ${percent(shrink.value)} in length${warm}: its cavity is ${amount(100 * volumeShare.value)} % of the sculpt, and that is what is poured for.`;
}

const LEFT_WORDS = {
  'same-day cup test': 'the cup test of the day holds it already',
  'not told': 'not told',
} as const;

function airLine({ air, batch }: PreparedPour, show: Show): string[] {
  if (air === undefined) return [];
  const { applied, because, stationKPa, thenKPa } = air.correction;
  const pressure = (kPa: number): string => formatQuantity('pressure', Number(kPa.toFixed(1)), show);
  const left = because
    .filter(({ why }) => why === 'same-day cup test')
    .map(({ left: what, why }) => `${what}: ${LEFT_WORDS[why]}`);
  if (applied.length === 0)
    return left.length === 0 ? [] : [`The free rise is not corrected for ${left.join('; ')}.`];
  const by = applied.includes('pressure')
    ? ` at ${pressure(stationKPa.value)} of air (${stationKPa.by}) instead of ${pressure(thenKPa.value)}`
    : '';
  const warm = applied.includes('warmth')
    ? `${by === '' ? '' : ','} with the ingredients as warm as told`
    : '';
  return [
    `The free rise of ${formatDensity(air.cardKgM3, show)} becomes ${formatDensity(batch.inputs.freeRiseKgM3, show)}${by}${warm} (ideal gas in the gas share of the foam).`,
  ];
}

function cupsLine({ cups }: PreparedPour): string[] {
  if (cups.largestMixG === undefined) return [];
  const why =
    cups.limitedBy === 'container' ? 'the cup and how far it may be filled' : 'the time until the mix creams';
  return [`One mix is at most ${amount(cups.largestMixG, 3)} g, by ${why}.`];
}

function pressureLine({ forces }: PreparedPour, show: Show): string {
  const { value, low, high, designKPa, from, caveats } = forces.pressureKPa;
  const kPa = (v: number): string => formatQuantity('pressure', Number(v.toPrecision(2)), show);
  const how = from === 'given' ? 'carried over from the peak you measured' : 'ideal gas, vented mold';
  return (
    `Peak pressure about ${kPa(value)}, ${kPa(low)} to ${kPa(high)} (${how}); clamps are made for ${kPa(designKPa)}. ` +
    `Not in it: ${caveats.map((key) => CAVEAT_WORDS[key]).join('; ')}.`
  );
}

function strapsLine({ forces }: PreparedPour): string[] {
  const { clamp, straps, ratchets, plugN } = forces;
  const plug =
    plugN === undefined || plugN === 0
      ? []
      : [`The foam pushes on the plug or lid with about ${amount(plugN, 2)} N.`];
  if (clamp === undefined || straps === undefined) return plug;
  const holds = straps.holds ? '' : `, and that is not enough: ${amount(straps.strapsNeeded)} are needed`;
  return [
    `The foam pushes the halves apart with about ${amount(clamp.pushN, 2)} N; twice that, less the lid, is ${amount(clamp.clampN, 2)} N to hold: ` +
      `${counted(straps.straps, 'strap')}, each pulled to ${amount(straps.buckleN, 2)} N at the buckle (friction round the corners and creep are in it)${holds}. ` +
      (ratchets === undefined ? '' : `Ratchet straps: ${amount(ratchets.strapsNeeded)}. `) +
      'Tighten, wait 5 min, tighten again, then pour. 10 N is the weight of about 1 kg.',
    ...plug,
  ];
}

function timesLines({ times }: PreparedPour, show: Show): string[] {
  const { window, openMin, openCommonMin, exotherm } = times;
  const folk = (share: number): string =>
    Math.abs(share) < 0.005
      ? ''
      : `; the rule "halves in 10 degrees" would say ${percent(Math.abs(share))} ${share < 0 ? 'less' : 'more'}`;
  return [
    ...(window === undefined
      ? []
      : [
          `The mix creams after about ${amount(window.creamS.value, 2)} s, which leaves ${about(window.pourWindowS, 's')} to pour in${folk(window.creamS.folkDifferenceShare)}.`,
        ]),
    openMin === undefined
      ? `When the mold may be opened is not known; ${about(openCommonMin, 'min')} are common, the casting still warm.`
      : `The mold may be opened after about ${amount(openMin.value, 2)} min (${about(openMin, 'min')}) if it is quiet and cool${folk(openMin.folkDifferenceShare)}.`,
    exotherm.known
      ? `The core of a thick part gets to ${formatTemperature(Math.round(exotherm.coreC.low), show)} to ${formatTemperature(Math.round(exotherm.coreC.high), show)} (heat of reaction, nothing cooling).`
      : `How hot the core gets is not known: ${exotherm.missing.map((name) => MISSING_WORDS[name]).join(', ')} not told.`,
  ];
}

const MISSING_WORDS = {
  ncoShare: 'NCO of part A',
  waterShare: 'water in part B',
  startC: 'temperature of the ingredients',
} as const;

function warmthLines({ warmth }: PreparedPour, show: Show): string[] {
  const { warmUp, coolDown, contactC } = warmth;
  return [
    ...(warmUp === undefined
      ? []
      : [
          `Warming through takes ${about(warmUp.deepFaceMin, 'min')} (slab series); the surface is then ${formatTemperature(Math.round(warmUp.surfaceAtEndC.value), show)}, ${formatTemperature(Math.round(warmUp.surfaceAtEndC.high), show)} at most.`,
        ]),
    ...(coolDown === undefined
      ? []
      : [`Once out of the warmth, pour within ${amount(coolDown.pourWithinMin, 2)} min.`]),
    ...(contactC === undefined
      ? []
      : [`Where mix meets mold it is about ${formatTemperature(Math.round(contactC), show)} at first.`]),
  ];
}

/** The first three say what to do next; the rest is in the JSON. */
const SHOWN_GAINS = 3;

function doubtLine({ bestMeasurement: { uG, gains } }: PreparedPour): string[] {
  const first = gains
    .slice(0, SHOWN_GAINS)
    .map(
      ({ measurement, leftShare }) =>
        `${MEASUREMENT_WORDS[measurement]} would leave ${percent(leftShare)} of it`,
    );
  return first.length === 0
    ? []
    : [`The mixed mass is known to ${amount(uG, 2)} g (one standard deviation): ${first.join('; ')}.`];
}

function sizeLine({ sizeAware }: PreparedPour): string[] {
  if (sizeAware === undefined) return [];
  const { leastPack, advisedPack } = sizeAware;
  return [
    `At this size the skin alone takes a pack of ${amount(leastPack.value, 3)} (${amount(leastPack.low, 3)} to ${amount(leastPack.high, 3)}); ${amount(advisedPack.value, 3)} would leave a margin. An advice: it is not used.`,
  ];
}

const liftLine = ({ coreLift }: PreparedPour): string[] =>
  coreLift === undefined
    ? []
    : [
        `The core is lifted with ${amount(coreLift.inFoamN, 2)} N in foam and at most ${amount(coreLift.inLiquidN, 2)} N in liquid (Archimedes; below 0 it sinks).`,
      ];

/** "4 480 cm³ less a core of 900 cm³ and an armature of 30 cm³". */
export function hollowWords(
  outerCm3: number,
  { coreCm3, armatureCm3 }: { coreCm3?: number; armatureCm3?: number },
  show: Show,
): string {
  const less = [
    ...(coreCm3 === undefined ? [] : [`a core of ${formatVolume(coreCm3, show)}`]),
    ...(armatureCm3 === undefined ? [] : [`an armature of ${formatVolume(armatureCm3, show)}`]),
  ];
  return `${formatVolume(outerCm3, show)} less ${less.join(' and ')} are left for foam.`;
}
