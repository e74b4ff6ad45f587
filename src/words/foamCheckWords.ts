import type { AirCase } from '../checks/airPressure';
import type { CupCase } from '../checks/cupRoom';
import type { CupTestCase } from '../checks/cupTestToday';
import type { FoamAgeCase } from '../checks/foamAge';
import type { MixingCase } from '../checks/mixingMethod';
import type { PackCase } from '../checks/packRange';
import type { WindowCase } from '../checks/pourWindow';
import type { RatioOrderCase } from '../checks/ratioOrder';
import type { ScaleCase } from '../checks/scaleStep';
import type { ShortFillCase } from '../checks/shortFillRisk';
import { POUR_RULES } from '../yield';
import type { Words } from './byCase';
import { monthsAgo, monthsOver } from './ageWords';
import { chanceWords } from './chance';
import { amount, counted, percent, type Values } from './sentence';

export const CUP_TEST_WORDS: Words<CupTestCase> = {
  'of today': (v) => ({
    text: `A cup of today tells the free rise: it is known to ${percent(v.withShare)} or so, instead of ${percent(v.withoutShare)} from a label.`,
    hint: 'Use the same lot, room and way of mixing for the pour.',
  }),
  'not of today': (v) => ({
    text: `No cup was tested today: the free rise is known to ${percent(v.withoutShare)} only, and a cup would make that ${percent(v.withShare)}.`,
    hint: 'Foam a cup of known volume in this room today, trim and weigh it: the cheapest way to a surer batch.',
  }),
};

export const FOAM_AGE_WORDS: Words<FoamAgeCase> = {
  unopened: (v) => ({
    text: 'Both parts of the foam are still closed: the dates on their labels count.',
    hint: `Write the day on them when you open them; from ${counted(v.lookMonths, 'month')} on they want a look.`,
  }),
  fresh: (v) => ({
    text: `The foam was opened ${monthsAgo(v)}, less than the ${counted(v.lookMonths, 'month')} after which it wants a look.`,
    hint: 'Close both parts at once after each use, with dry air over part A. A date on the label that comes sooner counts.',
  }),
  aging: (v) => ({
    text: `The foam was opened ${monthsAgo(v)}: past ${counted(v.lookMonths, 'month')} moisture from the air may have spoiled part A, and part B may foam more or less than it did.`,
    hint: 'Look for skin, crystals or cloudiness in part A, stir part B, and foam a cup before you pour the mold.',
  }),
  'old, cup rose': (v) => ({
    text: `The foam was opened ${monthsAgo(v)}, ${monthsOver(v)}; a cup of it was tested today.`,
    hint: 'Pour only if that cup rose, set and felt as usual; use its density, and expect other times than the data sheet says.',
  }),
  old: (v) => ({
    text: `The foam was opened ${monthsAgo(v)}, ${monthsOver(v)}, and no cup of it was tested today.`,
    hint: 'Foam a cup and pour only if it rises and sets as usual; else take fresh foam, both parts of one lot.',
  }),
};

export const AIR_WORDS: Words<AirCase> = {
  'in the cup test': () => ({
    text: 'The cup of today rose in this air: its density has the air pressure in it.',
    hint: 'Do not correct for air pressure or height as well.',
  }),
  measured: () => ({
    text: 'The air pressure was read at the bench.',
    hint: 'See that the barometer is not set to sea level.',
  }),
  'height only': (v) => ({
    text: `The air pressure follows from the height above the sea; weather moves the density by about ${percent(v.doubtShare)} more.`,
    hint: 'Read a barometer that is not set to sea level, or test a cup today.',
  }),
  'weather report': () => ({
    text: 'Weather reports give the pressure as it would be at sea level: higher up it is wrong, the more the higher.',
    hint: 'Give the height above the sea instead, read a barometer at the bench, or test a cup today.',
  }),
};

export const RATIO_ORDER_WORDS: Words<RatioOrderCase> = {
  'read back': () => ({
    text: 'A:B is in the order of the data sheet, and it was read back.',
    hint: 'Weigh B first, read it, then A.',
  }),
  'not read back': () => ({
    text: 'A:B is in the order of the data sheet; nobody has read it back yet.',
    hint: 'Read the grams and the labels of both drums aloud, A the isocyanate, before you open them.',
  }),
  reversed: () => ({
    text: 'The ratio that was typed is that of the card in the other order.',
    hint: 'Do not weigh yet. A is the isocyanate and comes first: look at the data sheet, then type the ratio again or correct the card.',
  }),
};

export const SCALE_WORDS: Words<ScaleCase> = {
  'fine enough': (v) => ({
    text: `Steps of ${amount(v.scaleStepG)} g keep the ratio of ${amount(v.totalG)} g to ${percent(v.twoUShare)}, within the ${percent(v.allowedShare)} that is wanted.`,
    hint: 'Tare with the cup on it, on a level bench, out of the draft.',
  }),
  coarse: (v) => ({
    text: `Steps of ${amount(v.scaleStepG)} g leave the ratio of ${amount(v.totalG)} g unsure by ${percent(v.twoUShare)}; ${percent(v.allowedShare)} is wanted.`,
    hint: finerScale(v),
  }),
  'too coarse': (v) => ({
    text: `Steps of ${amount(v.scaleStepG)} g leave the ratio of ${amount(v.totalG)} g unsure by ${percent(v.twoUShare)}, over the ${percent(v.stopShare)} at which we stop.`,
    hint: finerScale(v),
  }),
};

