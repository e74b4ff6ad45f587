import type { Cure, Surface } from './facts';

/** `stops`: known to keep the silicone from curing. `may`: some do. `bonds`: cures, and holds on for good. */
export type Risk = 'none' | 'may' | 'stops' | 'bonds';

/** What in the surface does it. */
export type Poison =
  'sulfur' | 'tin' | 'amines' | 'rubber' | 'resin' | 'resins of wood' | 'paint' | 'platinum';

export interface Effect {
  risk: Risk;
  by?: Poison;
  from: string;
}

const COMMON = 'common practice, no source';
const BLANPAIN =
  'Blanpain, Driesmans, Benrubi, "Silicone as a moulding material for loss compensation" (sulfur)';

const none: Effect = { risk: 'none', from: COMMON };
const bonds: Effect = { risk: 'bonds', from: COMMON };

/** What a surface does to fresh silicone, by its cure. A patch test outranks every row. */
export const EFFECTS: Readonly<Record<Cure, Readonly<Record<Surface, Effect>>>> = {
  addition: {
    'sulfur clay': { risk: 'stops', by: 'sulfur', from: BLANPAIN },
    'sulfur-free clay': none,
    wax: none,
    'resin print': { risk: 'may', by: 'resin', from: COMMON },
    'printed filament': none,
    epoxy: { risk: 'may', by: 'amines', from: COMMON },
    plaster: { risk: 'may', by: 'sulfur', from: COMMON },
    wood: { risk: 'may', by: 'resins of wood', from: COMMON },
    'condensation silicone': { risk: 'stops', by: 'tin', from: COMMON },
    'addition silicone': bonds,
    'latex or rubber': { risk: 'stops', by: 'rubber', from: COMMON },
    'painted or sealed': { risk: 'may', by: 'paint', from: COMMON },
  },
  condensation: {
    'sulfur clay': none,
    'sulfur-free clay': none,
    wax: none,
    'resin print': none,
    'printed filament': none,
    epoxy: none,
    plaster: none,
    wood: none,
    'condensation silicone': bonds,
    'addition silicone': { risk: 'stops', by: 'platinum', from: COMMON },
    'latex or rubber': none,
    'painted or sealed': none,
  },
};
