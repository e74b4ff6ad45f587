import { CHECK_FIGURES, type PourCautionWhere } from '../checks';
import { RULES, WARMTH_RULES } from '../yield';
import { amount } from './sentence';

/** The usual cautions, by when they apply. They point to the data sheet; they do not replace it. */
export interface Caution {
  when: string;
  what: string;
}

/** A caution of the pour, with where it is known from. */
export interface PourCaution extends Caution {
  key: PourCautionKey;
  from: string;
}

/** What a caution may name in figures, where it is known. */
export interface CautionFigures {
  /** Push of the foam on plug or lid, N. */
  plugN?: number;
}

const COMMON = 'common practice, no source';
const MEMORY = 'from memory, not verified';

/** 1 kPa on 1 cm2, by the definition of the pascal. */
const N_OF_CM2_KPA = 0.1;
/** An example to grasp the rule by: a lid of 15 by 20 cm. */
const LID = { cm2: 300, kPa: 25 };

/** In the order of the pour. */
const BY_KEY = {
  first: {
    when: 'First',
    what: 'The data sheets, local codes and licensed practice come before anything here.',
    from: COMMON,
  },
  'part-a': {
    when: 'Part A',
    what: 'Isocyanates can make a person allergic for good, without a smell to warn of it. Outdoors or with exhaust air, gloves, goggles, and the breathing protection the data sheet names.',
    from: `hazard summaries of NIOSH on MDI, ${MEMORY}; gloves and goggles: ${COMMON}`,
  },
  sensitized: {
    when: 'Sensitized',
    what: 'Who has ever reacted to isocyanates, with wheezing, a tight chest or a rash, stays out: no mixing, no watching, not even a small cup, until the foam has set and the room is aired. A mask is no way round it.',
    from: `hazard summaries of NIOSH on MDI, ${MEMORY}; airing: ${COMMON}`,
  },
  phone: {
    when: 'Phone',
    what: 'Gloves off before you touch the phone, a keyboard or a door handle, and wash before you eat: what is on the glove is on the screen, and then on face and hands. Better: stand the page up where it can be read without a touch.',
    from: COMMON,
  },
  'damp-mold': {
    when: 'Damp mold',
    what: `After a water fill or a wash the mold must be dry, seams and vents too, before foam goes in: a gram of water makes ${amount(CHECK_FIGURES.waterGas.value, 3)} liters of gas with part A, and with it voids, a soft skin and more pressure. Do not pour until someone has confirmed that it is dry.`,
    from: `the gas: ${CHECK_FIGURES.waterGas.from}; the rest: ${COMMON}`,
  },
  'cold-mold': {
    when: 'Cold mold',
    what: `On a cold mold the foam rises less and leaves uneven places. ${amount(WARMTH_RULES.moldFine.low)} to ${amount(WARMTH_RULES.moldFine.high)} °C inside is common; measure it there just before the pour.`,
    from: COMMON,
  },
  color: {
    when: 'Color',
    what: 'Only color made for polyurethane goes into the mix, dry, in polyol or plasticizer. Silicone pigment, oil color and acrylic color ruin it, in any amount.',
    from: COMMON,
  },
  mixing: {
    when: 'Mixing',
    what: 'A drill mixer gives a more even foam than mixing by hand alone. Scrape wall and bottom either way, and do not mix for less than the data sheet says.',
    from: COMMON,
  },
  drill: {
    when: 'Drill mixer',
    what: 'It splashes, catches sleeves and tears the cup away. A guard round the blade, the cup clamped and not held, the blade under the liquid before it turns, goggles on, sleeves and hair tied back. Stop it before you lift it out.',
    from: COMMON,
  },
  mold: {
    when: 'Mold',
    what: 'Foam that cannot vent builds pressure. Leave vents open, check straps, and stand clear of the parting line and of the opening.',
    from: `ideal-gas pressure of a closed mold; the rest: ${COMMON}`,
  },
  'plug-force': {
    when: 'Plug or lid',
    what: plugWords(undefined),
    from: `pressure times area (statics); held and vented: ${COMMON}`,
  },
  heat: {
    when: 'Heat',
    what: 'Warm the mold gently; no heat gun near parts or vapors. The core of the foam gets hot by itself.',
    from: COMMON,
  },
  opening: {
    when: 'Opening',
    what: 'Do not open a mold that hisses, bulges or is hot: wait until it is quiet and cool, then let straps off little by little, face and hands out of their line and away from the parting.',
    from: COMMON,
  },
  leftover: {
    when: 'Leftover',
    what: 'Leftover mix in the cup gets hottest and can smoke or burn. Leave it open and outdoors, spread thin on something that does not burn, and never in a closed bin; throw it away only cold.',
    from: COMMON,
  },
  fire: {
    when: 'Fire',
    what: 'Flexible foam catches fire easily and burns fast, with thick, toxic smoke. Keep castings, trimmings and dust away from flames, lamps, heaters and sparks, and an extinguisher within reach.',
    from: COMMON,
  },
  venue: {
    when: 'Venue',
    what: 'Stages, exhibitions, film sets and shops have fire rules for what is put up. Ask the venue and the local fire code before you cast: paint or spray does not make up for a foam without a test report.',
    from: COMMON,
  },
  use: { when: 'Use', what: 'Not for skin contact, faces, food, toys or medical use.', from: COMMON },
} as const satisfies Readonly<Record<string, Omit<PourCaution, 'key'>>>;

export type PourCautionKey = keyof typeof BY_KEY;

export const POUR_CAUTION_KEYS = Object.keys(BY_KEY) as readonly PourCautionKey[];

const WHERE: Readonly<Record<PourCautionWhere, true>> = {
  'damp-mold': true,
  'cold-mold': true,
  drill: true,
  'plug-force': true,
};

/**
 * The cautions of a pour, each once, in the order of the list: those that always stand, and of the others those asked for by
 * key. Without keys nothing is known of the pour, and all of them stand.
 */
export function pourCautions(
  keys: readonly string[] = POUR_CAUTION_KEYS,
  figures: CautionFigures = {},
): PourCaution[] {
  const unknown = keys.find((key) => !Object.hasOwn(BY_KEY, key));
  if (unknown !== undefined)
    throw new Error(`pourCautions: expected one of ${POUR_CAUTION_KEYS.join(', ')}, got ${unknown}`);
  return POUR_CAUTION_KEYS.filter((key) => !Object.hasOwn(WHERE, key) || keys.includes(key)).map((key) => ({
    key,
    ...BY_KEY[key],
    ...(key === 'plug-force' ? { what: plugWords(figures.plugN) } : {}),
  }));
}

function plugWords(plugN: number | undefined): string {
  const push =
    plugN === undefined
      ? `with ${amount(N_OF_CM2_KPA)} N for each cm² and kPa: ${amount(LID.kPa)} kPa on ${amount(LID.cm2)} cm² are ${amount(LID.cm2 * LID.kPa * N_OF_CM2_KPA)} N`
      : `with about ${amount(plugN, 2)} N, as ${amount(plugN / RULES.gravity.value, 2)} kg would weigh`;
  return `The foam pushes on a plug or lid ${push}. Hold it with clamp, strap or weight, never by hand; let it vent; nobody stands or leans over it.`;
}

/** Every one of them, for a page that knows nothing of the pour yet. */
export const POUR_CAUTIONS: readonly PourCaution[] = pourCautions();
