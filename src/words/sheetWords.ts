import type { PreparedPour } from '../plan';
import { RULES, WARMTH_RULES } from '../yield';
import { cautionsOfPour } from './cautionsOfPour';
import { amount } from './sentence';

/** A caution as short as a sheet at the bench has room for; the full words stand on the plan. */
export interface SheetCaution {
  key: string;
  when: string;
  what: string;
}

/** Each says what to do first. Figures as in the full words, from the same rules. */
const SHORT: Readonly<Record<string, string>> = {
  first: 'Data sheets, local codes and licensed practice come before this sheet.',
  'part-a':
    'It can make you allergic for good: exhaust air or outdoors, gloves, goggles, and the breathing protection its data sheet names.',
  sensitized: 'Who has ever reacted to isocyanates stays out. A mask is no way round it.',
  phone: 'Gloves off before you touch it.',
  'damp-mold': 'Water makes gas. Do not pour until someone has confirmed that it is dry.',
  'cold-mold': 'The foam rises less and leaves uneven places.',
  color: 'Silicone, oil or acrylic color in the mix ruins it.',
  mixing: 'A drill gives a more even foam than mixing by hand alone.',
  drill: 'Guard on, cup clamped, goggles, hair and sleeves tied back. Stop it before you lift it out.',
  mold: 'Foam that cannot vent builds pressure. Vents open; stand clear of parting and opening.',
  heat: 'No heat gun near parts or vapors. The core gets hot by itself.',
  opening: 'Not while it hisses, bulges or is hot.',
  leftover: 'It can smoke or burn: open, outdoors, spread thin, never in a closed bin.',
  fire: 'The casting burns fast, with thick, toxic smoke. No flames, lamps, heaters, sparks.',
  venue: 'Stages, sets and shops have fire rules: ask before you cast.',
  use: 'Not for skin contact, faces, food, toys or medical use.',
  'heat-gun': 'Only on an empty, dry mold, away from solvent, release and wax. Keep it moving.',
  'measure-then-touch': `Measure, then touch. Gloves above ${amount(WARMTH_RULES.burnHours.value)} \u00b0C.`,
};

/** Every caution that applies, short; one without a short form keeps its full words. */
export function sheetCautions(prepared: PreparedPour): SheetCaution[] {
  const { plugN } = prepared.forces;
  return cautionsOfPour(prepared).map(({ key, when, what }) => ({
    key,
    when,
    what: key === 'plug-force' ? plugWords(plugN) : (SHORT[key] ?? what),
  }));
}

const plugWords = (plugN: number | undefined): string =>
  plugN === undefined
    ? 'The foam pushes on it: held and vented, nobody over it.'
    : `The foam pushes on it with about ${amount(plugN, 2)} N, as ${amount(plugN / RULES.gravity.value, 2)} kg would weigh: held and vented, nobody over it.`;
