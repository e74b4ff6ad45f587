import type { PourCode } from '../problem';
import { BOOK_INPUT_WORDS } from './bookInputWords';
import { POUR_INPUT_WORDS } from './pourInputWords';
import { amount, counted, type Sentence, type Values, percent } from './sentence';

export const POUR_WORDS: Record<PourCode, (v: Values) => Sentence> = {
  INPUT_NOT_WHOLE: (v) => ({
    text: `${inputName(v.input)} is ${amount(v.value)}, and only whole ones can be counted.`,
    hint: 'Type a whole number.',
  }),
  PACK_LEVELS: (v) => ({
    text: `That would be ${counted(v.levels, 'pack')} to compare; 1 to ${amount(v.most)} can be shown.`,
    hint: 'Give a first pack, a last one above it and a step, such as 1.1, 1.6 and 0.1.',
  }),
  LIQUID_OVER_CAVITY: (v) => ({
    text: `Mix of ${amount(v.mixedG)} g is ${amount(v.liquidCm3)} cm³ of liquid, which the cavity of ${amount(v.cavityCm3)} cm³ does not hold.`,
    hint: 'Check the mass, the cavity and the density of the liquid.',
  }),
  STRAPS_TOO_MANY: (v) => ({
    text: `Holding ${amount(v.clampN, 2)} N would take ${amount(v.strapsNeeded)} straps of ${amount(v.strapN)} N.`,
    hint: 'Bolt or clamp the flanges instead, or check the pressure and the area.',
  }),
  AIR_PRESSURE_UNLIKELY: (v) => ({
    text:
      `An air pressure of ${amount(v.stationKPa)} kPa does not go with ${amount(v.altitudeM)} m above the sea, where about ` +
      `${amount(v.standardKPa, 3)} kPa are usual. Weather reports give the pressure as it would be at sea level.`,
    hint: 'Read a barometer on the bench that is not set to sea level, or leave the pressure out and give the height.',
  }),
  POUR_WINDOW_NONE: (v) => ({
    text: `The mix creams after ${amount(v.creamS, 2)} s, and mixing, carrying and the margin take ${amount(v.takenS, 2)} s: nothing is left to pour in.`,
    hint: 'Cool the ingredients, mix less at a time with a drill mixer, stand beside the mold, or take a slower foam. Do not shorten the mixing below its data sheet.',
  }),
  CORE_HOT: (v) => ({
    text: `The core of a thick part can reach ${amount(v.coreLowC, 2)} to ${amount(v.coreHighC, 3)} °C; from ${amount(v.lookC)} °C on it can scorch, from ${amount(v.stopC)} °C on it can discolor inside or light itself.`,
    hint: 'Pour in layers or with a hollow core, start cooler, ask the supplier. Leave the casting and all leftover mix open and outdoors until they are cold.',
  }),
  CUPS_TOO_MANY: (v) => ({
    text: `A cup may take ${amount(v.largestMixG, 3)} g and ${amount(v.residueG)} g stay in each: ${amount(v.inMoldG)} g for the mold would need more than ${amount(v.most)} cups. The ${String(v.limitedBy)} sets that limit.`,
    hint:
      v.limitedBy === 'container'
        ? 'Take a larger mixing container.'
        : 'Take a slower foam, pour faster through a wider opening, or cast the piece in parts.',
  }),
  CUPS_TOGETHER: (v) => ({
    text: `The batch is mixed in ${counted(v.count, 'cup')} of ${amount(v.totalG)} g, as the ${String(v.limitedBy)} allows no more in one. ${counted(v.mixers, 'person mixes', 'persons mix')} at the same time.`,
    hint: 'Weigh out every cup first. Start together, on one clock, and pour together: no cup waits for another.',
  }),
  CUPS_OVER_HANDS: (v) => ({
    text: `It takes ${counted(v.count, 'cup')} of ${amount(v.totalG)} g, and ${counted(v.mixers, 'person mixes', 'persons mix')}: the first cup creams before the last is poured. The ${String(v.limitedBy)} sets the size of a cup.`,
    hint:
      'Get a helper for each cup, a larger container or a slower foam. Cups poured onto foam that has risen leave a seam and an ' +
      'uneven casting.',
  }),
  CUPS_NOT_CHECKED: (v) => ({
    text: `Not checked whether one person can mix and pour ${amount(v.totalG)} g at once: neither the cup nor the cream time is known.`,
    hint: 'Give the volume of the mixing cup and the cream time of the data sheet.',
  }),
  COLOR_NAMED_TWICE: (v) => ({
    text: `The color recipe names "${String(v.name)}" twice.`,
    hint: 'Add the two shares up, or give them names of their own.',
  }),
  CORE_FILLS_MOLD: (v) => ({
    text: `Core (${amount(v.coreCm3)} cm³) and armature (${amount(v.armatureCm3)} cm³) leave nothing of the ${amount(v.outerCm3)} cm³ for foam.`,
    hint: 'Check the files and their units: the core must lie inside the outer shape.',
  }),
  CORE_FLOATS: (v) => ({
    text:
      `The core is pushed up with ${amount(Math.max(0, Number(v.inFoamN)), 2)} N by the foam and with up to ${amount(Math.max(0, Number(v.inLiquidN)), 2)} N by the liquid mix` +
      (Number(v.neckN) > 0 ? `, and out at its neck with ${amount(v.neckN, 2)} N` : '') +
      '.',
    hint: `Fix it so that it holds ${amount(v.advisedN, 2)} N, ${amount(v.safety)} times that, up, down and sideways; glue alone lets go when it warms.`,
  }),
  CORE_MASS_UNKNOWN: (v) => ({
    text: `Not checked whether the core floats: its mass is not known. It stays down by itself from ${amount(Number(v.needG) / 1000, 3)} kg.`,
    hint: 'Weigh it with its armature and give the mass, or fix it in any case.',
  }),
  NO_HEAD: () => ({
    text: 'An opening without length and without liquid above it has 0 mm of head: nothing flows.',
    hint: 'Give the length of the opening or the height of liquid kept above it.',
  }),
  OPENING_NONE: (v) => ({
    text: `No opening up to ${amount(v.widestMm)} mm lets ${amount(v.liquidCm3)} cm³ in within ${amount(v.withinS)} s.`,
    hint: 'Pour through several openings or a large mouth that is closed with a vented plug at once, or take a slower foam.',
  }),
  OPENING_FLOW_FAST: (v) => ({
    text: `In an opening of ${amount(v.sprueMm)} mm the mix would flow faster than the formula holds for (Reynolds number ${amount(v.reynolds, 2)}, ${amount(v.most)} at most): the real pour is slower.`,
    hint: 'Count on more time, or check the viscosity and its unit: 1 Pa s is 1000 cP.',
  }),
  PACK_LOST_AT_MOUTH: (v) => ({
    text: `The open mouth holds back about ${amount(v.mouthKPa, 2)} kPa of the ${amount(v.idealKPa, 2)} kPa this pack would give, under ${percent(v.wastedShare)} of it: the extra foam leaves through the mouth.`,
    hint: 'Close the mouth with a vented plug that is held down, and stand clear of it; or narrow it, or pack less.',
  }),
};

const inputName = (input: number | string | undefined): string => NAMES[String(input)] ?? String(input);

const NAMES: Readonly<Record<string, string>> = { ...BOOK_INPUT_WORDS, ...POUR_INPUT_WORDS };
