/** A label over a place on a line, px. */
export interface Label {
  text: string;
  atPx: number;
}

/** Where the middle of the label is, and in which row: 0 is next to the line. */
export interface PlacedLabel extends Label {
  middlePx: number;
  row: number;
}

/** A letter of 13 px text is about so wide: the average of sans figures and small letters. Chosen here. */
export const LETTER_PX = 7.2;
const GAP_PX = 8;

/** Labels kept within 0 to the width and clear of each other: one that would touch another moves to the next row. */
export function placeLabels(labels: readonly Label[], widthPx: number): PlacedLabel[] {
  const ends: number[] = [];
  return [...labels]
    .sort((one, other) => one.atPx - other.atPx)
    .map((label) => {
      const half = (label.text.length * LETTER_PX) / 2;
      const middlePx = Math.min(Math.max(label.atPx, half), Math.max(half, widthPx - half));
      const free = ends.findIndex((end) => end + GAP_PX <= middlePx - half);
      const row = free < 0 ? ends.length : free;
      ends[row] = middlePx + half;
      return { ...label, middlePx, row };
    });
}

export const rowsOf = (placed: readonly PlacedLabel[]): number =>
  placed.reduce((most, { row }) => Math.max(most, row + 1), 0);
