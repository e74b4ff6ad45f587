/** Numbers only: how much to mix, of what, and how sure that is. */
export { planBatch } from './batch';
export type { Batch } from './batch';
export type { BatchInputs, Given } from './batchInputs';
export { BATCH_TERMS } from './batchBudget';
export type { BatchTerm } from './batchBudget';
export { cupTest, freeRiseFromCup, freeRiseFromCups } from './cupTest';
export type { CupTest, CupResult, CupWeights } from './cupTest';
export { massRatio, mixedLiquidKgM3, partsAPer100B, partsBPer100A, shareOfA, targetAG } from './foam';
export type { FoamCard, MassRatio, MixRatio, PartDensities } from './foam';
export { readFoamCard, reversedRatio } from './foamCard';
export { mixedMassG } from './mixedMass';
export { normalQuantile } from './normal';
export { overpackFromPack, packFromOverpack } from './packFactor';
export { ratioSentenceParts } from './ratioSentenceParts';
export type { RatioSentenceParts, Weighing } from './ratioSentenceParts';
export { INPUT_BOUNDS, RULES } from './rules';
export type { Rule, RuleName } from './rules';
export type { BatchAssumption } from './settleBatch';
export { shortFillChance } from './shortFill';
export type { BudgetRow } from './uncertainty';
export { waterGPerCm3 } from './water';
export { wallHoldUp } from './holdUp';
export type { DrainingWall } from './holdUp';
export { checkWithin } from './checkInput';
export type { InputBounds } from './checkInput';
export { isocyanateIndex } from './isocyanateIndex';
export type { ReactiveParts } from './isocyanateIndex';
export { boxWall, wallBulgeMm, wallForceN, wallPressureKPa } from './moldmaking/box';
export type { BoxWall, BoxWallLoad } from './moldmaking/box';
export {
  adhesiveG,
  amountByCoverage,
  paintLiters,
  poreFillGPerM2,
  realAreaM2,
  spreadingRateM2PerL,
} from './moldmaking/finishing';
export type { PaintByFilm, CoatedSurface } from './moldmaking/finishing';
export { floatCheck, floatForceN } from './moldmaking/floating';
export type { Floating, Submerged } from './moldmaking/floating';
export type {
  JacketAmounts,
  JacketCaution,
  JacketItem,
  JacketMaterial,
  JacketParameter,
  JacketSettings,
  JacketShape,
} from './moldmaking/jacketMaterial';
export { JACKET_MATERIALS } from './moldmaking/jacketMaterials';
export { flangeVolumeMm3, keyCount, keyVolumeMm3 } from './moldmaking/keys';
export { liftFindings } from './moldmaking/lift';
export { MOLDMAKING_BOUNDS, MOLDMAKING_RULES } from './moldmaking/rules';
export { castingSize, cavityAtCasting, settleShrink, shrinkFromLengths } from './moldmaking/shrinkage';
export type { CastingCavity, KnownShrink, SiliconeCure } from './moldmaking/shrinkage';
export { WALL_MATERIALS } from './moldmaking/wallMaterials';
export type { WallMaterial } from './moldmaking/wallMaterials';
export { moldWeight, outerSize, standingBox } from './moldmaking/weights';
export type { Sides } from './moldmaking/weights';
export * from './silicone';
export * from './warmth';
export * from './pour';
export * from './demold';
export * from './learn';
export * from './volumeWays';
export * from './run';