export const PACK_WORDS: Words<PackCase> = {
  usual: (v) => ({
    text: `Pack factor ${amount(v.packFactor)} is within the usual ${amount(v.low)} to ${amount(v.high)}.`,
    hint: 'Vents open and clamps tight all the same.',
  }),
  light: (v) => ({
    text: `Pack factor ${amount(v.packFactor)} is under the usual ${amount(v.low)} to ${amount(v.high)}: expect a thin skin and perhaps a short fill.`,
    hint: 'Warm the mold and vent every high spot first; then raise the pack.',
  }),
  heavy: (v) => ({
    text: `Pack factor ${amount(v.packFactor)} is over the usual ${amount(v.low)} to ${amount(v.high)}: pressure rises faster than the pack.`,
    hint: 'Lower the pack, or see that mold, clamps and vents bear the pressure of this pack.',
  }),
  'too heavy': (v) => ({
    text: `Pack factor ${amount(v.packFactor)} is over ${amount(v.stopAbove)}, where we stop; ${amount(v.low)} to ${amount(v.high)} is usual.`,
    hint: `Do not pour. Lower the pack to ${amount(v.high)} or less, or take a denser foam.`,
  }),
  'does not fill': (v) => ({
    text: `Pack factor ${amount(v.packFactor)} is under ${amount(v.least)}: the foam would not even fill the mold in the open.`,
    hint: `Raise it to ${amount(v.low)} or more. An overpack in percent is another term.`,
  }),
};

export const SHORT_FILL_WORDS: Words<ShortFillCase> = {
  unlikely: (v) => ({
    text: `A short fill is ${chance(v.chance)}, not over the ${bare(v.lookChance)} that deserves a look.`,
    hint: 'A cold mold or a blocked vent is not in that figure.',
  }),
  possible: (v) => ({
    text: `A short fill is ${chance(v.chance)}, over the ${bare(v.lookChance)} that deserves a look.`,
    hint: ASK_FIRST,
  }),
  likely: (v) => ({
    text: `A short fill is ${chance(v.chance)}, over the ${bare(v.stopChance)} at which we stop.`,
    hint: ASK_FIRST,
  }),
};

export const CUP_WORDS: Words<CupCase> = {
  room: (v) => ({
    text: `${liquid(v)}, a third of it or less.`,
    hint: 'Scrape wall and bottom while you mix.',
  }),
  'little room': (v) => ({
    text: `${liquid(v)}: over a third, up to half. Mix that creams early climbs over the rim, and a drill throws it up the wall.`,
    hint: `Take a cup of ${amount(v.thirdCupCm3, 3)} cm³ or more, or several cups.`,
  }),
  'no room': (v) => ({
    text: `${liquid(v)}, over the half that a cup may hold.`,
    hint: `Take a cup of ${amount(v.thirdCupCm3, 3)} cm³, ${amount(v.halfCupCm3, 3)} cm³ at least, or mix in several cups.`,
  }),
};

export const MIXING_WORDS: Words<MixingCase> = {
  drill: () => ({
    text: 'A drill mixes the foam: it comes out more even than when it is mixed by hand alone.',
    hint: 'Clamp the cup, blade under the liquid before it turns, guard and goggles on, and stop it before you lift it out. Scrape wall and bottom by hand.',
  }),
  'hand alone': () => ({
    text: 'Mixed by hand alone the foam comes out less even than with a drill: streaks, soft and hard places.',
    hint: 'Mix with a drill and a mixing blade if you can. If not: mix for all of the time on the data sheet, scrape wall and bottom, and pour into a second cup and stir again.',
  }),
};

export const WINDOW_WORDS: Words<WindowCase> = {
  'in time': (v) => ({
    text: `The pour takes ${seconds(v.pourTimeS)}, and at least ${seconds(v.pourWindowLowS)} are left until the mix creams.`,
    hint: 'Start the clock when A goes in, with the mold open beside you.',
  }),
  'in time at best': (v) => ({
    text: `The pour takes ${seconds(v.pourTimeS)}; ${seconds(v.pourWindowLowS)} to ${seconds(v.pourWindowS)} are left until the mix creams, as warm parts are faster.`,
    hint: `Cool the parts, widen the opening or mix less in a cup. ${NO_SHORTER_MIX}`,
  }),
  'too late': (v) => ({
    text: `The pour takes ${seconds(v.pourTimeS)}, ${seconds(v.overS)} longer than the ${seconds(v.pourWindowS)} until the mix creams.`,
    hint: `Several cups and helpers, a wider opening, cooler parts or a slower foam. ${NO_SHORTER_MIX}`,
  }),
};

const NO_SHORTER_MIX = 'Do not mix for less than the data sheet says.';

const ASK_FIRST =
  'First ask: is the mold warm, is every high spot vented, is the cup test from today? Only then pack more.';

const finerScale = (v: Values): string =>
  `Use a scale with steps of ${amount(v.neededStepG)} g or finer, or mix at least ${amount(Math.ceil(Number(v.smallestTotalG)), 9)} g.`;

const liquid = (v: Values): string =>
  `The liquid, ${amount(v.liquidCm3, 3)} cm³, fills ${percent(v.share)} of the cup of ${amount(v.cupCm3)} cm³`;

const seconds = (s: number | string | undefined): string => `${amount(s, 2)} s`;

const chance = (value: number | string | undefined): string => chanceWords(Number(value));
const bare = (value: number | string | undefined): string => chance(value).replace('about ', '');

/** Shown while the window is not known, so that nobody takes the cream time for it. */
export const windowStake = (): string =>
  `Mixing takes ${POUR_RULES.mixTime.low} to ${POUR_RULES.mixTime.high} s of the cream time, and ${POUR_RULES.pourMargin.value} s are kept as a margin.`;
