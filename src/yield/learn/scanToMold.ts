import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { RULES } from '../rules';
import { checkLearn } from './checkLearn';
import { learnRows, predictAt } from './normalInverseGamma';
import type { NormalInverseGamma } from './normalInverseGamma';
import { LEARN_RULES as R } from './rules';
import { studentRange } from './studentT';

/** One piece whose scan was measured and whose mold was filled with water. */
export interface ScannedAndFilled {
  scanCm3: number;
  /** Of the mold, by water. */
  cavityCm3: number;
}

export interface ScanFactor {
  /** Cavity for 1 of scan, with the range (9 times of 10) of the next piece. */
  factor: Estimate;
  uShare: number;
  pieces: number;
}

/**
 * How much larger than its scan a cavity comes out in this shop. Before any water fill it is 1, known to the 1.5 % that are assumed
 * between scan and mold; each piece pulls it towards what was measured (conjugate normal model, one unknown). The shop's factor is for
 * pieces without a water fill of their own.
 */
export function learnScanFactor(pieces: readonly ScannedAndFilled[]): Outcome<ScanFactor> {
  for (const { scanCm3, cavityCm3 } of pieces) {
    const sound = checkLearn({ scanCm3, cavityCm3 });
    if (!sound.ok) return sound;
  }
  const rows = pieces.map(({ scanCm3, cavityCm3 }) => ({ x: [1], y: cavityCm3 / scanCm3 }));
  const next = predictAt(learnRows(priorFactor(), rows)!, [1])!;
  const [low, high] = studentRange(R.rangeShare.value, next);
  const factor: Estimate = {
    value: next.location,
    low,
    high,
    from: pieces.length === 0 ? 'assumed' : 'learned',
  };
  const uShare = (next.scale * Math.sqrt(next.df / (next.df - 2))) / next.location;
  return good({ factor, uShare, pieces: pieces.length });
}

/** The next piece scatters by 1 % about the factor; the two doubts together are the 1.5 % of the rules. */
function priorFactor(): NormalInverseGamma {
  const scatter2 = R.scanFactorScatter.value ** 2;
  const shape = R.scanFactorWorth.value;
  const factor2 = RULES.uScanToMold.value ** 2 - scatter2;
  return { mean: [1], precision: [[scatter2 / factor2]], shape, rate: (shape - 1) * scatter2, rows: 0 };
}
