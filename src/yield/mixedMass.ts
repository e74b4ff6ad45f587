/** All that the foam has to fill and all that is lost on the way. Densities in kg/m3 are g/L, so cm3 are divided by 1000. */
export interface MixedMassInputs {
  freeRiseKgM3: number;
  packFactor: number;
  cavityCm3: number;
  riserCm3: number;
  ventsG: number;
  gasLossShare: number;
  residueG: number;
}

/**
 * Grams to mix: (free rise x pack x (cavity + riser) + vents) / (1 - gas) + residue in the cup. The pack counts for
 * the riser too, which is right for a plugged riser and on the safe side for an open one.
 */
export function mixedMassG(inputs: MixedMassInputs): number {
  return pouredMassG(inputs) + inputs.residueG;
}

/** What of it leaves the cup and goes into the mold. */
export function pouredMassG({
  freeRiseKgM3,
  packFactor,
  cavityCm3,
  riserCm3,
  ventsG,
  gasLossShare,
}: MixedMassInputs): number {
  const foamG = (freeRiseKgM3 * packFactor * (cavityCm3 + riserCm3)) / 1000;
  return (foamG + ventsG) / (1 - gasLossShare);
}
