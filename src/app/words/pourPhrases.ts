import type { PourOnPage } from '../../worker/pour';
import type { AirAround } from '../../yield';

type Caveat = PourOnPage['forces']['pressureKPa']['caveats'][number];

/** What the ideal-gas pressure leaves out, in words. */
export const CAVEAT_WORDS: Readonly<Record<Caveat, string>> = {
  'gas-kept-in': 'Higher: gas that would leave a free-rising foam stays in a closed mold.',
  'unvented-air': 'Higher: air that cannot leave is warmed and pressed together too. Never seal a mold.',
  'hot-core': 'Higher: the core gets hotter than the gas was reckoned with.',
  'open-mouth': 'Lower: foam and gas leave through an open mouth.',
  'gas-dissolved': 'Lower: some of the gas stays dissolved in the foam.',
};

/** Where a mold stands while it warms. */
export const AROUND_WORDS: Readonly<Record<AirAround, string>> = {
  'still room': 'in the still room',
  'still box': 'in a still box',
  'fan box': 'in a box with a fan',
  'heat gun': 'before a moving heat gun',
};

/** What a measurement would be, as someone at the bench says it. */
export const MEASUREMENT_WORDS: Readonly<
  Record<PourOnPage['bestMeasurement']['gains'][number]['measurement'], string>
> = {
  'cup-test': 'A cup test today',
  'water-fill': 'A water fill of the mold, weighed',
  barometer: 'A barometer on the bench',
  'measure-riser': 'Measuring the riser',
  'weigh-cup': 'Weighing the emptied cup',
  'weigh-lost-gas': 'Weighing what a cup loses while it rises',
  'weigh-vent-trim': 'Weighing what is trimmed from the vents',
  'finer-scale': 'A finer scale',
};
