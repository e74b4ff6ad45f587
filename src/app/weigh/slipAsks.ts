import type { FoamCard } from '../../yield';
import { findSlips, massRatio, type Slip, type TypedField } from '../../yield';
import type { WeighBox, WeighState } from '../../job/weighState';
import { numberText } from '../../units';
import { slipWords, type SlipWords } from '../words/weighSlipWords';
import { colorOf, stepOf, type WeighFacts, type WeighRead } from './pourOfWeigh';

/** One way to answer what is asked. `to` is the weigh-back with that answer. */
export interface SlipPick {
  words: string;
  to: WeighState;
}

/** Something to ask about before it is written; nobody has to answer. */
export interface SlipAsk {
  slip: Slip;
  /** The box that it stands by; without one it is about A and B. */
  box: WeighBox | undefined;
  words: SlipWords;
  picks: SlipPick[];
  keep: SlipPick;
  /** Answered so already: it stays as typed. */
  isKept: boolean;
}

const BOX_OF: Partial<Record<TypedField, WeighBox>> = {
  mixedG: 'mixed',
  residueG: 'residue',
  castingG: 'casting',
  trimG: 'trim',
  roomC: 'room',
  moldC: 'mold',
};

/** What is odd in the row as it would be written, each with its readings as answers. */
export function slipAsks(
  state: WeighState,
  read: WeighRead,
  facts: WeighFacts,
  card: FoamCard | undefined,
): SlipAsk[] {
  const ratio = card === undefined ? undefined : massRatio(card.ratio, card.partDensities);
  const stepG = stepOf(facts);
  const slips = findSlips(read.draft, {
    stepG,
    ...(ratio?.ok === true ? { ratio: ratio.value } : {}),
    ...(facts.planned === undefined ? {} : { mixedG: facts.planned.totalG + colorOf(facts) }),
  });
  return slips.map((slip) => {
    const words = slipWords(slip, stepG, colorOf(facts) > 0);
    return {
      slip,
      box: BOX_OF[slip.field],
      words,
      picks: picksOf(state, read, slip, words),
      keep: {
        words: words.keep,
        to: { ...state, kept: { ...state.kept, [slip.field]: slip.typed } },
      },
      isKept: state.kept?.[slip.field] === slip.typed,
    };
  });
}

function picksOf(
  state: WeighState,
  { draft, parts }: WeighRead,
  slip: Slip,
  { pick }: SlipWords,
): SlipPick[] {
  const box = BOX_OF[slip.field];
  const typed = (text: string, unit: string): WeighState =>
    box === undefined ? state : { ...state, boxes: { ...state.boxes, [box]: { text, unit } } };
  switch (slip.code) {
    case 'ounces':
    case 'pounds':
      return box === undefined
        ? []
        : [{ words: pick, to: typed(numberText(slip.typed), slip.code === 'ounces' ? 'oz' : 'lb') }];
    case 'fahrenheit':
      return [{ words: pick, to: typed(numberText(slip.typed), 'F') }];
    case 'sides-swapped':
      // As they stand in the Book they are turned there: here it would change nothing.
      if (parts?.from === 'book') return [];
      return [{ words: pick, to: { ...state, isSwapped: state.isSwapped !== true } }];
    case 'sum-off':
      return [{ words: pick, to: typed(numberText(slip.instead ?? slip.typed), 'g') }];
    case 'casting-over': {
      const { trimG = 0 } = draft;
      // Just what was poured, and there was trim: it was weighed before that came off.
      if (slip.isPoured !== true || trimG === 0 || slip.instead === undefined) return [];
      return [{ words: pick, to: typed(numberText(slip.typed - trimG), 'g') }];
    }
  }
}
