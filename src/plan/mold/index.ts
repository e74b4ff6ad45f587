/** From a scan to a mold: rubber, kits, jacket, and what is around it. */
export { compareMolds, type Compared } from './compareMolds';
export { castingCavity, type Casting, type CastingWish } from './castingCavity';
export type { Finishing } from './finishing';
export {
  ladderBench,
  measureLadders,
  thicknessOf,
  type KnownRungs,
  type LadderOfType,
  type LadderWishes,
  type Rung,
} from './ladder';
export { rubberAt, siliconeAt } from './ladderAt';
export { openMoldBench, type MoldBench } from './moldBench';
export type { FinishWish, MoldAsk, SiliconeWish, WorkWish } from './moldWish';
export { planMold, type Mold } from './planMold';
export { cutFacesOn, shellsOn, type CutFace, type PlaneAcross, type ShellsWish } from './shells';
export type { Pour as SiliconePour, SiliconeNeed } from './siliconeFor';
export type { Surroundings } from './surroundings';
