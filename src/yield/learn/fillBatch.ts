import type { Estimate } from '../../estimate';
import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkLearn } from './checkLearn';
import { fillAt } from './fillModel';
import type { FillModel } from './fillModel';
import { fillRow } from './fillPrior';
import { dot } from './normalInverseGamma';
import { residueAt, residueUG } from './residue';
import type { ResidueLine } from './residue';

export interface FillBatch {
  /** To mix, residue included, so that it fills with the wanted chance. */
  mixedG: number;
  pouredG: number;
  residueG: Estimate;
  /** The least to mix that fills: middle and range of a single pour. */
  leastMixedG: Estimate;
  /** Beyond that middle: what the doubt costs. */
  spareG: number;
  chance: number;
}

/**
 * The batch that fills a cavity with the wanted chance, from what was learned of the fill and of the residue; their doubts add in
 * quadrature. The residue depends on the mix and the mix on the residue: three rounds settle it below a milligram. Errors: bounds.
 */
export function fillBatch({
  fill,
  residue,
  cavityCm3,
  chance,
}: {
  fill: FillModel;
  residue: ResidueLine;
  cavityCm3: number;
  chance: number;
}): Outcome<FillBatch> {
  const sound = checkLearn({ cavityCm3, fillChance: chance });
  if (!sound.ok) return sound;
  const roughG = (dot(fill.belief.mean, fillRow(cavityCm3)) * cavityCm3) / 1000;
  const extraUG = residueUG(residue, roughG);
  const at = fillAt(fill, { cavityCm3, chance, extraUG });
  if (!at.ok) return at;
  const { leastG, pouredG } = at.value;
  const least = mixedFor(residue, leastG.value);
  const mixed = mixedFor(residue, pouredG);
  const movedG = least.mixedG - leastG.value;
  return good({
    mixedG: mixed.mixedG,
    pouredG,
    residueG: mixed.residueG,
    leastMixedG: {
      value: least.mixedG,
      low: leastG.low + movedG,
      high: leastG.high + movedG,
      from: fill.from,
    },
    spareG: mixed.mixedG - least.mixedG,
    chance,
  });
}

function mixedFor(residue: ResidueLine, pouredG: number): { mixedG: number; residueG: Estimate } {
  let residueG = residueAt(residue, pouredG);
  for (let round = 0; round < 3; round += 1) residueG = residueAt(residue, pouredG + residueG.value);
  return { mixedG: pouredG + residueG.value, residueG };
}
