import { usualCasting, type AskedField, type CheckedPour, type PourRow } from '../../job/book';
import { gramsText } from '../../units';
import type { Slip } from '../../yield';
import { settingC } from '../words/bookPage';
import { keepWords, usualWords } from '../words/bookAsk';
import { amount } from '../../words/sentence';

/** One way to answer a question about a pour: what the button says, and what it writes. */
export interface Answer {
  words: string;
  change: Partial<PourRow>;
}

export interface Asked {
  about: AskedField;
  /** Where an answer that is offered comes from. */
  because?: string;
  answers: Answer[];
}

/** The questions about a pour with the answers that the other weights offer. Nothing is written before one is pressed. */
export function askedOf(
  { slips, row }: CheckedPour,
  pours: readonly CheckedPour[],
  { stepG, isBalanceOff }: { stepG: number; isBalanceOff: boolean },
): Asked[] {
  const asked = slips.map((slip) => askedOfSlip(slip, row, pours, stepG));
  if (!isBalanceOff) return asked;
  return [...asked, { about: 'balance', answers: [keep(row, 'balance', keepWords('balance'))] }];
}

function askedOfSlip(slip: Slip, row: PourRow, pours: readonly CheckedPour[], stepG: number): Asked {
  const { field, typed } = slip;
  const isWarmth = field === 'roomC' || field === 'moldC';
  const kept = keep(row, field, keepWords(field, isWarmth ? settingC(typed) : `${amount(typed, 6)} g`));
  const meant = meantOf(slip, row, pours, stepG);
  return { about: field, ...meant, answers: [...meant.answers, kept] };
}

const keep = (row: PourRow, field: AskedField, words: string): Answer => ({
  words,
  change: { keptAsTyped: [...(row.keptAsTyped ?? []), field] },
});

/** What it may have been: put right, as someone who knows it can confirm. */
function meantOf(
  { code, field, instead }: Slip,
  row: PourRow,
  pours: readonly CheckedPour[],
  stepG: number,
): Pick<Asked, 'answers' | 'because'> {
  switch (code) {
    case 'casting-over': {
      const usual = usualCasting(row, pours);
      if (usual === undefined) return { answers: [] };
      const castingG = Number((Math.round(usual.castingG / stepG) * stepG).toFixed(6));
      const grams = gramsText(castingG, stepG);
      return {
        because: usualWords(usual, grams, row.foam),
        answers: [{ words: `It was ${grams} g`, change: { castingG } }],
      };
    }
    case 'ounces':
    case 'pounds':
    case 'sum-off':
      return { answers: [{ words: `It was ${amount(instead, 6)} g`, change: { [field]: instead } }] };
    case 'fahrenheit':
      return {
        answers: [{ words: `It was ${settingC(instead ?? 0)}`, change: { [field]: instead } }],
      };
    case 'sides-swapped': {
      const { aG = 0, bG = 0 } = row;
      return {
        answers: [{ words: `A was ${amount(bG, 6)} g and B ${amount(aG, 6)} g`, change: { aG: bG, bG: aG } }],
      };
    }
  }
}
