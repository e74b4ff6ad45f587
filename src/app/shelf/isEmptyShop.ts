import type { ShopView } from '../../store';

/** Nothing stands here that a backup could take the place of. */
export const isEmptyShop = ({ core, pieces }: ShopView): boolean =>
  pieces.length + core.foams.length + core.silicones.length + core.stock.length === 0 &&
  core.name === '' &&
  core.book === undefined &&
  core.scale === undefined &&
  core.settings === undefined;
