import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { besselJ } from './bessel';
import { bisect } from './bisect';
import { checkWarmth } from './checkWarmth';

/** A slab is heated on both faces, or on one with the other insulated; cylinder (endless) and sphere all round. */
export type HeatShape = 'slab' | 'cylinder' | 'sphere';

/** A term of the series: its root z and its weight C. */
export interface HeatTerm {
  root: number;
  weight: number;
}

/**
 * The first terms of the series of a body at one temperature that meets a fluid at another: roots z of z tan z = Bi
 * (slab), z J1(z)/J0(z) = Bi (cylinder), 1 - z cot z = Bi (sphere), and their weights C. Bi = h L / k, with L the
 * thickness (one face heated), half of it (both), or the radius. Carslaw & Jaeger, Conduction of Heat in Solids; also in
 * Incropera and in Cengel. Error: INPUT_OUT_OF_BOUNDS.
 */
export function heatTerms({
  shape,
  biot,
  rootCount,
}: {
  shape: HeatShape;
  biot: number;
  rootCount: number;
}): Outcome<HeatTerm[]> {
  const checked = checkWarmth({ biot, rootCount });
  if (!checked.ok) return checked;
  return good(Array.from({ length: rootCount }, (_, index) => heatTerm(shape, biot, index + 1)));
}

/** The n-th term, n from 1. Each condition rises steadily from minus infinity (0 for n = 1) to infinity in its bracket. */
export function heatTerm(shape: HeatShape, biot: number, n: number): HeatTerm {
  const { bracket, condition, weight } = SHAPES[shape];
  const [low, high] = bracket(n);
  const root = bisect(low, high, (z) => condition(z) < biot);
  return { root, weight: weight(root) };
}

interface ShapeSeries {
  bracket: (n: number) => [number, number];
  condition: (z: number) => number;
  weight: (z: number) => number;
}

const SHAPES: Readonly<Record<HeatShape, ShapeSeries>> = {
  slab: {
    bracket: (n) => [Math.max(0, n - 1.5) * Math.PI, (n - 0.5) * Math.PI],
    condition: (z) => z * Math.tan(z),
    weight: (z) => (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z)),
  },
  cylinder: {
    bracket: (n) => [n === 1 ? 0 : zeroOfJ0(n - 1), zeroOfJ0(n)],
    condition: (z) => (z * besselJ(1, z)) / besselJ(0, z),
    weight: (z) => {
      const [j0, j1] = [besselJ(0, z), besselJ(1, z)];
      return ((2 / z) * j1) / (j0 ** 2 + j1 ** 2);
    },
  },
  sphere: {
    bracket: (n) => [(n - 1) * Math.PI, n * Math.PI],
    condition: (z) => 1 - z / Math.tan(z),
    weight: (z) => (4 * (Math.sin(z) - z * Math.cos(z))) / (2 * z - Math.sin(2 * z)),
  },
};

/** The n-th zero of J0 lies between (n - 1/4) pi and (n - 1/8) pi (Watson, Theory of Bessel Functions, 15.33). */
function zeroOfJ0(n: number): number {
  const sign = n % 2 === 1 ? 1 : -1;
  return bisect((n - 0.25) * Math.PI, (n - 0.125) * Math.PI, (z) => sign * besselJ(0, z) > 0);
}
