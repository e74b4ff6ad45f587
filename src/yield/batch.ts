import type { Source } from '../estimate';
import { bad, finding, good } from '../problem';
import type { Outcome, Problem } from '../problem';
import { batchBudget, mixedSigmaShare, packSigmaShare } from './batchBudget';
import type { BatchTerm } from './batchBudget';
import type { BatchInputs } from './batchInputs';
import type { MassRatio, MixRatio } from './foam';
import { mixedMassG, pouredMassG } from './mixedMass';
import type { MixedMassInputs } from './mixedMass';
import { normalQuantile } from './normal';
import { checkPack, packFindings, packFromOverpack } from './packFactor';
import { roundingFindings, roundParts } from './rounding';
import type { RoundedParts } from './rounding';
import { RULES } from './rules';
import { ratioUncertaintyShare, scaleFindings } from './scaleCheck';
import { noteIn, settleBatch } from './settleBatch';
import type { BatchAssumption, SettledBatch } from './settleBatch';
import { packForChance, shortFillChance, shortFillFindings } from './shortFill';
import type { BudgetRow } from './uncertainty';

/** What to weigh, how sure it is, and all that was taken for granted. Masses in g, shares 0..1. */
export interface Batch extends RoundedParts {
  /** Unrounded; `totalG` is what the scale shows. */
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
  /** Relative standard uncertainty of the mixed mass, and of the pack it reaches in the mold. */
  sigmaShare: number;
  packSigmaShare: number;
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
  const pack = settlePack(inputs, settled.value);
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
  return good({ ...batch, findings: findingsOf(batch, inputs, settled.value.cupTested) });
}

function settlePack(
  inputs: BatchInputs,
  settled: SettledBatch,
): Outcome<{ packFactor: number; packFrom: Source }> {
  const chosen = choosePack(inputs, settled);
  if (!chosen.ok) return chosen;
  const checked = checkPack(chosen.value.packFactor);
  return checked.ok ? chosen : checked;
}

function choosePack(
  inputs: BatchInputs,
  settled: SettledBatch,
): Outcome<{ packFactor: number; packFrom: Source }> {
  const { packFactor, overpackShare, minFillKgM3, shortFillChance: wanted } = inputs;
  if (packFactor !== undefined) return good({ packFactor: packFactor.value, packFrom: packFactor.from });
  if (overpackShare !== undefined && minFillKgM3 !== undefined) {
    const fill = { minFillKgM3: minFillKgM3.value, freeRiseKgM3: inputs.freeRiseKgM3.value };
    const fromOverpack = packFromOverpack({ overpackShare: overpackShare.value, ...fill });
    return good({ packFactor: fromOverpack, packFrom: overpackShare.from });
  }
  if (wanted === undefined) {
    return good({
      packFactor: noteIn(settled.assumptions)('pack_factor', RULES.packFactor),
      packFrom: 'assumed',
    });
  }
  const sigmaShareAt = (pack: number): number =>
    sigmasAt({ ...settled.mass, packFactor: pack }, settled).packSigmaShare;
  const found = packForChance({ chance: wanted.value, leastPack: settled.leastPack, sigmaShareAt });
  return found.ok ? good({ packFactor: found.value, packFrom: wanted.from }) : found;
}

type Sigmas = Pick<Batch, 'sigmaShare' | 'packSigmaShare'>;

/** Without a cup test the sum of the named doubts flatters us: neither is then taken below the floor of the rules. */
function sigmasAt(mass: MixedMassInputs, { u, cupTested }: SettledBatch): Sigmas {
  const floor = cupTested ? 0 : RULES.minSigmaNoCup.value;
  return {
    sigmaShare: Math.max(floor, mixedSigmaShare(mass, u)),
    packSigmaShare: Math.max(floor, packSigmaShare(mass, u)),
  };
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

function findingsOf(batch: Batch, inputs: BatchInputs, cupTested: boolean): Problem[] {
  const chance = batch.shortFillChance;
  return [
    ...packFindings(batch.packFactor),
    ...shortFillFindings({ chance, sigmaShare: batch.packSigmaShare, packFactor: batch.packFactor }),
    ...minFillFindings(inputs),
    ...(cupTested
      ? []
      : [
          finding('NO_CUP_TEST', 'unknown', {
            freeRiseKgM3: inputs.freeRiseKgM3.value,
            from: inputs.freeRiseKgM3.from,
          }),
        ]),
    ...scaleFindings({ ...batch, ratio: batch.massRatio }),
    ...roundingFindings(batch, batch.stepG),
    ...residueFindings(batch),
  ];
}

function minFillFindings({ minFillKgM3, freeRiseKgM3 }: BatchInputs): Problem[] {
  if (minFillKgM3 === undefined || minFillKgM3.value >= freeRiseKgM3.value) return [];
  return [
    finding('MIN_FILL_BELOW_FREE_RISE', 'look', {
      minFillKgM3: minFillKgM3.value,
      freeRiseKgM3: freeRiseKgM3.value,
    }),
  ];
}

function residueFindings({ inputs, mixedG }: Batch): Problem[] {
  const residueShare = inputs.residueG / mixedG;
  const lookShare = RULES.residueLook.value;
  if (residueShare <= lookShare) return [];
  return [finding('RESIDUE_LARGE', 'look', { residueG: inputs.residueG, mixedG, residueShare, lookShare })];
}
