/** Ways to a volume without a scan: water, displacement, the tape. */
export { fillAgainst, type FillAgainst } from './fillAgainst';
export { displacedByLevel, displacedByOverflow } from './displacement';
export type { VesselLevels } from './displacement';
export { volumeByGirth } from './girth';
export type { TapedBody } from './girth';
export { VOLUME_BOUNDS, VOLUME_RULES } from './rules';
export { waterFill } from './waterFill';
export type { FillingWater } from './waterFill';
