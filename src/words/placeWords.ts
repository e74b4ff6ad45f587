import type { Side, ViewName } from '../plan/placeCard';

const COMMON = 'common practice, no source';

/** The piece's own sides, as the table of the place card names them. */
export const SIDE_WORDS: Readonly<Record<Side, string>> = {
  left: 'left',
  right: 'right',
  front: 'front',
  back: 'back',
};

/** A view and which of the piece's own sides lies at its left and right edge. */
export const VIEW_WORDS: Readonly<Record<ViewName, { name: string; leftEdge: Side; rightEdge: Side }>> = {
  front: { name: 'Front', leftEdge: 'right', rightEdge: 'left' },
  side: { name: 'Side', leftEdge: 'back', rightEdge: 'front' },
  top: { name: 'Top', leftEdge: 'right', rightEdge: 'left' },
};

/** How the drawings are to be read. */
export const VIEWS_NOTE =
  'Left and right are the piece\u2019s own: from the front, its right is at your left. Side: from its right. Top: its front is at the bottom.';

export const TAPE_NOTE =
  'Up: from the board. In: stand a straight edge upright at the outermost point of the side named and measure level from it.';

export const UP_WHEN_POURED = 'up when poured';
/** Where the arrow points at the reader or away. */
export const UP_END_ON = { toward: 'up is toward you', away: 'up is away from you' } as const;

/** What the rings say. */
export const RING_WORDS = {
  opening: 'heavy ring: opening',
  far: 'dashed ring, hollow dot, \u201cfar\u201d: on the far side',
  unknown: 'hollow dot, full ring: side not known',
} as const;

/** Where a dot is seen, in the table. */
export const seenWords = (view: ViewName, face: 'near' | 'far' | 'unknown'): string =>
  `${view}${{ near: '', far: ', far', unknown: ', side not known' }[face]}`;

/** Where rings have no room: the distances stand all the same. */
export const NOT_DRAWN = 'not drawn';

/** Beside vents: what their figures leave open. */
export const VENT_NOTE =
  'Air that a vent frees: filled to a level, a lower bound for foam, which rises as a dome.';

/** What belongs on a page that someone drills by. */
export const PLACE_CAUTIONS: readonly { what: string; from: string }[] = [
  { what: 'Pierce or drill the vents before the mold is closed.', from: COMMON },
  { what: 'Never stand or lean over an opening or a vent while foam rises.', from: COMMON },
  { what: 'The data sheets and local rules come before this page.', from: COMMON },
];
