import {
  facingAt,
  shadowOutlines,
  VIEW_AXES,
  VIEW_NAMES,
  type TriangleMesh,
  type Vector,
} from '../../geometry';
import type { PlaceCard } from '../placeCard';
import type { LevelFill, Trap } from './filling';
import type { OpeningSize } from './openingSize';
import type { ThinSpot } from './thin';

/** A spot that is drawn, listed and marked on the clay: the same number in picture, table and card. Places in mm on the placed piece. */
export type MarkedPlace = { n: number; atMm: Vector; normal: Vector } & MarkedFacts;

export type MarkedFacts =
  | { kind: 'opening'; diameterMm: number }
  | { kind: 'vent planned'; ventMm: number }
  | { kind: 'vent advised'; ventMm: number; curesCm3: number }
  | { kind: 'thin foam'; thicknessMm: number; slenderness: number }
  | { kind: 'thin rubber'; thicknessMm: number }
  | { kind: 'air under silicone'; volumeCm3: number; riseMm: number };

/** More than this on a card is no card. Chosen here. */
const MOST_SILICONE_TRAPS = 6;

export interface Placed {
  opening: { atMm: Vector; normal: Vector; size: OpeningSize };
  planned: readonly Vector[];
  ventMm: number;
  filling: LevelFill;
  thin: readonly ThinSpot[];
  webs: readonly ThinSpot[];
  silicone: readonly Trap[];
}

/** In the order of the work: opening, vents, air under the silicone, thin foam, thin rubber. */
export function placesOf(chain: TriangleMesh, found: Placed): MarkedPlace[] {
  const { opening, planned, ventMm, filling, thin, webs, silicone } = found;
  const facts: ({ atMm: Vector; normal?: Vector } & MarkedFacts)[] = [
    { kind: 'opening', atMm: opening.atMm, normal: opening.normal, diameterMm: opening.size.diameterMm },
    ...planned.map((atMm) => ({ kind: 'vent planned' as const, atMm, ventMm })),
    ...filling.vents.map(({ atMm, curesCm3 }) => ({ kind: 'vent advised' as const, atMm, ventMm, curesCm3 })),
    ...silicone.slice(0, MOST_SILICONE_TRAPS).map(({ topMm, volumeCm3, riseMm }) => ({
      kind: 'air under silicone' as const,
      atMm: topMm,
      volumeCm3,
      riseMm,
    })),
    ...thin.map(({ atMm, thicknessMm, slenderness }) => ({
      kind: 'thin foam' as const,
      atMm,
      thicknessMm,
      slenderness,
    })),
    ...webs.map(({ atMm, thicknessMm }) => ({ kind: 'thin rubber' as const, atMm, thicknessMm })),
  ];
  const facing = facingAt(
    chain,
    facts.map(({ atMm }) => atMm),
  );
  return facts.map((one, i) => ({ ...one, n: i + 1, normal: one.normal ?? facing[i]! }));
}

/** The outlines of the sculpt for its place card. */
export const cardViews = (chain: TriangleMesh): PlaceCard['views'] =>
  VIEW_NAMES.map((name) => ({ name, outlines: shadowOutlines(chain, VIEW_AXES[name]) }));
