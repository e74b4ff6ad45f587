import type { Assumption } from '../estimate';
import { MOLD_TYPES } from '../geometry';
import type { Compared, Mold, Size } from '../plan';
import { formatLength, formatMass, formatVolume, type Show } from '../units';
import { assumptionLine } from '../words/assumptionWords';
import { cautionsFor } from '../words/materialCautions';
import { kitsShort } from '../words/moldPartWords';
import { say } from '../words/say';
import { amount } from '../words/sentence';
import { sizeBecause } from '../words/sizeWords';
import { findingLine } from './findingLine';
import { assumedFor, cautionsOf } from './moldCall';
import type { MoldCall } from './moldOptions';
import { aligned, line, roughMass, roughVolume } from './moldLines';

export interface ComparedSheet {
  file: string;
  size: Size;
  compared: readonly Compared[];
  call: MoldCall;
  show: Show;
}

/** The types side by side for a person: what holds for all of them first, the table last. */
export function comparedText({ file, size, compared, call, show }: ComparedSheet): string {
  const usual = compared.flatMap(({ isUsual, type, mold }) =>
    isUsual && mold.ok ? [{ type, mold: mold.value }] : [],
  );
  const keys = usual.flatMap(({ mold }) => cautionsOf(mold, call));
  return [
    file,
    ...size.findings.map((problem) => findingLine(problem, show)),
    ...shared(usual, ({ findings }) => findings.map((problem) => findingLine(problem, show))),
    ...[...size.assumptions, ...call.assumptions].map((one) => line('Assumed', assumptionLine(one, show))),
    ...shared(usual, (mold) =>
      assumedFor(mold, call).map((one: Assumption) => line('Assumed', assumptionLine(one, show))),
    ),
    ...sizeBecause(size, show).map((why) => line('Because', why)),
    ...cautionsFor(keys).map(({ when, what }) =>
      when === 'First' ? line(when, what) : line('Caution', `${when}: ${what}`),
    ),
    ...MOLD_TYPES.map(({ key, title, goodFor }) => line('Type', `${title} (--type ${key}). ${goodFor}`)),
    ...tableOf(compared, call, show),
    line(
      'Next',
      'the figures of one: the same call with --type in place of --all; * is the usual thickness, or the one you asked for.',
    ),
  ].join('\n');
}

/** Every line once: as it is where all types have it, else with the types that do. */
function shared(molds: readonly { type: string; mold: Mold }[], linesOf: (mold: Mold) => string[]): string[] {
  const owners = new Map<string, string[]>();
  for (const { type, mold } of molds)
    for (const text of linesOf(mold)) owners.set(text, [...(owners.get(text) ?? []), type]);
  return [...owners].map(([text, types]) =>
    types.length === molds.length
      ? text
      : `${text.slice(0, LABEL)}[${types.join(', ')}] ${text.slice(LABEL)}`,
  );
}

/** Two spaces, eleven letters of a label, one space. */
const LABEL = 14;

const HEAD = ['Type', 'Thickness', 'Rubber', 'Mix', 'Kits', 'Cost', 'Jacket', 'Mold weighs'] as const;

function tableOf(compared: readonly Compared[], { ask }: MoldCall, show: Show): string[] {
  const one = show === 'us' ? 'us' : 'metric';
  const made = compared.filter(({ mold }) => mold.ok);
  const rows = made.map((row) => rowOf(row, one));
  const refused = compared.flatMap(({ title, thicknessMm, mold }) => {
    if (mold.ok) return [];
    const { text, hint } = say(mold.problem, show);
    return [line('Not made', `${title}, ${formatLength(thicknessMm, show)}: ${text} ${hint}`)];
  });
  const material = ask.jacketMaterial ?? 'plaster';
  return [
    ...refused,
    ...aligned([[...HEAD.slice(0, 6), `Jacket (${material})`, HEAD[7]], ...rows]).map((row) => `  ${row}`),
  ];
}

function rowOf({ title, thicknessMm, isUsual, mold }: Compared, show: Show): string[] {
  if (!mold.ok) throw new Error('rowOf: expected a mold');
  const { siliconeCm3, silicone, surroundings, shape } = mold.value;
  const { purchase, stock } = silicone;
  return [
    `${title}${isUsual ? ' *' : ''}`,
    formatLength(thicknessMm, show),
    formatVolume(siliconeCm3.value, show),
    formatMass(silicone.totalG, show),
    purchase !== undefined ? kitsShort(purchase) : stock?.needKg === 0 ? 'in stock' : 'not said',
    purchase?.price === undefined ? (stock?.needKg === 0 ? '0' : 'not said') : amount(purchase.price, 9),
    shape.jacket === undefined || surroundings.jacket === undefined
      ? 'none'
      : `${roughVolume(shape.jacket.volumeMm3 / 1000, show)}, ${roughMass(surroundings.jacket.dryMassG, show)}`,
    roughMass(surroundings.moldG, show),
  ];
}
