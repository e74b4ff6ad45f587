/** Where on any piece a void can be. Left and right are the piece's own. */
export const VOID_PLACES = [
  'top',
  'front',
  'back',
  'left side',
  'right side',
  'underside',
  'thin edge',
  'by the opening',
] as const;

/** "voids: front, thin edge", as it stands in the note of a row. */
export const voidWords = (places: readonly string[]): string =>
  places.length === 0 ? 'no voids' : `voids: ${places.join(', ')}`;
