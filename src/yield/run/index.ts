/** A run of several castings: material, stock, kits, days, cost. */
export { planRun } from './planRun';
export type { RunInputs, RunPlan } from './planRun';
export { RUN_BOUNDS, RUN_RULES } from './rules';
export type { FoamPart, FoamStock, PartCover, StockForRun } from './stockForRun';
