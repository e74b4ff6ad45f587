/** Molar masses per reactive group, g/mol: NCO 42.0168, KOH 56.1056 (in mg), half a water 9.00764. Textbook, from memory. */
const NCO_G_PER_EQ = 42.0168;
const KOH_MG_PER_EQ = 56105.6;
const WATER_G_PER_EQ = 9.00764;

/** A of given NCO content (mass share) against B of given hydroxyl number (mg KOH/g) with water in it. */
export interface ReactiveParts {
  partAG: number;
  ncoShare: number;
  partBG: number;
  hydroxylMgKohG: number;
  waterG: number;
}

/** Isocyanate index: 100 x NCO equivalents over those of hydroxyl and water. 100 is neither side left over. */
export function isocyanateIndex({ partAG, ncoShare, partBG, hydroxylMgKohG, waterG }: ReactiveParts): number {
  const nco = (partAG * ncoShare) / NCO_G_PER_EQ;
  const hydroxyl = (partBG * hydroxylMgKohG) / KOH_MG_PER_EQ;
  return (100 * nco) / (hydroxyl + waterG / WATER_G_PER_EQ);
}
