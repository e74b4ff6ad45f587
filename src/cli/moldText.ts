import type { Mold, Size } from '../plan';
import {
  formatGrams,
  formatLength,
  formatQuantity,
  formatTemperature,
  formatVolume,
  formatVolumeRange,
  type Show,
} from '../units';
import { assumptionLine } from '../words/assumptionWords';
import { moldBecause } from '../words/moldBecause';
import { cautionsAt, kitsWords, type CautionPlace } from '../words/moldPartWords';
import { amount, counted, percent } from '../words/sentence';
import { sizeBecause } from '../words/sizeWords';
import { weighSentence } from '../words/weighWords';
import { findingLine } from './findingLine';
import { assumedFor, cautionsOf } from './moldCall';
import { finishLines } from './moldFinishText';
import { aligned, line, roughLength } from './moldLines';
import type { MoldCall } from './moldOptions';
import { boxLines, clayLines, jacketLines, weightLine } from './moldShapeText';

export interface MoldSheet {
  file: string;
  size: Size;
  mold: Mold;
  call: MoldCall;
  show: Show;
}

/** One mold for a person: checks, what was assumed and why, part by part with the cautions of its material; what to weigh stands last. */
export function moldText(sheet: MoldSheet): string {
  const { file, size, mold, call, show } = sheet;
  const keys = cautionsOf(mold, call);
  const at = (place: CautionPlace): string[] =>
    cautionsAt(place, keys).map(({ when, what }) => line('Caution', `${when}: ${what}`));
  const assumed = [...size.assumptions, ...call.assumptions, ...assumedFor(mold, call)];
  return [
    file,
    ...[...size.findings, ...mold.findings].map((problem) => findingLine(problem, show)),
    ...assumed.map((one) => line('Assumed', assumptionLine(one, show))),
    ...[...sizeBecause(size, show), ...moldBecause(mold, show)].map((why) => line('Because', why)),
    ...cautionsAt('first', keys).map(({ when, what }) => line(when, what)),
    line('Mold', `${mold.title}. ${mold.goodFor}`),
    ...partLines(mold, show),
    ...boxLines(mold, show),
    ...under(jacketLines(mold, show), at('jacket')),
    ...under(clayLines(mold, show), at('clay')),
    ...under([weightLine(mold, show)], at('weight')),
    ...under([cavityLine(mold, show)], at('cavity')),
    ...under(finishLines(mold.finishing, call, show), at('finish')),
    ...under([siliconeLine(mold, call, show)], at('silicone')),
    ...(call.ask.work?.degassed === true ? under([degasLine(mold, call)], at('vacuum')) : []),
    ...coatLines(mold, show),
    ...buyLines(mold),
    rubberLine(mold, show),
    line('Weigh', weighSentence(mold, call.ask.work?.degassed === true)),
  ].join('\n');
}

/** Cautions only beside something. */
const under = (lines: string[], cautions: string[]): string[] =>
  lines.length === 0 ? [] : [...lines, ...cautions];

/** Less than this would be shown as nothing. */
const LEAST_MM3 = 50;

function partLines({ shape, surroundings }: Mold, show: Show): string[] {
  const { keys, flange } = shape;
  return [
    ...shape.rubber
      .filter(({ volumeMm3 }) => volumeMm3 > LEAST_MM3)
      .map(({ name, volumeMm3 }) =>
        line('Part', `${name}: ${formatVolume(volumeMm3 / 1000, show)}${detailOf(name)}`),
      ),
    ...shape.voids.map(({ name, volumeMm3 }) =>
      line(
        'No rubber',
        `${name}: ${formatVolume(volumeMm3 / 1000, show)}, kept free or filled with something else`,
      ),
    ),
    ...(surroundings.floating === undefined
      ? []
      : [line('Lift', liftWords(surroundings.floating.forceN, surroundings.floating.weightKg))]),
  ];

  function detailOf(name: string): string {
    if (name === 'keys' && keys !== undefined)
      return `, ${counted(keys.count, 'half ball')} of ${formatLength(keys.radiusMm, show)} radius`;
    if (name === 'flange' && flange !== undefined)
      return `, ${formatLength(flange.widthMm, show)} wide around ${roughLength(flange.outlineMm, show)} of outline`;
    return '';
  }
}

