/** Finer than this no eye sees: device pixels a pixel of the page. */
export const MOST_DPR = 2;
