import { amount } from './sentence';

/** Said where a surface was written with longer facets than it was asked for. */
export const coarserWords = (file: string, edgeMm: number): string =>
  `${file} is coarser than asked for: this machine has not enough memory, so its facets are about ${amount(edgeMm, 2)} mm long.`;
