import type { Outcome } from '../../problem';
import type { FieldSpec } from '../ticket/fieldSpec';
import { readSpec, type BoxText } from '../ticket/readSpec';
import { weighedCups, type CupMasses, type WeighedCups } from './weighedCups';

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

/** What the boxes say; what is blank or cannot be read is left out. */
export function massesOf({ water, temp, foams }: CupDraft): Partial<CupMasses> & { foamsG: number[] } {
  const waterG = valueOf('mass', water);
  const waterTempC = valueOf('temp', temp);
  return {
    ...(waterG === undefined ? {} : { waterG }),
    ...(waterTempC === undefined ? {} : { waterTempC }),
    foamsG: foams.map((foam) => valueOf('mass', foam)).filter((foamG) => foamG !== undefined),
  };
}

/** Undefined while a box that it needs is blank or any cannot be read. Errors: those of `cupTest`. */
export function cupsOfDraft(draft: CupDraft): Outcome<WeighedCups> | undefined {
  const { waterG, ...rest } = massesOf(draft);
  const isTyped = ({ text }: BoxText): boolean => text.trim() !== '';
  const isUnread =
    rest.foamsG.length < draft.foams.filter(isTyped).length ||
    (rest.waterTempC === undefined && isTyped(draft.temp));
  if (waterG === undefined || rest.foamsG.length === 0 || isUnread) return undefined;
  return weighedCups({ waterG, ...rest });
}

function valueOf(spec: keyof typeof CUP_SPECS, box: BoxText): number | undefined {
  const read = readSpec(CUP_SPECS[spec], box);
  return read.kind === 'one' ? read.value : undefined;
}
