import type { ShopChoice } from '../route';

/** One database a shop, so that what is invented never mixes with what is the user's. */
export const NAMES: Readonly<Record<ShopChoice, string>> = {
  own: 'risewright',
  sample: 'risewright-sample',
};
