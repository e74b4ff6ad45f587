import { RULES, waterFill, type FillPour, type FreeRiseCup, type FreeRisePour } from '../../yield';
import type { TriedPour, WeighedResidue } from '../../yield';
import type { BookRow, CupRow, PourRow } from './bookRow';
import type { CheckedPour } from './checkedPours';

/** A row of the book as what can be learned from it; `no` is of the pour. */
export interface Evidence<T> {
  no: number;
  is: T;
}

const each = <T>(pours: readonly CheckedPour[], read: (row: PourRow) => T | undefined): Evidence<T>[] =>
  pours.flatMap(({ no, sound }) => {
    const is = read(sound);
    return is === undefined ? [] : [{ no, is }];
  });

/** What stayed in the cup, of every foam: the cup knows no foam. */
export const residueRows = (pours: readonly CheckedPour[]): Evidence<WeighedResidue>[] =>
  each(pours, (row) => {
    const mixedG = mixedOf(row);
    return mixedG === undefined || row.residueG === undefined
      ? undefined
      : { mixedG, residueG: row.residueG };
  });

/** Mixed as weighed; where nobody weighed the mix, A and B with the color. */
const mixedOf = ({ mixedG, aG, bG, colorG = 0 }: PourRow): number | undefined =>
  mixedG ?? (aG === undefined || bG === undefined ? undefined : aG + bG + colorG);

/** How a pour was tried, and what came of it. */
export const triedPours = (pours: readonly CheckedPour[]): TriedPour[] =>
  pours.map(({ no, sound: { foam, piece, pack, moldC, roomC, opening, skin, filled } }) => ({
    no,
    ...(foam === undefined ? {} : { foam }),
    ...(piece === undefined ? {} : { piece }),
    ...(pack === undefined ? {} : { packFactor: pack }),
    ...(moldC === undefined ? {} : { moldC }),
    ...(roomC === undefined ? {} : { roomC }),
    ...(opening === undefined ? {} : { opening }),
    ...(skin === undefined ? {} : { skin }),
    ...(filled === undefined ? {} : { short: filled === 'short' }),
  }));

/**
 * The cavity of a pour: the newest water fill of its mold, or of its piece where the mold has no name; else as it was planned. Newest by its
 * day, as Measure has it: an old list that is brought in later stands below. Of one day, and of rows without any, the last in the book.
 */
export function cavityOf(
  { mold, piece, cavityCm3 }: Pick<PourRow, 'mold' | 'piece' | 'cavityCm3'>,
  rows: readonly BookRow[],
): number | undefined {
  const filled = rows.flatMap((row) => {
    if (row.kind !== 'fill' || row.waterG === undefined) return [];
    const isOfIt =
      mold !== undefined && row.mold !== undefined
        ? row.mold === mold
        : piece !== undefined && row.piece === piece;
    const cm3 = isOfIt ? waterCm3(row.waterG, row.waterTempC) : undefined;
    return cm3 === undefined ? [] : [{ cm3, day: row.day ?? '' }];
  });
  const newest = filled.reduce<(typeof filled)[number] | undefined>(
    (one, other) => (one === undefined || other.day >= one.day ? other : one),
    undefined,
  );
  return newest?.cm3 ?? cavityCm3;
}

function waterCm3(waterG: number, waterTempC: number | undefined): number | undefined {
  const filled = waterFill({ waterG, ...(waterTempC === undefined ? {} : { waterTempC }) });
  return filled.ok ? filled.value.value : undefined;
}

/** The free rise of every cup of a test; a small cup is trusted less. */
export function cupsOf({ foam, roomC, waterG, waterTempC, foamsG = [] }: CupRow): FreeRiseCup[] {
  const cupCm3 = waterG === undefined ? undefined : waterCm3(waterG, waterTempC);
  if (cupCm3 === undefined) return [];
  return foamsG.map((foamG) => ({
    freeRiseKgM3: (1000 * foamG) / cupCm3,
    ...(foamG < RULES.smallCup.value ? { uFreeRiseShare: RULES.uSmallCup.value } : {}),
    ...(foam === undefined ? {} : { foam }),
    ...(roomC === undefined ? {} : { roomC }),
  }));
}

/** Pours that say something of the free rise: of a short one how much was missing must be known, of a full one its cavity. */
export const freeRisePours = (
  pours: readonly CheckedPour[],
  rows: readonly BookRow[],
): Evidence<FreeRisePour>[] =>
  each(pours, (row) => {
    const { foam, roomC, castingG, trimG = 0, filled } = row;
    const filledCm3 = filledOf(row, rows);
    if (castingG === undefined || filled === undefined || filledCm3 === undefined) return undefined;
    return {
      outcome: filled,
      castingG: castingG + trimG,
      filledCm3,
      ...(foam === undefined ? {} : { foam }),
      ...(roomC === undefined ? {} : { roomC }),
    };
  });

function filledOf(row: PourRow, rows: readonly BookRow[]): number | undefined {
  const cavityCm3 = cavityOf(row, rows);
  if (cavityCm3 === undefined || row.filled === 'full') return cavityCm3;
  return row.voidCm3 === undefined ? undefined : cavityCm3 - row.voidCm3;
}

/** Pours that say how much fills: full and capped, full with an open mouth, or short by so much. */
export const fillPours = (pours: readonly CheckedPour[], rows: readonly BookRow[]): Evidence<FillPour>[] =>
  each(pours, (row) => {
    const cavityCm3 = cavityOf(row, rows);
    const mixedG = mixedOf(row);
    const { residueG, filled, voidCm3, trimG, opening } = row;
    if (cavityCm3 === undefined || mixedG === undefined || residueG === undefined) return undefined;
    const poured = { cavityCm3, pouredG: mixedG - residueG };
    if (filled === 'short')
      return voidCm3 === undefined
        ? undefined
        : { outcome: 'short', ...poured, shortShare: voidCm3 / cavityCm3 };
    if (filled !== 'full') return undefined;
    return {
      outcome: opening === 'open' ? 'overflowed' : 'full',
      ...poured,
      ...(trimG === undefined ? {} : { trimG }),
    };
  });
