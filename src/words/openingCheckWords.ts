import type { TrapCase } from '../checks/airTrapped';
import type { DemoldCase } from '../checks/demoldStretch';
import type { CeilingCase } from '../checks/flatCeiling';
import type { LiquidCase } from '../checks/liquidStays';
import type { OpeningSizeCase } from '../checks/openingSize';
import type { SlenderCase } from '../checks/slender';
import type { ThinCastingCase } from '../checks/thinCasting';
import type { ThinRubberCase } from '../checks/thinRubber';
import type { Words } from './byCase';
import { atLeast, atMost } from './roundedMm';
import { amount, percent, type Values } from './sentence';

type Value = number | string | undefined;

const WORSE_SKIN =
  'Too wide an opening lets the foam go and gives a worse skin; a slight constriction while it rises gives a better one (common practice, no source)';

export const OPENING_SIZE_WORDS: Words<OpeningSizeCase> = {
  fits: (v) => ({
    text: `The opening of ${opening(v)} pours in time from ${atLeast(v.leastMm)} on and is within the ${atMost(v.mostMm)} advised; it takes ${percent(v.share)} of the section across it.`,
    hint: `${WORSE_SKIN}. Keep faces and hands away from it while the foam rises.`,
  }),
  'too narrow to pour in time': (v) => ({
    text: `The opening of ${opening(v)} is too narrow: ${atLeast(v.leastMm)} are needed for the mix to run in before it creams.`,
    hint: 'Do not pour through it. Widen it, make a second opening, take a slower or cooler mix, or pour through a large mouth that is closed at once with a vented plug that is held down.',
  }),
  'wider than advised': (v) => ({
    text: `The opening of ${opening(v)} is wider than the ${atMost(v.mostMm)} advised; it takes ${percent(v.share)} of the section across it.`,
    hint: `${WORSE_SKIN}. Narrow it, but not below ${atLeast(v.leastMm)}, or close it after the pour with a vented plug that is held down.`,
  }),
  'far too wide': (v) => ({
    text: `The opening of ${opening(v)} takes ${percent(v.share)} of the section across it, over the ${percent(v.warnShare)} at which we stop.`,
    hint: `${WORSE_SKIN}. Narrow it, or close it right after the pour with a vented plug that is held down; nobody stands over it.`,
  }),
};

/** The side that is known is told while the other waits. */
export function openingSizeStake(v: Values): string | undefined {
  const { openingMm, leastMm, mostMm } = v;
  if (typeof openingMm === 'number' && typeof mostMm === 'number' && openingMm > mostMm)
    return `An opening of ${opening(v)} is wider than the ${atMost(mostMm)} advised. ${WORSE_SKIN}.`;
  if (mostMm !== undefined) return `At most ${atMost(mostMm)} are advised.`;
  return leastMm === undefined ? undefined : `At least ${atLeast(leastMm)} are needed to pour in time.`;
}

export const LIQUID_WORDS: Words<LiquidCase> = {
  stays: (v) => ({
    text: `The mold holds ${cm3(v.holdCm3)} as it stands, and ${cm3(v.pouredLiquidCm3)} of liquid are poured.`,
    hint: 'Wedge it so that it cannot tip, and close every seam below the level of the liquid.',
  }),
  'runs out': (v) => ({
    text: `As it stands the mold holds ${cm3(v.holdCm3)}, and ${cm3(v.pouredLiquidCm3)} of liquid are poured: ${cm3(v.overCm3)} run out before they foam.`,
    hint: 'Do not pour like this. Stand the mold so that the opening is higher, or close the lower vents for good and make others at the high spots.',
  }),
};

const LEAST = 'This is a lower bound: foam rises as a dome and can close a pocket that a liquid would fill.';

export const TRAP_WORDS: Words<TrapCase> = {
  'none to speak of': (v) => ({
    text: `Filled to a level, high spots keep ${cm3(v.trappedCm3)} of air, less than ${cm3(v.smallCm3)}. ${LEAST}`,
    hint: 'Look at the highest points of nose, ears and fingers all the same; a vent there costs a pinprick.',
  }),
  'vents cure it': (v) => ({
    text: `Filled to a level, high spots keep ${cm3(v.trappedCm3)} of air; with the advised vents ${leftWords(v)}. ${LEAST}`,
    hint: 'Make the advised vents at the tops of the pockets, and see daylight through each before you pour.',
  }),
  'some stays': (v) => ({
    text: `Filled to a level, high spots keep ${cm3(v.trappedCm3)} of air; with the advised vents ${cm3(v.leftCm3)} stay. ${LEAST}`,
    hint: 'Make the advised vents, then tilt the mold or add a vent where air still stays; mend that place on the casting.',
  }),
  'much stays': (v) => ({
    text: `Filled to a level, high spots keep ${cm3(v.trappedCm3)} of air; even with the advised vents ${cm3(v.leftCm3)} stay, over the ${cm3(v.stopCm3)} at which we stop. ${LEAST}`,
    hint: 'Do not pour like this. Turn the mold so that fewer parts point up, or place more vents at the tops of the pockets.',
  }),
};

export const trapStake = (v: Values): string | undefined =>
  v.trappedCm3 === undefined
    ? undefined
    : `Filled to a level, high spots keep ${cm3(v.trappedCm3)} of air as it is. ${LEAST}`;

