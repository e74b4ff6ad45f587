import type { Source } from '../estimate';
import { bad, finding, good } from '../problem';
import type { Outcome, Problem } from '../problem';
import { batchBudget, mixedSigmaShare } from './batchBudget';
import type { BatchTerm } from './batchBudget';
import type { BatchInputs } from './batchInputs';
import { choosePack, sigmasAt } from './choosePack';
import type { ChosenPack, Sigmas } from './choosePack';
import type { MassRatio, MixRatio } from './foam';
import { minFillFindings } from './minFill';
import { mixedMassG, pouredMassG } from './mixedMass';
import type { MixedMassInputs } from './mixedMass';
import { normalQuantile } from './normal';
import { packFindings } from './packFactor';
import { roundingFindings, roundParts } from './rounding';
import type { RoundedParts } from './rounding';
import { RULES } from './rules';
import { overloadFindings, ratioUncertaintyShare, scaleFindings } from './scaleCheck';
import { noteIn, settleBatch } from './settleBatch';
import type { BatchAssumption, SettledBatch } from './settleBatch';
import { shortFillChance, shortFillFindings } from './shortFill';
import type { BudgetRow } from './uncertainty';

/** What to weigh, how sure it is, and all that was taken for granted. Masses in g, shares 0..1. */
export interface Batch extends RoundedParts, Sigmas {
  /** Unrounded; `totalG` is what the scale shows, up to two steps more where that keeps the ratio. */
  mixedG: number;
  /** Holds the truth 90 times of 100. */
  mixedRangeG: [low: number, high: number];
  /** What leaves the cup for the mold: mixed less residue. */
  inMoldG: number;
  packFactor: number;
  packFrom: Source;
  leastPack: number;
  moldedDensityKgM3: number;
  shortFillChance: number;
  uncertainty: BudgetRow<BatchTerm>[];
  /** As given, and by mass. */
  ratio: MixRatio;
  massRatio: MassRatio;
  ratioUncertaintyShare: number;
  stepG: number;
  liquidKgM3: number;
  inputs: MixedMassInputs;
  assumptions: BatchAssumption[];
  findings: Problem[];
}

/**
 * The batch for a cavity: grams of A and B, the pack, the chance of a short fill and the budget of doubts. Every
 * number that leaves is finite; a bad input comes back as a problem that names it.
 */
export function planBatch(inputs: BatchInputs): Outcome<Batch> {
  const settled = settleBatch(inputs);
  if (!settled.ok) return settled;
  const pack = choosePack(inputs, settled.value);
  if (!pack.ok) return pack;
  const { packFactor, packFrom } = pack.value;
  const mass: MixedMassInputs = { ...settled.value.mass, packFactor };
  const foam = checkExpansion(mass, settled.value.liquidKgM3);
  if (!foam.ok) return foam;
  const { ratio, stepG } = settled.value;
  const mixedG = mixedMassG(mass);
  const parts = roundParts({ mixedG, ratio, stepG });
  if (!parts.ok) return parts;
  const doubts = doubtsOf(mass, settled.value);
  const batch: Batch = {
    ...parts.value,
    ...doubts,
    mixedG,
    mixedRangeG: rangeOf90(mixedG, doubts.sigmaShare),
    inMoldG: pouredMassG(mass),
    packFactor,
    packFrom,
    leastPack: settled.value.leastPack,
    moldedDensityKgM3: mass.freeRiseKgM3 * packFactor,
    ratio: inputs.ratio,
    massRatio: ratio,
    ratioUncertaintyShare: ratioUncertaintyShare({ ...parts.value, stepG }),
    stepG,
    liquidKgM3: settled.value.liquidKgM3,
    inputs: mass,
    assumptions: settled.value.assumptions,
    findings: [],
  };
  return good({ ...batch, findings: findingsOf(batch, inputs, settled.value.cupTested, pack.value) });
}

function doubtsOf(
  mass: MixedMassInputs,
  settled: SettledBatch,
): Sigmas & Pick<Batch, 'shortFillChance' | 'uncertainty'> {
  const sigmas = sigmasAt(mass, settled);
  if (sigmas.sigmaShare > mixedSigmaShare(mass, settled.u))
    noteIn(settled.assumptions)('sigma_floor', RULES.minSigmaNoCup);
  const { packFactor } = mass;
  const chance = shortFillChance({
    packFactor,
    leastPack: settled.leastPack,
    sigmaShare: sigmas.packSigmaShare,
  });
  return { ...sigmas, shortFillChance: chance, uncertainty: batchBudget(mass, settled.u).rows };
}

function rangeOf90(mixedG: number, sigmaShare: number): [number, number] {
  const halfG = normalQuantile(0.95) * sigmaShare * mixedG;
  return [Math.max(0, mixedG - halfG), mixedG + halfG];
}

/** A molded density at or above that of the liquid leaves no room for gas: one of the two figures is wrong. */
function checkExpansion({ freeRiseKgM3, packFactor }: MixedMassInputs, liquidKgM3: number): Outcome<true> {
  const moldedKgM3 = freeRiseKgM3 * packFactor;
  return moldedKgM3 < liquidKgM3
    ? good(true)
    : bad('NOT_A_FOAM', { freeRiseKgM3, packFactor, moldedKgM3, liquidKgM3 });
}

function findingsOf(batch: Batch, inputs: BatchInputs, cupTested: boolean, pack: ChosenPack): Problem[] {
  const chance = batch.shortFillChance;
  return [
    ...packFindings(batch.packFactor),
    ...shortFillFindings({ chance, sigmaShare: batch.packSigmaShare, packFactor: batch.packFactor }),
    ...minFillFindings(inputs, pack),
    ...(cupTested ? [] : [noCupTest(inputs)]),
    ...scaleFindings({ ...batch, ratio: batch.massRatio }),
    ...overloadFindings(batch.totalG, inputs.scaleMaxG?.value),
    ...roundingFindings(batch, batch.stepG),
    ...residueFindings(batch),
  ];
}

function noCupTest({ freeRiseKgM3: { value, from, isOld } }: BatchInputs): Problem {
  return finding('NO_CUP_TEST', 'unknown', {
    freeRiseKgM3: value,
    from: isOld === true && from === 'cup-test' ? 'old-cup-test' : from,
  });
}

function residueFindings({ inputs, mixedG }: Batch): Problem[] {
  const residueShare = inputs.residueG / mixedG;
  const lookShare = RULES.residueLook.value;
  if (residueShare <= lookShare) return [];
  return [finding('RESIDUE_LARGE', 'look', { residueG: inputs.residueG, mixedG, residueShare, lookShare })];
}
