import { good, type Outcome } from '../../problem';
import { cupTest, VOLUME_RULES, type CupTest } from '../../yield';
import type { FieldSpec } from '../ticket/fieldSpec';
import { readSpec, type BoxText } from '../ticket/readSpec';

/** What stands in the boxes of a cup test, as typed. */
export interface CupDraft {
  water: BoxText;
  temp: BoxText;
  foams: readonly BoxText[];
}

export const CUP_SPECS = {
  mass: { kind: 'mass', units: ['g', 'oz'] },
  temp: { kind: 'temperature', units: ['C', 'F'] },
} as const satisfies Record<string, FieldSpec>;

/** More cups than these of one day tell nothing more. Chosen here. */
export const MOST_CUPS = 6;

const blank = (unit: string): BoxText => ({ text: '', unit });

export const newCupDraft = (): CupDraft => ({ water: blank('g'), temp: blank('C'), foams: [blank('g')] });

export const oneMoreCup = (draft: CupDraft): CupDraft => ({
  ...draft,
  foams: [...draft.foams, blank(draft.foams.at(-1)?.unit ?? 'g')],
});

/** A free rise from cups, with all that it came from. */
export interface CupFigures extends CupTest {
  waterG: number;
  waterTempC: number;
  isTempAssumed: boolean;
}

/** Undefined while a box that it needs is blank or cannot be read. Errors: those of `cupTest`. */
export function cupFigures({ water, temp, foams }: CupDraft): Outcome<CupFigures> | undefined {
  const waterG = valueOf('mass', water);
  const toldC = valueOf('temp', temp);
  const typed = foams.filter(({ text }) => text.trim() !== '');
  const foamsG = typed.map((foam) => valueOf('mass', foam)).filter((foamG) => foamG !== undefined);
  const isUnread = foamsG.length < typed.length || (toldC === undefined && temp.text.trim() !== '');
  if (waterG === undefined || foamsG.length === 0 || isUnread) return undefined;
  const waterTempC = toldC ?? VOLUME_RULES.waterTemp.value;
  const test = cupTest(foamsG.map((foamG) => ({ fullG: foamG, cupG: 0, waterG, waterTempC })));
  return test.ok ? good({ ...test.value, waterG, waterTempC, isTempAssumed: toldC === undefined }) : test;
}

function valueOf(spec: keyof typeof CUP_SPECS, box: BoxText): number | undefined {
  const read = readSpec(CUP_SPECS[spec], box);
  return read.kind === 'one' ? read.value : undefined;
}
