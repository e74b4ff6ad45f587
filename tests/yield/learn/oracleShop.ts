import { fillBatch } from '../../../src/yield/learn/fillBatch';
import type { FillBatch } from '../../../src/yield/learn/fillBatch';
import { learnFill } from '../../../src/yield/learn/fillModel';
import type { FillPour } from '../../../src/yield/learn/fillModel';
import type { FillPrior } from '../../../src/yield/learn/fillPrior';
import { learnResidue } from '../../../src/yield/learn/residue';
import type { WeighedResidue } from '../../../src/yield/learn/residue';
import { between, lcg } from '../../support/lcg';
import { valueOf } from '../../support/outcome';

/**
 * A shop whose truth we know. Stated truths: label 80 to 240 kg/m3, true free rise off it by 8 % (standard deviation); every
 * other shop made three cups, 3 % scatter each; skin 0 to 10 %; gas 1 %; vents 10 g +- 5 g; cavity 0.8 to 11 L, really 1.5 % off;
 * pours scatter by 2 to 4 %; residue 16 g +- 5 g and 1.4 % +- 0.4 %, +- 3 g a pour; half of the pours open (the surplus overflows
 * and is weighed to 2 g), half capped; the void of a short one estimated within a fifth of it; scale steps of 1 g.
 */
export interface Oracle {
  prior: FillPrior;
  cavityCm3: number;
  /** What the next pour needs: least mass poured in, then the residue of a mix. */
  nextLeastG: () => number;
  residueOfG: (mixedG: number) => number;
  random: () => number;
  normal: () => number;
}

export function oracleOf(seed: number): Oracle {
  const random = lcg(seed * 7919 + 17);
  for (let warm = 0; warm < 5; warm += 1) random();
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const labelKgM3 = between(random, 80, 240);
  const trueKgM3 = labelKgM3 * (1 + 0.08 * normal());
  const cavityCm3 = 800 * (11_000 / 800) ** random();
  const trueCm3 = cavityCm3 * (1 + 0.015 * normal());
  const skin = between(random, 0, 0.1);
  const vents = Math.max(0, 10 + 5 * normal());
  const scatter = between(random, 0.02, 0.04);
  const fixed = 16 + 5 * normal();
  const slope = 0.014 + 0.004 * normal();
  const densityKgM3 = (trueKgM3 * (1 + skin)) / 0.99;
  const cups = trueKgM3 * (1 + (0.03 / Math.sqrt(3)) * normal());
  const prior: FillPrior =
    seed % 2 === 0
      ? { freeRiseKgM3: cups, from: 'cup-test', uFreeRiseShare: 0.03 / Math.sqrt(3) }
      : { freeRiseKgM3: labelKgM3, from: 'data-sheet', uFreeRiseShare: 0.08 };
  return {
    prior,
    cavityCm3,
    nextLeastG: () => vents + (trueCm3 / 1000) * densityKgM3 * (1 + scatter * normal()),
    residueOfG: (mixedG) => Math.max(0, fixed + slope * mixedG + 3 * normal()),
    random,
    normal,
  };
}

export interface OraclePour {
  planned: FillBatch;
  neededG: number;
  filled: boolean;
}

const scale = (massG: number): number => Math.round(massG);

/** Ten pours, each planned on the book of those before it. */
export function pourOracle(seed: number, chance: number, pours = 10): OraclePour[] {
  const oracle = oracleOf(seed);
  const book: FillPour[] = [];
  const residues: WeighedResidue[] = [];
  return Array.from({ length: pours }, () => {
    const fill = valueOf(learnFill(oracle.prior, book));
    const residue = valueOf(learnResidue(residues));
    const planned = valueOf(fillBatch({ fill, residue, cavityCm3: oracle.cavityCm3, chance }));
    const mixedG = scale(planned.mixedG);
    const leastG = oracle.nextLeastG();
    const residueG = oracle.residueOfG(mixedG);
    const pouredG = mixedG - residueG;
    const filled = pouredG >= leastG;
    residues.push({ mixedG, residueG: scale(residueG) });
    book.push(writtenDown(oracle, { pouredG: mixedG - scale(residueG), leastG, filled }));
    return { planned, neededG: leastG + residueG, filled };
  });
}

function writtenDown(
  { cavityCm3, random, normal }: Oracle,
  { pouredG, leastG, filled }: { pouredG: number; leastG: number; filled: boolean },
): FillPour {
  if (!filled) {
    const shortShare = (1 - pouredG / leastG) * between(random, 0.8, 1.2);
    return { outcome: 'short', cavityCm3, pouredG, shortShare: Math.max(0, shortShare) };
  }
  if (random() < 0.5) return { outcome: 'full', cavityCm3, pouredG };
  const trimG = Math.max(0, scale(pouredG - leastG + 2 * normal()));
  return { outcome: 'overflowed', cavityCm3, pouredG, trimG };
}
