import type { MoldTempCase } from '../checks/moldTemperature';
import type { WarmthCode } from '../problem';
import { WARMTH_RULES as R } from '../yield';
import type { WARMTH_BOUNDS, WarmthCaution } from '../yield';
import type { Caution } from './cautions';
import { MOLD_TEMP_WORDS, moldBand } from './moldCheckWords';
import { amount, celsius } from './sentence';
import type { Sentence, Values } from './sentence';

export const WARMTH_WORDS: Record<WarmthCode, (v: Values) => Sentence> = {
  WARM_UNREACHABLE: (v) => ({
    text: `From ${celsius(v.startTempC)} the rubber never gets to ${celsius(v.targetTempC)} in air of ${celsius(v.airTempC)}.`,
    hint:
      Number(v.targetTempC) > Number(v.startTempC)
        ? 'Set the air warmer than what you want, or ask for less.'
        : 'It stays warmer than that for as long as you like; ask for a temperature above that of the air.',
  }),
  WARM_ALREADY_THERE: (v) => ({
    text: `The rubber is at ${celsius(v.startTempC)} already; ${celsius(v.targetTempC)} is behind it.`,
    hint: 'Nothing to wait for. If that is not so, measure the mold on the inside and type its temperature again.',
  }),
  WARM_LUMPED_WRONG: (v) => ({
    text:
      `The shortcut of one temperature throughout does not hold here (Biot number ${amount(v.biot, 2)}, under ${amount(v.limit)} is wanted): ` +
      `it would say ${amount(v.lumpedMin, 3)} min, and the farthest point takes ${amount(v.exactMin, 3)} min.`,
    hint: 'Use the time of the farthest point.',
  }),
  WARM_SURFACE_HOT: (v) => ({
    text: `The surface gets to ${celsius(v.surfaceTempC)}; over ${celsius(v.lookC)} deserves a look, over ${celsius(v.stopC)} a stop.`,
    hint:
      'Use cooler air for longer, keep a heat gun moving, and let the warmth even out. Measure, then touch; gloves above ' +
      `${celsius(R.burnHours.value)}. Pour only once the inside is back in the band of the data sheet.`,
  }),
  WARM_JACKET_ON: (v) => ({
    text: `With the jacket on the rubber takes ${amount(v.withMin, 3)} min instead of ${amount(v.withoutMin, 3)} min: the jacket has to be warmed too.`,
    hint: 'Warm skin and jacket separately, or open the mold and warm it from the inside.',
  }),
  MOLD_TEMP_UNKNOWN: (v) => ({
    text: `Not checked whether the mold is warm enough: its temperature is not known. ${moldBand(v)} is common.`,
    hint: 'Measure it on the inside, at the thickest place, just before the pour.',
  }),
  MOLD_TEMP_COLD: (v) => moldTempWords('cold', v),
  MOLD_TEMP_COOL: (v) => moldTempWords('cool', v),
  MOLD_TEMP_WARM: (v) => moldTempWords('warm', v),
  MOLD_TEMP_HOT: (v) => moldTempWords(Number(v.tempC) > R.surfaceStop.value ? 'too hot' : 'hot', v),
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
      `Measure, then touch. Skin held on a surface can burn within hours at ${celsius(R.burnHours.value)}, in about a minute ` +
      `at ${celsius(R.burnMinute.value)}, in about five seconds at ${celsius(R.burnSeconds.value)}. Gloves from ${celsius(R.burnHours.value)} on.`,
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

/** As the check says it. */
const moldTempWords = (found: MoldTempCase, v: Values): Sentence =>
  MOLD_TEMP_WORDS[found]({ ...v, moldTempC: v.tempC!, stopC: R.surfaceStop.value });
