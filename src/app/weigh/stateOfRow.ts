import type { PourRow } from '../../job/book';
import type { WeighBox, WeighState } from '../../job/weighState';
import { numberText } from '../../units';

const BOXES: readonly (readonly [WeighBox, keyof PourRow, string])[] = [
  ['mixed', 'mixedG', 'g'],
  ['residue', 'residueG', 'g'],
  ['trim', 'trimG', 'g'],
  ['casting', 'castingG', 'g'],
  ['room', 'roomC', 'C'],
  ['mold', 'moldC', 'C'],
];

/** The weigh-back of a casting that stands in the book and was not weighed back here: as its row has it. */
export function stateOfRow(row: PourRow): WeighState {
  const boxes = BOXES.map(([box, field, unit]) => {
    const value = row[field];
    return [box, typeof value === 'number' ? { text: numberText(value), unit } : 'not'] as const;
  });
  const { filled, voidCm3, skin, opening, note, lot, photo } = row;
  return {
    boxes: Object.fromEntries(boxes),
    ...(filled === undefined ? {} : { filled }),
    ...(voidCm3 === undefined ? {} : { missing: { text: numberText(voidCm3), unit: 'cm3' } }),
    ...(skin === 1 || skin === 2 || skin === 3 || skin === 4 || skin === 5 ? { skin } : {}),
    ...(opening === undefined ? {} : { opening }),
    ...(note === undefined ? {} : { note }),
    ...(lot === undefined ? {} : { lot }),
    ...(photo === undefined ? {} : { photo }),
  };
}
