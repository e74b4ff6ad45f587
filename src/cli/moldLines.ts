import { formatLength, formatMass, formatVolume, type Show } from '../units';

export const line = (label: string, text: string): string => `  ${label.padEnd(11)} ${text}`;

/** Columns as wide as their widest cell; the first and the last are flush left. */
export function aligned(rows: readonly (readonly string[])[]): string[] {
  const widths = rows[0]!.map((_, n) => Math.max(...rows.map((row) => row[n]!.length)));
  return rows.map((row) =>
    row
      .map((cell, n) =>
        n === 0 || n === row.length - 1 ? cell.padEnd(widths[n]!) : cell.padStart(widths[n]!),
      )
      .join('  ')
      .trimEnd(),
  );
}

/** "320 mm x 260 mm x 302 mm", along x, y and z. */
export const sides = (mm: readonly number[], show: Show): string =>
  mm.map((side) => formatLength(side, show)).join(' x ');

const threeDigits = (value: number): number => Number(value.toPrecision(3));

/** What is not weighed out to the gram is not told to the gram. */
export const roughMass = (massG: number, show: Show): string => formatMass(threeDigits(massG), show);
export const roughVolume = (volumeCm3: number, show: Show): string =>
  formatVolume(threeDigits(volumeCm3), show);
export const roughLength = (lengthMm: number, show: Show): string =>
  formatLength(threeDigits(lengthMm), show);
