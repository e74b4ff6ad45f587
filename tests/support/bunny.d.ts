/** The Stanford bunny as the npm package `bunny` ships it; it has no types of its own. */
declare module 'bunny' {
  export const positions: [number, number, number][];
  export const cells: [number, number, number][];
}
