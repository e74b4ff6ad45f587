import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { KELVIN_AT_0_C } from '../../units';
import { RULES } from '../rules';
import type { BatchAssumption } from '../settleBatch';
import { noteIn } from '../settleBatch';
import { checkPour } from './checkPour';
import { NCO_G_PER_EQ, WATER_G_PER_MOL } from './molar';
import { POUR_RULES as R } from './rules';

/** One color of a recipe: its mass as a share of part B, or of A and B together. Drops: so many of them were weighed together. */
export interface ColorShare {
  name: string;
  share: number;
  of: 'B' | 'mix';
  weighedDrops?: { drops: number; dropsG: number };
}

export interface ColorItem {
  name: string;
  massG: number;
  /** A convenience: the mass counts. */
  drops: number;
  dropG: number;
  dropFrom: 'weighed' | 'assumed';
}

export interface ColorRecipe {
  items: ColorItem[];
  /** Adds to the batch; A and B are not changed for it. */
  totalG: number;
  assumptions: BatchAssumption[];
}

/**
 * A color recipe scaled to a batch, g. It is kept by mass share, so a larger batch is the same color; drops follow from the mass of
 * one, best measured by weighing 20. Pigment takes no part in the reaction: the ratio A:B stays. Errors: INPUT_OUT_OF_BOUNDS,
 * COLOR_NAMED_TWICE.
 */
export function scaleColor({
  colors,
  partAG,
  partBG,
}: {
  colors: readonly ColorShare[];
  partAG: number;
  partBG: number;
}): Outcome<ColorRecipe> {
  for (const mixedG of [partAG, partBG]) {
    const sound = checkPour({ mixedG });
    if (!sound.ok) return sound;
  }
  const assumptions: BatchAssumption[] = [];
  const note = noteIn(assumptions);
  const items: ColorItem[] = [];
  for (const { name, share, of, weighedDrops } of colors) {
    if (items.some((item) => item.name === name)) return bad('COLOR_NAMED_TWICE', { name });
    const sound = checkPour({ colorShare: share }, { ...weighedDrops });
    if (!sound.ok) return sound;
    const massG = share * (of === 'B' ? partBG : partAG + partBG);
    const dropFrom = weighedDrops === undefined ? 'assumed' : 'weighed';
    const dropG =
      weighedDrops === undefined ? note('drop_g', R.drop) : weighedDrops.dropsG / weighedDrops.drops;
    items.push({ name, massG, drops: Math.round(massG / dropG), dropG, dropFrom });
  }
  const totalG = items.reduce((sum, { massG }) => sum + massG, 0);
  return good({ items, totalG, assumptions: firstOfEach(assumptions) });
}

const firstOfEach = (assumptions: readonly BatchAssumption[]): BatchAssumption[] =>
  assumptions.filter(({ name }, index) => assumptions.findIndex((other) => other.name === name) === index);

/** Mass of a drop that falls from a tip, g: 2 pi r gamma f / g, Tate with the factor of Harkins and Brown, f about 0.65. */
export function dropMassG({
  dropRadiusMm,
  surfaceTensionMNM,
}: {
  dropRadiusMm: number;
  surfaceTensionMNM: number;
}): Outcome<number> {
  const sound = checkPour({ dropRadiusMm, surfaceTensionMNM });
  if (!sound.ok) return sound;
  // mm times mN/m are uN; uN over m/s2 are mg.
  const dropMg = (2 * Math.PI * dropRadiusMm * surfaceTensionMNM * R.tateFactor.value) / RULES.gravity.value;
  return good(dropMg / 1000);
}

export interface WaterReaction {
  /** Gas at that temperature and sea-level pressure. */
  co2L: number;
  /** Part A that the water uses up. */
  isocyanateG: number;
}

/**
 * What water in a color does: every mole makes a mole of gas and uses up two isocyanate groups (stoichiometry, ideal gas). 1 g
 * makes 1.36 L at 25 C and takes 15.55 g of a part A with 30 % NCO: water-borne color never goes in.
 */
export function waterReaction({
  waterG,
  ncoShare,
  waterC = 25,
}: {
  waterG: number;
  ncoShare: number;
  waterC?: number;
}): Outcome<WaterReaction> {
  const sound = checkPour({ colorWaterG: waterG, ncoShare, waterC });
  if (!sound.ok) return sound;
  const moles = waterG / WATER_G_PER_MOL;
  const co2L = (moles * R.gasConstant.value * (waterC + KELVIN_AT_0_C)) / RULES.standardPressure.value;
  return good({ co2L, isocyanateG: (2 * moles * NCO_G_PER_EQ) / ncoShare });
}
