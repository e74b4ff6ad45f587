import { growRegion } from '../../../src/geometry/plane/growRegion';

/** Outlines with closed forms, as directed segments u0, v0, u1, v1. */

export type Point = readonly [number, number];
export const loop = (points: readonly Point[]): number[] =>
  points.flatMap((p, i) => [...p, ...points[(i + 1) % points.length]!]);
export const region = (...loops: number[][]): ReturnType<typeof growRegion> =>
  growRegion(Float64Array.from(loops.flat()));
/** `sides` is large enough for the polygon to be 2e-7 below the circle. `turn` -1: the wrong way round, a hole. */
export const disc = (radius: number, [u, v]: Point = [0, 0], turn = 1, sides = 6000): number[] =>
  loop(
    Array.from({ length: sides }, (_, k) => {
      const angle = (turn * 2 * Math.PI * k) / sides;
      return [u + radius * Math.cos(angle), v + radius * Math.sin(angle)];
    }),
  );
export const rectangle = (width: number, depth: number, [u, v]: Point = [0, 0]): number[] =>
  loop([
    [u, v],
    [u + width, v],
    [u + width, v + depth],
    [u, v + depth],
  ]);
export const turnedBy = (segments: number[], angle: number): number[] => {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return segments.map((x, i) =>
    i % 2 === 0 ? cos * x - sin * segments[i + 1]! : sin * segments[i - 1]! + cos * x,
  );
};
