/**
 * Straight views of the placed piece, Z up, its face towards +y. Left and right are the piece's own: seen from the front, its
 * right (+x) is at the viewer's left. `from` points from the piece to the eye; a touch of +y keeps the face at the lower edge
 * of the view from the top.
 */
export const VIEWS = [
  { key: 'front', word: 'Front', from: [0, 1, 0] },
  { key: 'back', word: 'Back', from: [0, -1, 0] },
  { key: 'left', word: 'Left', from: [-1, 0, 0] },
  { key: 'right', word: 'Right', from: [1, 0, 0] },
  { key: 'top', word: 'Top', from: [0, 1e-4, 1] },
  { key: 'below', word: 'From below', from: [0, 1e-4, -1] },
] as const;

export type View = (typeof VIEWS)[number];

/** 15 degrees a press. */
export const TURN_STEP_RAD = Math.PI / 12;
export const ZOOM_STEP = 1.25;
