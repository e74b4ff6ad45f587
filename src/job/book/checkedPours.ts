import { findSlips, massRatio, type ExpectedPour, type Slip, type TypedField } from '../../yield';
import type { Shop } from '../shop';
import type { AskedField, BookRow, PourRow } from './bookRow';
import { numberedPours, type NumberedPour } from './numberedPours';

/**
 * A pour with what is to be asked about it, and as far as nothing is: fields that are held back are left out of `sound`. One that was
 * kept as it was typed is not asked about again, and is held back for good.
 */
export interface CheckedPour extends NumberedPour {
  slips: Slip[];
  /** Fields that a slip which is still to be seen holds back, whether it was answered or not. */
  doubted: TypedField[];
  sound: PourRow;
}

/** What of a shop the check of a row needs. */
export type ShopFacts = Pick<Shop, 'foams' | 'scale'>;

/** Every pour of the book beside the slips of the pen in it, the first first. The rows themselves stay as they were written. */
export const checkedPours = (rows: readonly BookRow[], shop: ShopFacts): CheckedPour[] =>
  numberedPours(rows).map(({ no, row }) => {
    const slips = findSlips(row, expectedOf(row, shop));
    const doubted = slips.flatMap(({ heldBack }) => heldBack);
    return {
      no,
      row,
      doubted,
      slips: row.isLeftOut === true ? [] : slips.filter(({ field }) => !isKept(row, field)),
      sound: without(row, [...doubted, ...keptBack(row, slips)]),
    };
  });

/** What was asked about that field or sum was answered: it stays as it was typed. */
export const isKept = ({ keptAsTyped = [] }: PourRow, field: AskedField): boolean =>
  keptAsTyped.includes(field);

/**
 * What was kept as typed is held back also where nothing is found any more: the card was taken away, the scale is another one. Nobody
 * can tell then what was asked of A, of B or of the mix, so all that the question may have been about goes.
 */
const keptBack = ({ keptAsTyped = [] }: PourRow, slips: readonly Slip[]): TypedField[] =>
  keptAsTyped.flatMap((field): readonly TypedField[] =>
    field === 'balance' || slips.some((slip) => slip.field === field) ? [] : (WITH[field] ?? [field]),
  );

const WITH: Partial<Record<TypedField, readonly TypedField[]>> = {
  mixedG: ['mixedG', 'aG', 'bG'],
  aG: ['aG', 'bG'],
  bG: ['aG', 'bG'],
};

function expectedOf({ foam, plannedG }: PourRow, { foams, scale }: ShopFacts): ExpectedPour {
  const card = foams.find(({ name }) => name === foam);
  const ratio = card === undefined ? undefined : massRatio(card.ratio, card.partDensities);
  return {
    ...(ratio?.ok === true ? { ratio: ratio.value } : {}),
    ...(plannedG === undefined ? {} : { mixedG: plannedG }),
    ...(scale === undefined ? {} : { stepG: scale.stepG }),
  };
}

function without(row: PourRow, fields: readonly TypedField[]): PourRow {
  const sound = { ...row };
  for (const field of fields) delete sound[field];
  return sound;
}
