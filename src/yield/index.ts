/** Numbers only: how much to mix, of what, and how sure that is. */
export { planBatch } from './batch';
export type { Batch } from './batch';
export type { BatchInputs, Given } from './batchInputs';
export { BATCH_TERMS } from './batchBudget';
export type { BatchTerm } from './batchBudget';
export { freeRiseFromCup, freeRiseFromCups, waterGPerCm3 } from './cupTest';
export type { CupsResult, CupResult, CupWeights } from './cupTest';
export { massRatio, mixedLiquidKgM3, partsAPer100B, partsBPer100A, shareOfA, targetAG } from './foam';
export type { FoamCard, MassRatio, MixRatio, PartDensities } from './foam';
export { readFoamCard, reversedRatio } from './foamCard';
export { overpackFromPack, packFromOverpack } from './packFactor';
export { ratioSentenceParts } from './ratioSentenceParts';
export type { RatioSentenceParts, Weighing } from './ratioSentenceParts';
export { INPUT_BOUNDS, RULES } from './rules';
export type { Rule, RuleName } from './rules';
export type { Assumption } from './settleBatch';
export type { BudgetRow } from './uncertainty';
