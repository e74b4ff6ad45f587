import { good, type Outcome } from '../../problem';
import { cupTest, VOLUME_RULES, type CupTest } from '../../yield';

/** Masses in g: the water that fills a cup to its rim, and the foam of each cup, trimmed flush. */
export interface CupMasses {
  waterG: number;
  /** °C; where nobody measured it, that of the rules is taken. */
  waterTempC?: number;
  foamsG: readonly number[];
}

/** A free rise from cups, with all that it came from. */
export interface WeighedCups extends CupTest {
  waterG: number;
  waterTempC: number;
  isTempAssumed: boolean;
}

/** What the cups of one test come to. Errors: those of `cupTest`. */
export function weighedCups({ waterG, waterTempC: toldC, foamsG }: CupMasses): Outcome<WeighedCups> {
  const waterTempC = toldC ?? VOLUME_RULES.waterTemp.value;
  const test = cupTest(foamsG.map((foamG) => ({ fullG: foamG, cupG: 0, waterG, waterTempC })));
  return test.ok ? good({ ...test.value, waterG, waterTempC, isTempAssumed: toldC === undefined }) : test;
}
