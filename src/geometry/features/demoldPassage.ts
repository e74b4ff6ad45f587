import type { Vector } from '../measure/planeFrame';
import type { SectionsOut } from './demoldSection';

/** A ring of rubber and the widest of what has to pass it. Lengths mm. */
export interface Passage {
  neckAlongMm: number;
  neckAtMm: Vector;
  /** Girth of the casting in the ring: the rubber's own when nothing stretches it. */
  neckMm: number;
  bulbAlongMm: number;
  bulbAtMm: Vector;
  /** Widest girth deeper in. */
  bulbMm: number;
  /** Bulb over neck: 1 or less passes without a stretch. */
  ratio: number;
}

export interface Passages {
  worst: Passage;
  mouth: Passage;
  /** Only where an opening counts. */
  opening?: Passage;
  /** From the mouth inward. */
  list: Passage[];
}

/** One place of a run of rings along the way. */
export interface Ring {
  alongMm: number;
  girthMm: number;
  middleMm: Vector;
}

/**
 * For every section the widest girth deeper in over its own. A casting is drawn out whole: through an opening that counts passes
 * all of it, whatever its depth. Before an opening in a body without a flat end there is no rubber, up to where the body is as wide.
 */
export function worstPassage({ sections, opening, hasFlat }: SectionsOut): Passages {
  const all = passagesOf(sections);
  const isInRubber = ({ neckMm }: Passage): boolean => neckMm >= opening!.girthMm;
  const first = opening === undefined || hasFlat ? 0 : Math.max(0, all.findIndex(isInRubber));
  const list = all.slice(first);
  if (opening === undefined) return { worst: tightestOf(list), mouth: list[0]!, list };
  const through = passageOf({ ...opening, middleMm: opening.atMm }, widestOf(sections));
  return { worst: tightestOf([through, ...list]), mouth: list[0]!, opening: through, list };
}

/** Of each ring but the last, those of no girth left out. Throws on fewer than two rings. */
export function passagesOf(rings: readonly Ring[]): Passage[] {
  const solid = rings.filter(({ girthMm }) => girthMm > 0);
  if (solid.length < 2) throw new Error(`passagesOf: expected two rings, got ${solid.length}`);
  const passages: Passage[] = [];
  let widest = solid[solid.length - 1]!;
  for (let i = solid.length - 2; i >= 0; i--) {
    passages.push(passageOf(solid[i]!, widest));
    if (solid[i]!.girthMm > widest.girthMm) widest = solid[i]!;
  }
  return passages.reverse();
}

export const tightestOf = (passages: readonly Passage[]): Passage =>
  passages.reduce((worst, one) => (one.ratio > worst.ratio ? one : worst));

const widestOf = (rings: readonly Ring[]): Ring =>
  rings.reduce((widest, one) => (one.girthMm > widest.girthMm ? one : widest));

const passageOf = (neck: Ring, bulb: Ring): Passage => ({
  neckAlongMm: neck.alongMm,
  neckAtMm: neck.middleMm,
  neckMm: neck.girthMm,
  bulbAlongMm: bulb.alongMm,
  bulbAtMm: bulb.middleMm,
  bulbMm: bulb.girthMm,
  ratio: bulb.girthMm / neck.girthMm,
});
