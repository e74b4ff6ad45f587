import type { BestMeasurement, PRESSURE_CAVEATS } from '../yield';

/** The term that the table counts with, and the other one that is easily taken for it. */
const PACK_DEFINITION =
  'Pack factor is molded over free-rise density: 1.30 is foam 1.3 times as dense as it rises in the open. Overpack in percent is another term, ' +
  'mixed mass over the least that just fills the mold: the two are never the same figure.';

/** What the ratio of stiffness holds for. */
const STIFFNESS_LIMIT =
  'Stiffness is against the pack named, and only within one formulation: another foam of the same density can be harder or softer ' +
  '(goes with density squared, 1.5 to 2.5: Gibson and Ashby, Cellular Solids).';

type Caveat = (typeof PRESSURE_CAVEATS)[number];

/** What the ideal-gas figure leaves out. */
export const CAVEAT_WORDS: Readonly<Record<Caveat, string>> = {
  'gas-kept-in': 'closed cells that keep their gas push harder',
  'unvented-air': 'air that cannot leave adds its own pressure, several times as much: never seal a mold',
  'hot-core': 'a hot core pushes harder',
  'open-mouth': 'an open mouth lets pressure out',
  'gas-dissolved': 'gas that stays dissolved pushes less',
};

/** A measurement, as something to do. */
export const MEASUREMENT_WORDS: Readonly<Record<BestMeasurement['gains'][number]['measurement'], string>> = {
  'cup-test': 'a cup test today',
  'water-fill': 'filling the mold with water and weighing it (dry it well)',
  barometer: 'reading a barometer at the bench',
  'measure-riser': 'filling the riser with water',
  'weigh-cup': 'weighing the empty cup after a pour',
  'weigh-lost-gas': 'weighing what leaves as gas',
  'weigh-vent-trim': 'weighing what comes out of the vents',
  'finer-scale': 'a finer scale',
};

/** How packs were compared, one line each: terms, stiffness, pressure. */
export const packsBecause = (
  reference: { packFactor: number; from: 'given' | 'assumed' },
  caveats: readonly Caveat[],
): string[] => [
  PACK_DEFINITION,
  `${STIFFNESS_LIMIT} Here it is against pack ${reference.packFactor}${reference.from === 'assumed' ? ', assumed' : ''}.`,
  `The pressure is an estimate within a factor of two either way, until a peak was measured. Not in it: ${caveats.map((key) => CAVEAT_WORDS[key]).join('; ')}.`,
];
