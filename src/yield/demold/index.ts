/** Taking the casting out, in numbers: how far the rubber must stretch, how long a slit helps, how hard it pulls. */
export { gentModulusMPa, lipStressMPa, pullForceN } from './pull';
export { DEMOLD_BOUNDS, DEMOLD_RULES } from './rules';
export type { DemoldInput } from './rules';
export { allowedStretch, slitLengthMm, stretchNeeded } from './stretch';
export type { PassedGirths } from './stretch';
