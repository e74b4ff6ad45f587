import { CHECK_FIGURES } from '../../checks/figures';
import { wholeMonths } from '../../checks/dates';
import type { StockRow } from '../../job/stockRow';
import type { Mark } from '../parts/StatusMark';
import { dayWords } from '../words/dayWords';

export interface LotAge {
  mark: Mark;
  words: string;
}

/** How old an opened lot is, against the months that the checks of a pour and of a mold go by. */
export function lotAge(row: StockRow, kind: 'foam' | 'silicone' | 'unknown', today: string): LotAge {
  const lot = row.lot === undefined || row.lot === '' ? 'This lot' : `Lot ${row.lot}`;
  const months = row.openedOn === undefined ? row.openedMonths : wholeMonths(row.openedOn, today);
  if (months === undefined)
    return { mark: 'unknown', words: `${lot}: the day it was opened on is not known.` };
  if (months < 0)
    return { mark: 'unknown', words: `${lot}: opened on ${dayWords(row.openedOn!)}, after today.` };
  const [lookAt, stopAt] =
    kind === 'silicone'
      ? [CHECK_FIGURES.openedLook.value, CHECK_FIGURES.openedStop.value]
      : [CHECK_FIGURES.foamOpenedLook.value, CHECK_FIGURES.foamOpenedStop.value];
  const age = `${lot} was opened ${ageWords(months)}`;
  if (months < lookAt) return { mark: 'fine', words: `${age}.` };
  const test =
    kind === 'silicone' ? 'Cure a patch of it before it is poured.' : 'Cup-test it before it is poured.';
  return months < stopAt
    ? { mark: 'look', words: `${age}. ${test}` }
    : { mark: 'stop', words: `${age}, past ${stopAt} months. ${test}` };
}

const ageWords = (months: number): string =>
  months === 0 ? 'less than a month ago' : `${months} ${months === 1 ? 'month' : 'months'} ago`;
