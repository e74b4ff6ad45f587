import type { SizeWish } from './protocol';

/** A wish without what only checks its scale: of the same body, so that its molds need not be built anew for a second distance. */
export function bodyWish(wish: SizeWish): SizeWish {
  const { second, scaleBy, taped, fileUnit, ...rest } = wish;
  if (second === undefined || scaleBy === undefined) return wish;
  const isSecond = scaleBy === ('along' in second ? second.along : 'span');
  return {
    ...rest,
    ...(isSecond ? { second } : {}),
    ...(!isSecond && taped !== undefined ? { taped } : {}),
    ...(!isSecond && fileUnit !== undefined ? { fileUnit } : {}),
  };
}
