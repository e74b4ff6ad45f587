import type { AskedField, PourRow } from '../../job/book';
import type { BenchPlan } from '../../job/benchState';
import { WEIGH_BOXES, type WeighBox, type WeighState } from '../../job/weighState';
import { RULES } from '../../yield';
import { scaleReadingUG } from '../../yield/scaleCheck';
import { voidWords } from '../words/weighPlaces';
import { boxOf, missingBox, missingCm3, readBox, type AtBench, type UnitMemory } from './weighBoxes';

/** What a weigh-back takes from the plan of its casting; the color is weighed in beside A and B, which `totalG` is the sum of. */
export interface PlannedPour extends Pick<
  BenchPlan,
  'partAG' | 'partBG' | 'totalG' | 'stepG' | 'packFactor' | 'cavityCm3' | 'colorG'
> {
  foam?: string;
}

/** What is known besides what stands in the boxes. */
export interface WeighFacts {
  piece: string;
  mold: string;
  casting: string;
  no: number;
  planned: PlannedPour | undefined;
  bench: AtBench;
  units: UnitMemory;
  /** By name, as the casting has it: also where nothing could be planned. */
  foam?: string | undefined;
  /** The row of this casting that is in the book already. */
  known?: PourRow | undefined;
  /** Of the shop's scale. */
  stepG?: number | undefined;
}

/** A and B as they go into the row, and how they are known. */
export interface Parts {
  aG: number;
  bG: number;
  from: 'bench' | 'book' | 'plan';
}

/** Everything that is read out of the boxes. */
export interface WeighRead {
  values: Partial<Record<WeighBox, number>>;
  /** Boxes whose text has no single meaning. */
  unread: WeighBox[];
  parts: Parts | undefined;
  /** The row without id, as it would be written now. */
  draft: Omit<PourRow, 'id'>;
}

/** The color in the mix, as planned, else as the book has it: nobody weighs it apart. g. */
export const colorOf = ({ planned, known }: Pick<WeighFacts, 'planned' | 'known'>): number =>
  planned === undefined ? (known?.colorG ?? 0) : (planned.colorG ?? 0);

export const stepOf = ({ stepG, planned }: Pick<WeighFacts, 'stepG' | 'planned'>): number =>
  stepG ?? planned?.stepG ?? RULES.scaleStep.value;

/** The row of a casting as the boxes and the answers have it. What nobody weighed, took or looked at is left out, never guessed. */
export function pourOfWeigh(state: WeighState, facts: WeighFacts): WeighRead {
  const values: WeighRead['values'] = {};
  const unread: WeighBox[] = [];
  for (const box of WEIGH_BOXES) {
    const read = readBox(box, boxOf(box, state, facts.bench, facts.units));
    if (read.kind === 'one') values[box] = read.value;
    else if (read.kind !== 'blank') unread.push(box);
  }
  const parts = partsOf(state, facts, values.mixed);
  return { values, unread, parts, draft: draftOf(state, facts, values, parts) };
}

/**
 * As weighed at the bench; else as they stand in the book; else as planned, where the mix was not weighed or agrees with the plan within
 * the steps of the scale. A mix that does not was not poured as planned, and A and B are not known.
 */
function partsOf(state: WeighState, facts: WeighFacts, mixedG: number | undefined): Parts | undefined {
  const { bench, known, planned } = facts;
  const turned = (aG: number, bG: number, from: Parts['from']): Parts =>
    state.isSwapped === true ? { aG: bG, bG: aG, from } : { aG, bG, from };
  if (bench.aG !== undefined && bench.bG !== undefined) return turned(bench.aG, bench.bG, 'bench');
  if (known?.aG !== undefined && known.bG !== undefined) return { aG: known.aG, bG: known.bG, from: 'book' };
  if (planned === undefined || state.isPlanOut === true) return undefined;
  const { partAG: aG, partBG: bG } = planned;
  const slackG = 2 * scaleReadingUG(stepOf(facts)) * Math.sqrt(3);
  const isAsPlanned = mixedG === undefined || Math.abs(aG + bG + colorOf(facts) - mixedG) <= slackG;
  return isAsPlanned ? { aG, bG, from: 'plan' } : undefined;
}

function draftOf(
  state: WeighState,
  facts: WeighFacts,
  values: WeighRead['values'],
  parts: Parts | undefined,
): Omit<PourRow, 'id'> {
  const { planned, known, bench } = facts;
  const cavityCm3 = planned?.cavityCm3 ?? known?.cavityCm3;
  const voidCm3 =
    state.filled === 'short' ? missingCm3(missingBox(state.missing, facts.units), cavityCm3) : undefined;
  return said({
    kind: 'pour',
    piece: facts.piece,
    mold: facts.mold,
    casting: facts.casting,
    no: facts.no,
    // A row that is written again stays of its day.
    day: state.day ?? (known === undefined ? bench.day : known.day),
    foam: planned?.foam ?? facts.foam ?? known?.foam,
    lot: state.lot ?? known?.lot,
    pack: planned?.packFactor ?? known?.pack,
    roomC: values.room,
    moldC: values.mold,
    opening: answer(state.opening ?? bench.opening),
    cavityCm3,
    plannedG: parts === undefined && planned !== undefined ? planned.totalG + colorOf(facts) : undefined,
    colorG: colorOf(facts) > 0 ? colorOf(facts) : undefined,
    aG: parts?.aG ?? bench.aG,
    bG: parts?.bG ?? bench.bG,
    mixedG: values.mixed,
    residueG: values.residue,
    castingG: values.casting,
    trimG: values.trim,
    filled: answer(state.filled),
    voidCm3,
    skin: answer(state.skin),
    note: noteOf(state, parts),
    photo: state.photo,
  });
}

const answer = <T>(value: T | 'not' | undefined): T | undefined => (value === 'not' ? undefined : value);

function noteOf({ voids, note = '' }: WeighState, parts: Parts | undefined): string | undefined {
  const words = [
    ...(voids === undefined ? [] : [voidWords(voids)]),
    ...(note.trim() === '' ? [] : [note.trim()]),
    ...(parts?.from === 'plan' ? ['A and B as planned, not weighed'] : []),
  ];
  return words.length === 0 ? undefined : words.join('; ');
}

/** Without the keys that nothing is said under. */
function said(row: { [Key in keyof Omit<PourRow, 'id'>]: PourRow[Key] | undefined }): Omit<PourRow, 'id'> {
  return Object.fromEntries(
    Object.entries(row).filter(([, value]) => value !== undefined),
  ) as unknown as Omit<PourRow, 'id'>;
}

/** Of a row, what a weigh-back says anew; the rest of it stays as it is in the book. */
const SAID_HERE = [
  'mixedG',
  'residueG',
  'castingG',
  'trimG',
  'roomC',
  'moldC',
  'opening',
  'filled',
  'voidCm3',
  'skin',
  'note',
  'photo',
  'plannedG',
  'colorG',
  'aG',
  'bG',
  'keptAsTyped',
] as const satisfies readonly (keyof PourRow)[];

/** The row that is in the book with what the weigh-back says now. */
export function rewritten(known: PourRow, draft: Omit<PourRow, 'id'>): PourRow {
  const rest: PourRow = { ...known };
  for (const field of SAID_HERE) delete rest[field];
  return { ...rest, ...draft, id: known.id };
}

/** The same draft with the answers that some fields stay as they were typed. */
export const withKept = (draft: Omit<PourRow, 'id'>, kept: readonly AskedField[]): Omit<PourRow, 'id'> =>
  kept.length === 0 ? draft : { ...draft, keptAsTyped: [...kept] };
