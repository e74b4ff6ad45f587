import type { BookRow, CupRow } from '../../job/book';
import type { ShopCore } from '../../store';
import { formatDensity } from '../../units';
import { RULES } from '../../yield';
import { weighedCups } from '../cup/weighedCups';
import { lotAge } from '../shelf/lotAge';
import type { Mark } from '../parts/StatusMark';
import { amount } from '../../words/sentence';
import { againstWords } from '../words/bookLearned';
import { NOT_SAID, settingC } from '../words/bookPage';

/** A cup test, or a lot of the stock that none was made of. */
export interface LotRow {
  id: string;
  name: string;
  where: string | undefined;
  cup: string;
  foam: string;
  freeRise: string;
  against: string;
  mark: Mark;
  words: string;
}

/** The cup tests of the book and the opened lots of the stock, of the foams that are shown. */
export function lotRows(
  rows: readonly BookRow[],
  core: ShopCore,
  foams: readonly string[] | undefined,
  today: string,
): LotRow[] {
  const isShown = (foam: string | undefined): boolean =>
    foams === undefined || foam === undefined || foams.includes(foam);
  const cups = rows.filter((row): row is CupRow => row.kind === 'cup' && isShown(row.foam));
  const tested = (foam: string, lot: string | undefined): boolean =>
    cups.some((cup) => cup.foam === foam && cup.lot !== undefined && cup.lot === lot);
  const untested = core.stock.flatMap((row, n): LotRow[] => {
    if (!core.foams.some(({ name }) => name === row.card) || !isShown(row.card)) return [];
    if (tested(row.card, row.lot)) return [];
    const { mark, words } = lotAge(row, 'foam', today);
    return [
      {
        id: `stock ${n}`,
        name: row.lot === undefined ? row.card : `${row.card}, lot ${row.lot}`,
        where: 'on the stock shelf',
        cup: 'no cup test',
        foam: 'none',
        freeRise: 'not known',
        against: 'not known',
        mark: mark === 'fine' ? 'unknown' : mark,
        words,
      },
    ];
  });
  return [...cups.map((cup) => cupRow(cup, core)), ...untested];
}

function cupRow(cup: CupRow, { foams }: ShopCore): LotRow {
  const { foam, lot, roomC, waterG, foamsG = [], day, note } = cup;
  const sum = waterG === undefined ? undefined : weighedCups({ ...cup, waterG, foamsG });
  const said = {
    id: cup.id,
    name: `${foam ?? 'Foam not said'}, lot ${lot ?? NOT_SAID}`,
    where: [day, note].filter(Boolean).join(', ') || undefined,
    cup: roomC === undefined ? NOT_SAID : settingC(roomC),
  };
  const grams = foamsG.map((massG) => `${amount(massG)} g`).join(', ') || 'not weighed';
  if (sum?.ok !== true)
    return {
      ...said,
      foam: grams,
      freeRise: 'not known',
      against: 'not known',
      mark: 'unknown',
      words: 'The size of the cup or its foam was not weighed.',
    };
  const freeRiseKgM3 = sum.value.freeRiseKgM3.value;
  const card = foams.find(({ name }) => name === foam);
  const sheet = card === undefined ? undefined : againstSheet(freeRiseKgM3, card.freeRiseKgM3);
  return {
    ...said,
    foam: `${grams} in ${amount(sum.value.cups[0]!.cupCm3, 3)} cm³`,
    freeRise: formatDensity(freeRiseKgM3),
    against: sheet === undefined ? 'no card' : againstWords(1 + sheet.share),
    mark: sheet?.mark ?? 'unknown',
    words:
      sheet?.mark === 'look'
        ? 'Further off its card than the doubt of a data sheet: a room of another warmth does that, and an old lot. Batch takes the free rise of a cup.'
        : '',
  };
}

/** Against its sheet: within the doubt of a data sheet, or beyond it. */
export function againstSheet(freeRiseKgM3: number, sheetKgM3: number): { share: number; mark: Mark } {
  const share = freeRiseKgM3 / sheetKgM3 - 1;
  return { share, mark: Math.abs(share) > RULES.uFreeRiseLabel.value ? 'look' : 'fine' };
}