const liftWords = (forceN: number, weightKg: number): string =>
  forceN > 0
    ? `the rubber lifts the sculpt with ${amount(forceN, 3)} N, like ${amount(weightKg, 2)} kg`
    : `the sculpt stays down by itself: it is ${amount(-weightKg, 2)} kg heavier than the rubber it displaces`;

function cavityLine({ casting }: Mold, show: Show): string {
  const { value, low, high } = casting.cavityCm3;
  return line(
    'Cavity',
    `${formatVolume(value, show)} when the foam is poured at ${formatTemperature(casting.castingTempC, show)}, ${formatVolumeRange(low, high, show)} 19 times in 20`,
  );
}

function siliconeLine({ silicone }: Mold, { ask }: MoldCall, show: Show): string {
  const { name, cure, ratio = DEFAULT_RATIO } = ask.silicone ?? {};
  return line(
    'Silicone',
    [
      name ?? 'no card, by its figures',
      cure === undefined ? 'cure not known: both cautions' : `${cure} cure`,
      `base to catalyst ${amount(ratio.base)}:${amount(ratio.catalyst)} by mass`,
      formatQuantity('density', silicone.densityKgM3, show),
      `smallest mix for your scale ${amount(silicone.smallestMixG, 3)} g`,
    ].join(', '),
  );
}

const DEFAULT_RATIO = { base: 10, catalyst: 1 };

function degasLine({ silicone }: Mold, { ask }: MoldCall): string {
  const most = silicone.pours[0]!.order.largestMixG;
  const cup = ask.work?.containerCm3;
  return line(
    'Vacuum',
    cup === undefined
      ? 'the mix swells to several times its volume: say --cup-volume to see what a cup takes'
      : `the mix swells to several times its volume: of ${amount(cup)} cm\u00b3 a mix of at most ${amount(most, 3)} g is made`,
  );
}

/** A row a pour, aligned; only where there are several. */
function coatLines({ silicone }: Mold, show: Show): string[] {
  const { pours } = silicone;
  if (pours.length < 2) return [];
  const rows = pours.map(({ name, coat, volumeCm3, order }) => [
    name,
    coat === undefined ? '' : `to ${formatLength(coat.outerMm, show === 'us' ? 'us' : 'metric')}`,
    formatVolume(volumeCm3, show === 'us' ? 'us' : 'metric'),
    `${formatGrams(order.baseG, order.stepG)} base`,
    `${formatGrams(order.catalystG, order.stepG)} catalyst`,
    order.mixes.length === 1
      ? 'in 1 mix'
      : `in ${order.mixes.length} mixes of ${formatGrams(order.mix.baseG, order.stepG)} + ${formatGrams(order.mix.catalystG, order.stepG)}`,
  ]);
  return aligned(rows).map((row) => line('Mix', row));
}

function buyLines({ silicone }: Mold): string[] {
  const { stock, purchase } = silicone;
  const lines: string[] = [];
  if (stock !== undefined) {
    const left = `${amount(stock.leftBaseKg, 3)} kg of base and ${amount(stock.leftCatalystKg, 3)} kg of catalyst stay on the shelf`;
    lines.push(
      line(
        'Stock',
        stock.needKg === 0
          ? `covers it; ${left}.`
          : `makes ${amount(stock.usableKg, 3)} kg, then the ${stock.scarcer === 'neither' ? 'silicone' : stock.scarcer} is out; ${amount(stock.needKg, 3)} kg are missing; ${left}.`,
      ),
    );
  }
  if (purchase !== undefined) {
    const leaner = purchase.nextCheaperWaste;
    const other = leaner === undefined ? '' : `; or, with less left over, ${kitsWords(leaner)}`;
    lines.push(line('Buy', `${kitsWords(purchase)}${other}.`));
  }
  return lines;
}

function rubberLine({ siliconeCm3, silicone }: Mold, show: Show): string {
  const { value, low, high, from } = siliconeCm3;
  const [least, most] = silicone.rangeG;
  const half = (most - least) / 2 / silicone.totalG;
  const grams = half < 5e-4 ? '' : `; ${amount(least)} to ${amount(most)} g mixed (\u00b1 ${percent(half)})`;
  return line(
    'Rubber',
    `${formatVolume(value, show)}, ${formatVolumeRange(low, high, show)} 19 times in 20 (${from})${grams}; how evenly a hand works is not in it`,
  );
}
