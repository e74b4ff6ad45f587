import type { Vector } from '../geometry';

/** Everything further along an axis than `at` is taken away; in the picture's units, from its middle. */
export interface Cut {
  axis: 'x' | 'y' | 'z';
  at: number;
}

/** Towards who looks at the cut. */
export const CUT_NORMALS: Readonly<Record<Cut['axis'], Vector>> = {
  x: [1, 0, 0],
  y: [0, 1, 0],
  z: [0, 0, 1],
};
