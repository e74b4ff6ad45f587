import { attitudeScore, type LevelFill, type OpeningPlan } from '../plan';

/** One way up beside the others. */
export interface AttitudeRow {
  fill: LevelFill;
  isToday: boolean;
  isBest: boolean;
}

/**
 * Today's way up and the best others that were found; nothing where no others were looked for. The best: it holds the liquid, then as the search
 * ranks them, by `attitudeScore`; today's where no other is better.
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

/**
 * Today's way up is the best although its level ceiling is larger than that of every other, and each of those shuts in more air: a tilt would trade
 * one for the other. The least air among the others, cm3; undefined where it is not so.
 */
export function airOfTiltCm3(rows: readonly AttitudeRow[]): number | undefined {
  const today = rows.find(({ isToday, isBest }) => isToday && isBest)?.fill;
  const others = rows.filter(({ isToday }) => !isToday).map(({ fill }) => fill);
  if (today === undefined || others.length === 0) return undefined;
  const trades = others.every(
    ({ trappedCm3, flat }) => trappedCm3.value > today.trappedCm3.value && flat.areaCm2 < today.flat.areaCm2,
  );
  return trades ? Math.min(...others.map(({ trappedCm3 }) => trappedCm3.value)) : undefined;
}

/** Cosine of a degree: nobody sets a mold closer. Chosen here. */
const SAME_COSINE = 0.99985;

const isSame = (one: LevelFill['up'], other: LevelFill['up']): boolean =>
  one[0] * other[0] + one[1] * other[1] + one[2] * other[2] > SAME_COSINE;

function isBetter(one: LevelFill, than: LevelFill, liquidCm3: number | undefined): boolean {
  const [holds, didHold] = [one, than].map(({ holdCm3 }) => liquidCm3 === undefined || holdCm3 >= liquidCm3);
  if (holds !== didHold) return holds === true;
  return attitudeScore(one) < attitudeScore(than);
}
