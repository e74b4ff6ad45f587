import type { Source } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { gasLossFromDensity } from '../gas';
import { RULES } from '../rules';
import { checkLearn } from './checkLearn';
import type { NormalInverseGamma } from './normalInverseGamma';
import { LEARN_RULES as R } from './rules';

/** What is known before the first pour. */
export interface FillPrior {
  freeRiseKgM3: number;
  from: Source;
  /** Of the free rise: 8 % from a data sheet; s / sqrt(n), at least 1.5 %, from cups. */
  uFreeRiseShare?: number;
  /** Of the cavity; 1.5 % between scan and mold when left out. */
  uCavityShare?: number;
  gasLossShare?: number;
}

/**
 * The belief about the least mass that fills, before any pour: mass poured in / cavity = density + fixed loss / cavity, in g/L, so
 * the scatter is a share and counts the same in a small mold and in a large one. The density is the free rise with a skin of 0
 * to 10 %, before its gas is lost; the fixed loss is what the vents take (10 g +- 5 g). Its doubts add in quadrature (JCGM 100, 5.1.2).
 */
export function fillBelief(prior: FillPrior): Outcome<NormalInverseGamma> {
  const { freeRiseKgM3, uFreeRiseShare, uCavityShare, gasLossShare } = prior;
  const sound = checkLearn({ freeRiseKgM3 }, { uFreeRiseShare, uCavityShare, gasLossShare });
  if (!sound.ok) return sound;
  const gas = gasLossShare ?? gasLossFromDensity({ freeRiseKgM3, liquidKgM3: RULES.liquidDensity.value });
  const density = (freeRiseKgM3 * (1 + R.skinInLeast.value)) / (1 - gas);
  const skinU = (R.skinInLeast.high - R.skinInLeast.low) / Math.sqrt(12) / (1 + R.skinInLeast.value);
  const uShare = Math.hypot(
    uFreeRiseShare ?? defaultU(prior.from),
    skinU,
    uCavityShare ?? RULES.uScanToMold.value,
  );
  const scatter = R.pourScatter.value * density;
  const shape = R.pourScatterShape.value;
  return good({
    mean: [RULES.vents.value, density],
    // The covariance is s2 / precision, and s2 is expected to be the scatter squared.
    precision: [
      [(scatter / RULES.uVents.value) ** 2, 0],
      [0, (R.pourScatter.value / uShare) ** 2],
    ],
    shape,
    rate: (shape - 1) * scatter ** 2,
    rows: 0,
  });
}

const defaultU = (from: Source): number =>
  (from === 'cup-test' ? RULES.cupToCup : RULES.uFreeRiseLabel).value;

/** The unknowns of a cavity: its fixed loss a liter, and its density. */
export const fillRow = (cavityCm3: number): number[] => [1000 / cavityCm3, 1];
