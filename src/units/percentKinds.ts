import { formatQuantity, formatShare, numberText } from './format';
import { ask, refuse } from './kinds';
import type { Read, Reading } from './kinds';
import { isOneIn, readOneIn } from './oneIn';
import type { Part } from './parts';
import { kindsOfUnit } from './unitTable';

type PercentKind = 'share' | 'packFactor' | 'overpack';

/**
 * Shares, pack factor and overpack: pure numbers that people also write in percent. A share is 0..1; `50` is asked
 * about (50 %?), `1 in 100` is read. The pack factor is molded over free-rise density, so `150 %` is asked about: it may be an overpack.
 * Overpack is 100 % at the minimum fill; `10 %` is asked about, since some count from there.
 */
export function readPercentKind({
  kind,
  parts,
  otherDigits,
  percentStated,
}: {
  kind: PercentKind;
  parts: Part[];
  otherDigits: boolean;
  percentStated: boolean;
}): Read<number> {
  const [part, second] = parts;
  if (kind === 'share' && isOneIn(parts)) return readOneIn(parts, otherDigits);
  if (part === undefined || second !== undefined) return refuse('bad-compound');
  const percent = part.unit === '%' || (part.unit === undefined && percentStated);
  if (part.unit !== undefined && part.unit !== '%') {
    const [unitKind] = kindsOfUnit(part.unit);
    return refuse(unitKind === undefined ? 'unknown-unit' : 'wrong-kind', {
      unit: part.unit,
      kind,
      ...(unitKind === undefined ? {} : { unitKind }),
    });
  }
  const numbers = part.numeral.values;
  const [first = Number.NaN] = numbers;
  if (first < 0) return refuse('negative', { value: first, kind });
  if (kind !== 'share' && numbers.every((value) => value === 0))
    return refuse('not-positive', { value: 0, kind });
  const doubt = part.numeral.doubt ?? (otherDigits ? 'other-digits' : undefined);
  if (doubt !== undefined)
    return ask(
      doubt,
      numbers.flatMap((value) => possible(kind, value, percent)),
    );
  return READERS[kind](first, percent, part.unit === '%');
}

/** A bare number below this, where percent are wanted, is more likely a factor: 1.1 for 110 %. */
const LARGEST_FACTOR = 10;

type Reader = (typed: number, percent: boolean, percentWritten: boolean) => Read<number>;

const READERS: Readonly<Record<PercentKind, Reader>> = {
  share: readShare,
  packFactor: readPackFactor,
  overpack: readOverpack,
};

function readShare(typed: number, percent: boolean): Read<number> {
  const value = percent ? typed / 100 : typed;
  if (typed > 100) return refuse('share-out-of-range', { value: typed });
  if (!percent && typed >= 1) return ask('percent-or-number', possible('share', typed, false));
  return one('share', value);
}

/** Above 10 it cannot be a factor of any foam; it is most likely a percentage. */
function readPackFactor(typed: number, percent: boolean): Read<number> {
  if (typed === 0) return refuse('not-positive', { value: typed, kind: 'packFactor' });
  if (percent || typed > 10) return ask('percent-or-number', possible('packFactor', typed, true));
  return one('packFactor', typed);
}

function readOverpack(typed: number, percent: boolean, percentWritten: boolean): Read<number> {
  if (typed === 0) return refuse('not-positive', { value: typed, kind: 'overpack' });
  if (percent && !percentWritten && typed < LARGEST_FACTOR) {
    const [asSurplus] = possible('overpack', typed, true);
    return ask('percent-or-number', [
      ...possible('overpack', typed, false),
      ...(asSurplus ? [asSurplus] : []),
    ]);
  }
  if (percent && typed >= 100) return one('overpack', typed / 100);
  return ask('percent-or-number', possible('overpack', typed, percent));
}

function possible(kind: PercentKind, typed: number, percent: boolean): Reading<number>[] {
  if (kind === 'share') return shareReadings(typed, percent);
  const asPercent = { text: `${numberText(typed)} %`, value: typed / 100 };
  const asFactor = { text: numberText(typed), value: typed };
  if (kind === 'packFactor')
    return percent ? [{ text: numberText(typed / 100), value: typed / 100 }] : [asFactor];
  if (percent) return [{ text: `${numberText(100 + typed)} %`, value: 1 + typed / 100 }, asPercent];
  return typed < LARGEST_FACTOR ? [{ text: `${numberText(100 * typed)} %`, value: typed }] : [asPercent];
}

function shareReadings(typed: number, percent: boolean): Reading<number>[] {
  const asPercent = { text: formatShare(typed / 100), value: typed / 100 };
  if (percent || typed > 1) return asPercent.value <= 1 ? [asPercent] : [];
  return typed === 1
    ? [asPercent, { text: '100 %', value: 1 }]
    : [{ text: formatShare(typed), value: typed }];
}

const one = (kind: PercentKind, value: number): Read<number> => ({
  kind: 'one',
  value,
  readback: formatQuantity(kind, value),
});
