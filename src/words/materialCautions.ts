import { CHECK_FIGURES as F } from '../checks';
import type { Caution } from './cautions';
import { amount } from './sentence';

/** A caution that stands beside the material it belongs to. `from`: where it is known from. */
export interface MaterialCaution extends Caution {
  key: CautionKey;
  from: string;
}

const COMMON = 'common practice, no source';

/** Said before any other, whatever was asked for. */
const FIRST = {
  when: 'First',
  what: 'The data sheets, local codes and licensed practice come before anything here.',
  from: COMMON,
};

const BY_KEY = {
  first: FIRST,
  clay: {
    when: 'Clay',
    what: 'Warm oil clay gently and never over a flame: melted clay burns skin and can catch fire. Water clay holds silica: wipe its dust up wet. Sulfur clay stays away from addition-cure silicone.',
    from: COMMON,
  },
  'condensation-silicone': {
    when: 'Condensation silicone',
    what: 'Its catalyst is an organotin compound: toxic, and it harms skin and eyes. Gloves and goggles. It gives off alcohol vapor while it cures, which can burn: exhaust air, no flames.',
    from: `${COMMON}; the data sheet of the catalyst rules`,
  },
  'addition-silicone': {
    when: 'Addition silicone',
    what: 'Sulfur, amines, tin and many rubbers stop its cure. Nitrile gloves, never latex; tools and cups of its own; a patch test before each new surface.',
    from: COMMON,
  },
  'plaster-heat': {
    when: 'Plaster setting',
    what: 'Setting plaster gets hot enough to burn deep, and cannot be pulled off in time. Never cast it round a hand, a foot or any part of a body, nor put a hand into the bucket to feel it set.',
    from: COMMON,
  },
  'plaster-dust': {
    when: 'Plaster powder',
    what: 'Pour the powder low and slowly, exhaust air on, a dust mask that fits. Goggles: it burns wet eyes.',
    from: COMMON,
  },
  'polyester-styrene': {
    when: 'Polyester resin',
    what: 'Styrene vapor harms the nerves and lungs and catches fire. Exhaust air or outdoors, the breathing protection the data sheet names, no flame or spark; a large leftover in the cup can smoke and burn.',
    from: COMMON,
  },
  'polyester-catalyst': {
    when: 'Polyester catalyst',
    what: 'The catalyst is an organic peroxide: one splash can blind. Goggles, not glasses, and water to rinse within reach. Never mix it directly with cobalt accelerator: together they burn or explode. Keep it cool and away from rags and metal.',
    from: COMMON,
  },
  'glass-dust': {
    when: 'Glass mat',
    what: 'Fibers and grinding dust itch, and harm eyes and lungs. Long sleeves, gloves, goggles, a dust mask; cut and grind with a vacuum at the tool, or wet.',
    from: COMMON,
  },
  'silica-dust': {
    when: 'Fillers and thickeners',
    what: `Quartz fillers hold crystalline silica, which scars the lungs for good; a limit in air is ${amount(F.respirableSilica.value)} mg/m³ of the dust that is breathed in deep (${F.respirableSilica.from}). Thickeners of fumed silica float for hours. Breathing protection the data sheet names, no dry sweeping.`,
    from: `the limit: ${F.respirableSilica.from}; the rest: ${COMMON}`,
  },
  'putty-skin': {
    when: 'Epoxy putty and paste',
    what: 'Epoxy and its amine hardeners can make skin allergic for good. Gloves, changed when smeared; never smooth it with a bare wet finger; wash with soap, not solvent; no dry sanding until it is cured, and then with a dust mask.',
    from: COMMON,
  },
  'vacuum-pot': {
    when: 'Vacuum pot',
    what: 'A lid of acrylic can implode. Before each use look for cracks, crazing and chips, and replace it if there are any; keep solvents off it; goggles, and no face over it while it is under vacuum.',
    from: COMMON,
  },
  'heavy-lift': {
    when: 'Lifting',
    what: `Mold and jacket over ${amount(F.heavyLift.value)} kg: two people, or a cart. Less if you have to reach, twist or step over things.`,
    from: F.heavyLift.from,
  },
  'hot-mold': {
    when: 'Warm mold',
    what: `A mold that feels hot burns if it is held: gloves above about ${amount(F.hotSurface.value)} °C at the surface (${F.hotSurface.from}). No heat gun near solvent or release, nor on wax, clay or prints that soften.`,
    from: `how long a touch is reckoned with: ASTM C1055, ISO 13732-1; the temperature: ${F.hotSurface.from}`,
  },
  straps: {
    when: 'Straps',
    what: 'A tight strap is a loaded spring. Gloves, stay out of its line, no levers on the buckle, and let go only when the foam is cold.',
    from: COMMON,
  },
  solvents: {
    when: 'Release, paint and solvents',
    what: 'Spray mist and solvent vapor harm the lungs and catch fire. Exhaust air, no flame or heat gun, the breathing protection the data sheet names; spread used rags out to dry outdoors.',
    from: COMMON,
  },
} as const satisfies Readonly<Record<string, Omit<MaterialCaution, 'key'>>>;

export type CautionKey = keyof typeof BY_KEY;

export const CAUTION_KEYS = Object.keys(BY_KEY) as readonly CautionKey[];

/** The cautions of these materials, each once, in the order of the list, after the one that always stands first. */
export function cautionsFor(keys: readonly string[]): MaterialCaution[] {
  const unknown = keys.find((key) => !Object.hasOwn(BY_KEY, key));
  if (unknown !== undefined)
    throw new Error(`cautionsFor: expected one of ${CAUTION_KEYS.join(', ')}, got ${unknown}`);
  return CAUTION_KEYS.filter((key) => key === 'first' || keys.includes(key)).map((key) => ({
    key,
    ...BY_KEY[key],
  }));
}