export const CEILING_WORDS: Words<CeilingCase> = {
  none: (v) => ({
    text: `Ceilings within ${amount(v.degrees)}° of level come to ${cm2(v.flatCeilingCm2)}, not over ${cm2(v.lookCm2)}.`,
    hint: 'Nothing to do.',
  }),
  flat: (v) => ({
    text: `Ceilings within ${amount(v.degrees)}° of level come to ${cm2(v.flatCeilingCm2)}, over ${cm2(v.lookCm2)}: foam that reaches them has nowhere to push the air, and leaves shallow voids.`,
    hint: 'Tilt the mold by more than that where no pocket shuts in air for it, as a search of the ways up tells; else set several small vents across the flat part, its middle too (common practice, no source).',
  }),
};

const FREE_FIRST = 'Thin ears, fins and fingers are freed before the pull (common practice, no source)';

export const THIN_CASTING_WORDS: Words<ThinCastingCase> = {
  'thick enough': (v) => ({
    text: `The thinnest place of the casting is ${mm(v.thinnestMm)}, not under ${mm(v.lookMm)}.`,
    hint: 'Pull it slowly all the same.',
  }),
  weak: (v) => ({
    text: `The thinnest place of the casting is ${mm(v.thinnestMm)}: under ${mm(v.lookMm)} it is weak, under ${mm(v.stopMm)} it tears.`,
    hint: `${FREE_FIRST}: peel the rubber off that place with a finger all round, then pull.`,
  }),
  tears: (v) => ({
    text: `The thinnest place of the casting is ${mm(v.thinnestMm)}, under the ${mm(v.stopMm)} at which foam tears on the way out.`,
    hint: `Make it thicker on the sculpt, or reinforce it. If it is cast all the same: ${FREE_FIRST.toLowerCase()}, and a torn one is glued back.`,
  }),
};

export const SLENDER_WORDS: Words<SlenderCase> = {
  sturdy: (v) => ({
    text:
      v.slenderness === 0
        ? `No part is slender: none was found that is over ${times(v.most)} as long as it is thick.`
        : `The most slender part is ${times(v.slenderness)} as long as it is thick, not over ${times(v.most)}.`,
    hint: 'Nothing to do.',
  }),
  slender: (v) => ({
    text: `The most slender part is ${times(v.slenderness)} as long as it is thick, over ${times(v.most)}: it can tear off when it is pulled.`,
    hint: `${FREE_FIRST}: peel the rubber back to its root, or cut a slit along it.`,
  }),
};

export const THIN_RUBBER_WORDS: Words<ThinRubberCase> = {
  'none seen': (v) => ({
    text: `No gap between two parts of the casting narrower than ${mm(v.lookedMm)} was found.`,
    hint: 'Nothing to do.',
  }),
  'thick enough': (v) => ({
    text: `The thinnest rubber between two parts of the casting is ${mm(v.thinnestMm)}, not under ${mm(v.stopMm)}.`,
    hint: 'Look at it for small tears before each casting.',
  }),
  tears: (v) => ({
    text: `The thinnest rubber between two parts of the casting is ${mm(v.thinnestMm)}, under the ${mm(v.stopMm)} at which it tears or moves with the foam.`,
    hint: 'Move the two parts of the sculpt apart or join them with clay, or bed gauze in the rubber there.',
  }),
};

const ROUND_END =
  'End it in a round hole, so that it does not run on, and see that the jacket holds it shut.';

export const DEMOLD_WORDS: Words<DemoldCase> = {
  'no stretch': () => ({
    text: 'The casting, squeezed a little, comes out without stretching the rubber.',
    hint: 'Pull it slowly and straight, the way it was reckoned.',
  }),
  stretches: (v) => ({
    text: `The rubber must stretch by ${share(v.stretch)} where it is tightest, within the ${share(v.allowedShare)} it is let (a third of the ${share(v.breakShare)} at which it breaks).`,
    hint: 'Peel it back slowly, all round.',
  }),
  slit: (v) => ({
    text: `The rubber must stretch by ${share(v.stretch)} where it is tightest, over the ${share(v.allowedShare)} it is let (a third of the ${share(v.breakShare)} at which it breaks).`,
    hint: `Slit the rubber${slitOf(v)} where a seam is cheap to clean, best along the line that is told. ${ROUND_END}`,
  }),
  'beyond its break': (v) => ({
    text: `The rubber must stretch by ${share(v.stretch)} where it is tightest, over the ${share(v.breakShare)} at which it breaks: mold or casting tears.`,
    hint: `Make the mold in two parts, widen the tight place, take a rubber that stretches further, or slit it${slitOf(v)} along the line that is told. ${ROUND_END}`,
  }),
};

export const demoldStake = (v: Values): string | undefined =>
  v.stretch === undefined
    ? undefined
    : `The rubber must stretch by ${share(v.stretch)} where it is tightest.`;

const slitOf = (v: Values): string => (v.slitMm === undefined ? '' : ` for ${atLeast(v.slitMm)}`);
const leftWords = (v: Values): string =>
  v.leftCm3 === 0 ? 'none stays' : `${cm3(v.leftCm3)} stay, less than ${cm3(v.smallCm3)}`;

const opening = (v: Values): string => `${amount(v.openingMm)} mm`;
const mm = (value: Value): string => `${amount(value, 3)} mm`;
const cm3 = (value: Value): string => `${amount(value, 3)} cm³`;
const cm2 = (value: Value): string => `${amount(value, 3)} cm²`;
const times = (value: Value): string => `${amount(value, 2)} times`;
const share = (value: Value): string => `${amount(100 * Number(value), 3)} %`;
