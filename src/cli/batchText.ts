import type { Problem } from '../problem';
import {
  formatDensity,
  formatGrams,
  formatQuantity,
  formatVolume,
  formatVolumeRange,
  type Show,
} from '../units';
import { assumptionLine } from '../words/assumptionWords';
import { batchBecause, gramsLine } from '../words/batchWords';
import { cautionsOfPour } from '../words/cautionsOfPour';
import { chanceWords } from '../words/chance';
import { hollowWords, pourBecause } from '../words/pourBecause';
import { mixedRange } from '../words/mixedRange';
import { amount, counted } from '../words/sentence';
import { toldOnce } from '../words/toldOnce';
import { findingLine } from './findingLine';
import { line } from './moldLines';
import type { Poured } from './pourCall';
import { optionsOfFact } from './pourFactOptions';

/** The batch for a person: checks, what was assumed, why, cautions; the grams last. Masses are those of the scale, in grams. */
export function batchText(poured: Poured, show: Show): string {
  const { prepared } = poured;
  const { batch, cavityCm3 } = prepared;
  const range = mixedRange(prepared);
  return [
    ...findingLines(poured.findings, show),
    ...poured.assumptions.map((assumption) => line('Assumed', assumptionLine(assumption, show))),
    ...becauseOf(poured, show).map((why) => line('Because', why)),
    ...cautionsOfPour(prepared).map(({ when, what }) => line(when, what)),
    line(
      'Cavity',
      `${formatVolume(cavityCm3.value, show)}, ${formatVolumeRange(cavityCm3.low, cavityCm3.high, show)} (${cavityCm3.from})`,
    ),
    ...colorLines(poured),
    ...timeLines(poured),
    ...holdLines(poured),
    line(
      'Short fill',
      `${chanceWords(batch.shortFillChance)}, packed ${amount(batch.packFactor)} times to ${formatDensity(batch.moldedDensityKgM3, show)}`,
    ),
    line('Range', `${range.low} to ${range.high} g is what this pack could ask for, 9 times in 10`),
    line('Pressure', pressureWords(poured, show)),
    line('Weigh', gramsLine(prepared)),
  ].join('\n');
}

/** Every reason of a pour, in the order of the JSON. */
export function becauseOf({ prepared, call }: Poured, show: Show): string[] {
  const { casting, size, core, armatureCm3 } = call.cavity;
  const outer = casting?.cavityCm3 ?? size?.volumeCm3;
  const isHollow = core !== undefined || armatureCm3 !== undefined;
  return [
    ...batchBecause(prepared, show),
    ...(isHollow && outer !== undefined
      ? [
          hollowWords(
            outer.value,
            {
              ...(core === undefined ? {} : { coreCm3: core.coreCm3 }),
              ...(armatureCm3 === undefined ? {} : { armatureCm3 }),
            },
            show,
          ),
        ]
      : []),
    ...pourBecause(prepared, show, casting),
  ];
}

/** What is wrong one a line; what is fine, and what nobody told, each on one line of their own: they are many. */
export function findingLines(all: readonly Problem[], show: Show): string[] {
  const findings = toldOnce(all);
  const isCheck = (one: Problem): boolean => typeof one.values.because === 'string';
  const fine = findings.filter((one) => isCheck(one) && one.status === 'fine');
  const open = findings.filter((one) => isCheck(one) && one.status === 'unknown');
  const rest = findings.filter((one) => !fine.includes(one) && !open.includes(one));
  return [
    ...rest.map((problem) => findingLine(problem, show)),
    ...(fine.length === 0 ? [] : [line('Fine', `${fine.map(nameOf).join(', ')}.`)]),
    ...(open.length === 0 ? [] : [line('Not checked', `${open.map(nameOf).join(', ')}.${asked(open)}`)]),
  ];
}

/** "mold damp" of the code MOLD_DAMP. */
const nameOf = ({ code }: Problem): string => code.toLowerCase().replaceAll('_', ' ');

/** The options that tell what is missing. */
function asked(open: readonly Problem[]): string {
  const facts = open.flatMap(({ values }) => String(values.missing ?? '').split(', '));
  const flags = [...new Set(facts.flatMap(optionsOfFact))];
  return flags.length === 0 ? '' : ` To have them checked, say ${flags.join(', ')}.`;
}

function pressureWords({ prepared: { forces } }: Poured, show: Show): string {
  const { value, low, high } = forces.pressureKPa;
  const kPa = (v: number): string => formatQuantity('pressure', Number(v.toPrecision(2)), show);
  return `about ${kPa(value)}, ${kPa(low)} to ${kPa(high)}: an estimate, not a limit`;
}

function holdLines({ prepared: { forces } }: Poured): string[] {
  const { clamp, straps, plugN } = forces;
  return [
    ...(clamp === undefined || straps === undefined
      ? []
      : [
          line(
            'Hold',
            `${amount(clamp.clampN, 2)} N in all: ${counted(straps.straps, 'strap')}, ${amount(straps.buckleN, 2)} N at each buckle${straps.holds ? '' : `; not enough, it takes ${amount(straps.strapsNeeded)}`}`,
          ),
        ]),
    ...(plugN === undefined || plugN === 0
      ? []
      : [line('Plug', `${amount(plugN, 2)} N push on it: held, vented, nobody over it`)]),
  ];
}

function timeLines({ prepared: { times, warmth } }: Poured): string[] {
  const { window, openMin } = times;
  return [
    ...(warmth.warmUp === undefined
      ? []
      : [
          line(
            'Warm',
            `${amount(warmth.warmUp.deepFaceMin.high, 2)} min at most, then pour within ${amount(warmth.coolDown?.pourWithinMin, 2)} min`,
          ),
        ]),
    ...(window === undefined
      ? []
      : [
          line(
            'Pour',
            `in ${between(window.pourWindowS.low, window.pourWindowS.value)} s, once it is mixed and at the mold`,
          ),
        ]),
    ...(openMin === undefined
      ? []
      : [line('Open', `after about ${amount(openMin.value, 2)} min, when it is quiet and cool`)]),
  ];
}

/** "13 to 16", or "13" where both ends say the same. */
function between(low: number, high: number): string {
  const [from, to] = [amount(low, 2), amount(high, 2)];
  return from === to ? from : `${from} to ${to}`;
}

function colorLines({ prepared: { color, batch } }: Poured): string[] {
  if (color === undefined) return [];
  const step = Math.min(batch.stepG, COLOR_STEP_G);
  return color.items.map(({ name, massG, drops, dropFrom }) =>
    line(
      'Color',
      `${name} ${formatGrams(massG, step)}, about ${counted(drops, 'drop')} (a drop ${dropFrom}); into B, before A`,
    ),
  );
}

/** Color is weighed on a finer scale. Chosen here. */
const COLOR_STEP_G = 0.1;
