import type { CupRow } from '../../job/book';
import { good, type Outcome } from '../../problem';
import { cupTest, RULES, VOLUME_RULES, type CupTest } from '../../yield';
import type { Mark } from '../parts/StatusMark';

/** What the cups of one test come to, 9 times in 10 as everywhere in the Book; how many they are, and what one holds. */
export interface CupSum extends Pick<CupTest, 'uShare' | 'findings'> {
  freeRiseKgM3: number;
  lowKgM3: number;
  highKgM3: number;
  cups: number;
  cupCm3: number;
}

/** Water of a temperature that nobody measured is taken at that of the rules. */
export function cupSum({
  waterG,
  waterTempC = VOLUME_RULES.waterTemp.value,
  foamsG,
}: Required<Pick<CupRow, 'waterG' | 'foamsG'>> & Pick<CupRow, 'waterTempC'>): Outcome<CupSum> {
  const test = cupTest(foamsG.map((fullG) => ({ fullG, cupG: 0, waterG, waterTempC })));
  if (!test.ok) return test;
  const { freeRiseKgM3, cups, ...rest } = test.value;
  const { value, low, high } = freeRiseKgM3;
  return good({
    ...rest,
    freeRiseKgM3: value,
    lowKgM3: low,
    highKgM3: high,
    cups: cups.length,
    cupCm3: cups[0]!.cupCm3,
  });
}

/** Against its sheet: within the doubt of a data sheet, or beyond it. */
export function againstSheet(freeRiseKgM3: number, sheetKgM3: number): { share: number; mark: Mark } {
  const share = freeRiseKgM3 / sheetKgM3 - 1;
  return { share, mark: Math.abs(share) > RULES.uFreeRiseLabel.value ? 'look' : 'fine' };
}
