import { formatGrams, gramsText, numberText } from '../../units';
import { BOOK_FIELDS } from '../../words/bookFields';
import type { Slip } from '../../yield';

/** What is asked, the reading on the button, and the answer that leaves it as it is. */
export interface SlipWords {
  ask: string;
  pick: string;
  keep: string;
}

/** The question about one slip of the pen, in place: short, with its readings. */
export function slipWords(slip: Slip, stepG: number, isColored = false): SlipWords {
  const { typed, instead = typed } = slip;
  const grams = (massG: number): string => formatGrams(massG, stepG);
  const keep = `Keep ${grams(typed)} and learn nothing from it`;
  const what = BOOK_FIELDS[slip.field] ?? slip.field;
  switch (slip.code) {
    case 'casting-over':
      return {
        ask: `That is heavier than can be: at most ${grams(instead)} were left for the casting.${
          slip.isPoured === true ? ` ${grams(typed)} is just what was poured.` : ' Weigh it again?'
        }`,
        pick: `${grams(instead)}, as it was weighed with the trim on`,
        keep,
      };
    case 'ounces':
      return unitWords('oz');
    case 'pounds':
      return unitWords('lb');
    case 'fahrenheit': {
      const asC = `${numberText(Math.round(10 * instead) / 10)} °C`;
      return {
        ask: `${numberText(typed)} °C is hotter than anyone pours at. Was it read in °F?`,
        pick: `${numberText(typed)} °F, which is ${asC}`,
        keep: `Keep ${numberText(typed)} °C and learn nothing from it`,
      };
    }
    case 'sides-swapped':
      return {
        ask: `${grams(typed)} of A to ${grams(instead)} of B is the ratio of the card the other way round. Written so, or weighed so?`,
        pick: `Written so: A ${grams(instead)}, B ${grams(typed)}`,
        keep: 'It was weighed so: learn nothing from it',
      };
    case 'sum-off':
      return {
        ask: `A and B${isColored ? ' with the color' : ''} add up to ${grams(instead)}, but ${grams(typed)} is written as mixed.`,
        pick: `${grams(instead)} mixed, as ${isColored ? 'A, B and the color' : 'A and B'} have it`,
        keep,
      };
  }

  function unitWords(unit: 'oz' | 'lb'): SlipWords {
    return {
      ask: `${grams(typed)} is far from what ${what} should weigh. Was it weighed in ${unit}?`,
      pick: `${numberText(typed)} ${unit}, which is ${gramsText(instead, stepG)} g`,
      keep,
    };
  }
}
