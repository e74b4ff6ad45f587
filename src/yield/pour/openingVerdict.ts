import { RULES } from '../rules';

/** What can be said of an opening that was chosen; the worst comes first, and a side nobody can check is told last. */
export const OPENING_VERDICTS = [
  'far too wide',
  'too narrow to pour in time',
  'wider than advised',
  'time not checked',
  'fits',
] as const;
export type OpeningVerdict = (typeof OPENING_VERDICTS)[number];

export interface ChosenOpening {
  openingMm: number;
  /** Share of the largest section across it, 0..1. */
  share: number;
  mostMm: number;
  /** Absent while it is not known how long the pour takes. */
  leastMm?: number | undefined;
}

/** A width chosen for just that limit gives it back within the last digits of a double. */
const SAME = 1 + 1e-9;

/** One verdict on a chosen diameter beside its band (`openingBand`); above 10 % of the section it is far too wide. */
export function openingVerdict({ openingMm, share, mostMm, leastMm }: ChosenOpening): OpeningVerdict {
  if (isFarTooWide(share)) return 'far too wide';
  if (isTooNarrow({ openingMm, leastMm })) return 'too narrow to pour in time';
  if (openingMm > mostMm * SAME) return 'wider than advised';
  return leastMm === undefined ? 'time not checked' : 'fits';
}

export const isFarTooWide = (share: number): boolean => share > RULES.openingShare.high * SAME;

export const isTooNarrow = ({ openingMm, leastMm }: Pick<ChosenOpening, 'openingMm' | 'leastMm'>): boolean =>
  leastMm !== undefined && openingMm * SAME < leastMm;
