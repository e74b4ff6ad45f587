import { cross, dot, type Vector } from '../vector';

/** Axes of a flat view, unit vectors at a right angle: what points right and what points up on the paper. */
export interface ViewAxes {
  right: Vector;
  up: Vector;
}

export const VIEW_NAMES = ['front', 'side', 'top'] as const;
export type ViewName = (typeof VIEW_NAMES)[number];

/**
 * Views of a placed piece: Z up, its face towards +y, so that +x is its own right. The front is seen from +y, where its right is at
 * the viewer's left; the side from +x, its own right, where its face looks to the viewer's right; the top from +z with the front at
 * the lower edge, where its right is at the viewer's left again.
 */
export const VIEW_AXES: Readonly<Record<ViewName, ViewAxes>> = {
  front: { right: [-1, 0, 0], up: [0, 0, 1] },
  side: { right: [0, 1, 0], up: [0, 0, 1] },
  top: { right: [-1, 0, 0], up: [0, -1, 0] },
};

/** Direction from the piece to the eye. */
export const towardEye = ({ right, up }: ViewAxes): Vector => cross(right, up);

/** A place on the paper's axes, mm: to the right and up. */
export const inView = ({ right, up }: ViewAxes, atMm: Vector): [number, number] => [
  dot(right, atMm),
  dot(up, atMm),
];
