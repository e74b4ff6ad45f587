/** What the fields of the book are called within a sentence. */
export const BOOK_FIELDS: Readonly<Record<string, string>> = {
  aG: 'part A',
  bG: 'part B',
  mixedG: 'the mix',
  residueG: 'the residue',
  castingG: 'the casting',
  trimG: 'the trim',
  roomC: 'the room',
  moldC: 'the mold',
};

/** What can be changed from pour to pour. */
export const FACTOR_WORDS = {
  packFactor: 'pack factor',
  moldC: 'mold temperature',
  opening: 'opening',
  roomC: 'room temperature',
} as const;

/** "1", "1 and 2", "1, 2 and 3". */
export const listed = (names: readonly (string | number)[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
