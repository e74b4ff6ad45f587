import type { Source } from '../estimate';
import { good } from '../problem';
import type { Outcome } from '../problem';
import { mixedSigmaShare, packSigmaShare } from './batchBudget';
import type { BatchInputs } from './batchInputs';
import type { MixedMassInputs } from './mixedMass';
import { checkPack, packFromOverpack } from './packFactor';
import { RULES } from './rules';
import { noteIn } from './settleBatch';
import type { SettledBatch } from './settleBatch';
import { packForChance } from './shortFill';

export interface ChosenPack {
  packFactor: number;
  packFrom: Source;
  /** The pack that the wanted chance alone would give, where it was raised above it. */
  chancePack?: number;
}

/** The pack that was given, that of an overpack or of a wanted chance, or the assumed one. Errors: PACK_REFUSED and more. */
export function choosePack(inputs: BatchInputs, settled: SettledBatch): Outcome<ChosenPack> {
  const chosen = packOf(inputs, settled);
  if (!chosen.ok) return chosen;
  const checked = checkPack(chosen.value.packFactor);
  return checked.ok ? chosen : checked;
}

function packOf(inputs: BatchInputs, settled: SettledBatch): Outcome<ChosenPack> {
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
  if (!found.ok) return found;
  return good({ ...raised(found.value, minFillKgM3 !== undefined), packFrom: wanted.from });
}

/**
 * With an assumed minimum fill the chance does not know of the skin, which alone needs a pack of about 1.095 in a piece of
 * 5.2 L and more in a smaller one: k = 1 + (skin/core density - 1) x skin depth x area/volume (a mass balance of ours; the
 * skin of 1 mm, four times as dense as the core, is common practice, no source). So it is never met below the usual packs.
 */
function raised(found: number, minFillKnown: boolean): Pick<ChosenPack, 'packFactor' | 'chancePack'> {
  const least = RULES.packFine.low;
  return minFillKnown || found >= least ? { packFactor: found } : { packFactor: least, chancePack: found };
}

export interface Sigmas {
  /** Relative standard uncertainty of the mixed mass, and of the pack it reaches in the mold. */
  sigmaShare: number;
  packSigmaShare: number;
}

/** Without a cup test the sum of the named doubts flatters us: neither is then taken below the floor of the rules. */
export function sigmasAt(mass: MixedMassInputs, { u, cupTested }: SettledBatch): Sigmas {
  const floor = cupTested ? 0 : RULES.minSigmaNoCup.value;
  return {
    sigmaShare: Math.max(floor, mixedSigmaShare(mass, u)),
    packSigmaShare: Math.max(floor, packSigmaShare(mass, u)),
  };
}
