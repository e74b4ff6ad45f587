import type { LevelFill, OpeningPlan } from '../plan';

/** One way up beside the others. */
export interface AttitudeRow {
  fill: LevelFill;
  isToday: boolean;
  isBest: boolean;
}

/**
 * Today's way up and the best others that were found; nothing where no others were looked for. The best: it holds the liquid, then the least air, a
 * vent counted as a cubic centimeter, as the search ranks them; today's where no other is better.
 */
export function attitudeRows(plan: OpeningPlan): AttitudeRow[] | undefined {
  const { filling, best } = plan;
  if (best === undefined) return undefined;
  const fills = [filling, ...best.filter(({ up }) => !isSame(up, filling.up))];
  const first = fills.reduce((one, other) => (isBetter(other, one, plan.opening.liquidCm3) ? other : one));
  return fills.map((fill) => ({ fill, isToday: fill === filling, isBest: fill === first }));
}

/** Unit vector: up when poured in the best way found. */
export const bestUpOf = (plan: OpeningPlan): LevelFill['up'] | undefined =>
  attitudeRows(plan)?.find(({ isBest }) => isBest)?.fill.up;

/** Cosine of a degree: nobody sets a mold closer. Chosen here. */
const SAME_COSINE = 0.99985;

const isSame = (one: LevelFill['up'], other: LevelFill['up']): boolean =>
  one[0] * other[0] + one[1] * other[1] + one[2] * other[2] > SAME_COSINE;

function isBetter(one: LevelFill, than: LevelFill, liquidCm3: number | undefined): boolean {
  const [holds, didHold] = [one, than].map(({ holdCm3 }) => liquidCm3 === undefined || holdCm3 >= liquidCm3);
  if (holds !== didHold) return holds === true;
  return scoreOf(one) < scoreOf(than);
}

const scoreOf = ({ trappedCm3, traps }: LevelFill): number => trappedCm3.value + traps.length;
