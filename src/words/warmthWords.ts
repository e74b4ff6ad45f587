import type { WarmthCode } from '../problem';
import { WARMTH_RULES as R } from '../yield';
import type { WARMTH_BOUNDS, WarmthCaution } from '../yield';
import type { Caution } from './cautions';
import { amount } from './sentence';
import type { Sentence, Values } from './sentence';

export const WARMTH_WORDS: Record<WarmthCode, (v: Values) => Sentence> = {
  WARM_UNREACHABLE: (v) => ({
    text: `From ${temp(v.startTempC)} the rubber never gets to ${temp(v.targetTempC)} in air of ${temp(v.airTempC)}.`,
    hint:
      Number(v.targetTempC) > Number(v.startTempC)
        ? 'Set the air warmer than what you want, or ask for less.'
        : 'It stays warmer than that for as long as you like; ask for a temperature above that of the air.',
  }),
  WARM_ALREADY_THERE: (v) => ({
    text: `The rubber is at ${temp(v.startTempC)} already; ${temp(v.targetTempC)} is behind it.`,
    hint: 'Nothing to wait for. If that is not so, measure the mold on the inside and type its temperature again.',
  }),
  WARM_LUMPED_WRONG: (v) => ({
    text:
      `The shortcut of one temperature throughout does not hold here (Biot number ${amount(v.biot, 2)}, under ${amount(v.limit)} is wanted): ` +
      `it would say ${amount(v.lumpedMin, 3)} min, and the farthest point takes ${amount(v.exactMin, 3)} min.`,
    hint: 'Use the time of the farthest point.',
  }),
  WARM_SURFACE_HOT: (v) => ({
    text: `The surface gets to ${temp(v.surfaceTempC)}; over ${temp(v.lookC)} deserves a look, over ${temp(v.stopC)} a stop.`,
    hint:
      'Use cooler air for longer, keep a heat gun moving, and let the warmth even out. Measure, then touch; gloves above ' +
      `${temp(R.burnHours.value)}. Pour only once the inside is back in the band of the data sheet.`,
  }),
  WARM_JACKET_ON: (v) => ({
    text: `With the jacket on the rubber takes ${amount(v.withMin, 3)} min instead of ${amount(v.withoutMin, 3)} min: the jacket has to be warmed too.`,
    hint: 'Warm skin and jacket separately, or open the mold and warm it from the inside.',
  }),
  MOLD_TEMP_UNKNOWN: (v) => ({
    text: `Not checked whether the mold is warm enough: its temperature is not known. ${band(v)} is common.`,
    hint: 'Measure it on the inside, at the thickest place, just before the pour.',
  }),
  MOLD_TEMP_COLD: (v) => ({
    text: `The mold is cold, ${temp(v.tempC)}: the foam rises less and leaves uneven places. ${band(v)} is common.`,
    hint: 'Warm it first, inside and through, dry and empty; or expect a short fill and a thick skin.',
  }),
  MOLD_TEMP_COOL: (v) => ({
    text: `The mold is cool, ${temp(v.tempC)}; ${band(v)} is common. The foam may rise less.`,
    hint: 'Warm it if you can, or make the cup test in a cup as cool.',
  }),
  MOLD_TEMP_WARM: (v) => ({
    text: `The mold is warmer than usual, ${temp(v.tempC)}; ${band(v)} is common. Foam sets sooner on it and skins thinner.`,
    hint: 'Let it cool a little, or see that the data sheet allows it.',
  }),
  MOLD_TEMP_HOT: (v) => ({
    text: `The mold is hot, ${temp(v.tempC)}; ${band(v)} is common. Skin held on it can burn, and foam can set before it has filled.`,
    hint: 'Do not pour yet: let it cool, measure it again, and only then touch it.',
  }),
  OPEN_TIME_UNKNOWN: (v) => ({
    text: `When this foam can be opened is unknown: its card has no time. Castings are commonly opened after ${amount(v.low)} to ${amount(v.high)} min, still warm.`,
    hint: 'Take the time from the data sheet and put it on the card. Wait in any case while the mold hisses or is hot.',
  }),
};

/** Cautions of warming, by key. The temperatures of burns are from memory, not verified; the rest is common practice. */
export const WARMTH_CAUTIONS: Readonly<Record<WarmthCaution, Caution & { from: string }>> = {
  'heat-gun': {
    when: 'Heat gun',
    what:
      'Only on an empty, dry mold, and away from solvent, release and wax: their vapor catches fire. Not on clay or prints ' +
      'that soften. Never stop on one spot: the surface burns long before the rubber is warm inside. Keep moving, put it ' +
      'down on its stand, let the warmth even out.',
    from: 'common practice, no source',
  },
  'measure-then-touch': {
    when: 'Warm mold',
    what:
      `Measure, then touch. Skin held on a surface can burn within hours at ${temp(R.burnHours.value)}, in about a minute ` +
      `at ${temp(R.burnMinute.value)}, in about five seconds at ${temp(R.burnSeconds.value)}. Gloves from ${temp(R.burnHours.value)} on.`,
    from: `${R.burnHours.from}; ${R.burnMinute.from}; ${R.burnSeconds.from}`,
  },
};

/** What is typed about heat, by its name at the bench. */
export const WARMTH_INPUT_WORDS: Readonly<Record<keyof typeof WARMTH_BOUNDS, string>> = {
  biot: 'Biot number',
  rootCount: 'Number of terms',
  thicknessMm: 'Thickness of the body',
  depthMm: 'Depth',
  minutes: 'Time',
  seconds: 'Time on one spot',
  conductivityWMK: 'Heat conductivity',
  densityKgM3: 'Density of the material',
  heatCapacityJKgK: 'Heat capacity',
  hWM2K: 'Heat transfer from the air',
  diffusivityMm2S: 'Heat diffusivity',
  surroundTempC: 'Temperature around the body',
  bodyTempC: 'Temperature of the body',
  wallMm: 'Thickness of the wall',
  sides: 'Heated faces',
  jacketMm: 'Thickness of the jacket',
  airTempC: 'Temperature of the air',
  startTempC: 'Temperature at the start',
  targetTempC: 'Wanted temperature',
  moldTempC: 'Temperature of the mold',
  mixTempC: 'Temperature of the mix',
  massG: 'Mass to warm',
  powerW: 'Power of the heater',
  arrivingShare: 'Share of the heat that arrives',
  openMin: 'Time until it may be opened',
  warmerK: 'Ingredients warmer by',
};

const band = (v: Values): string => `${amount(v.low)} to ${temp(v.high)}`;

function temp(c: number | string | undefined): string {
  return `${amount(c, 3)} °C`;
}
