import {
  formatQuantity,
  readAllReadings,
  readQuantity,
  type QuantityKind,
  type RatioValue,
  type Read,
  type ReadOptions,
  type ScalarKind,
} from '../../src/units';
import { sayWhy } from '../../src/words/quantityWords';
import { strictNumber } from './strict/number';
import { pick, whole, type Target, type Verdict } from './target';

/** A text as somebody may type it, and what it is read as. */
interface Typed {
  text: string;
  kind: QuantityKind;
  options: ReadOptions;
}

const UNITS: Readonly<Record<QuantityKind, readonly string[]>> = {
  length: ['mm', 'cm', 'm', 'in', '"', 'ft', "'", 'ft 3 in', 'inch'],
  mass: ['g', 'kg', 'mg', 'oz', 'lb', 'lb 3 oz', 'lbs'],
  volume: ['cm3', 'cm³', 'mL', 'L', 'fl oz', 'gal', 'in3', 'cu ft', 'qt'],
  density: ['kg/m3', 'g/cm3', 'lb/ft3', 'pcf', 'g/L', 'oz/gal'],
  temperature: ['C', '°C', 'F', '°F', 'K'],
  temperatureDifference: ['K', 'C', 'F'],
  pressure: ['kPa', 'hPa', 'bar', 'psi', 'mmHg', 'inHg'],
  viscosity: ['Pa s', 'mPa s', 'cP', 'cps'],
  share: ['%', ' %', 'in 100'],
  packFactor: ['', '%'],
  overpack: ['%', ''],
  plain: ['', 'mm'],
  ratio: [':', ':1', ' : 2', '/3', ':1:1'],
};
const KINDS = Object.keys(UNITS) as QuantityKind[];

/** What stands in a box for a kind as its unit. */
const BARE: Readonly<Partial<Record<QuantityKind, readonly string[]>>> = {
  length: ['mm', 'cm', 'in', 'ft'],
  mass: ['g', 'kg', 'oz', 'lb'],
  volume: ['cm3', 'L', 'fl oz'],
  density: ['kg/m3', 'lb/ft3'],
  temperature: ['C', 'F'],
  temperatureDifference: ['K', 'F'],
  pressure: ['kPa', 'psi'],
  viscosity: ['Pa s', 'cP'],
  share: ['%'],
  overpack: ['%'],
};

const SIGNS =
  '0123456789012345678901234567890123456789..,,--++  \'"/:%eE^°·³½⅔−–′″\u00a0\u2009\u202f\t\n٣०９mcgftinlbLkKFPsx\u0000\ud83d\u0301'.split(
    '',
  );

export const NUMBERS: Target<Typed> = {
  name: 'numbers',
  make: (random) => {
    const kind = pick(random, KINDS);
    const bare = BARE[kind];
    return {
      kind,
      text: pick(random, [nearlyRight, nearlyRight, plainDecimal, noise])(random, kind),
      options: {
        ...(bare !== undefined && random() < 0.6 ? { bareUnit: pick(random, bare) } : {}),
        ...(random() < 0.2 ? { allowZero: true } : {}),
        // As the boxes of the page have it: heights above or below a place.
        ...(kind === 'length' && random() < 0.2 ? { allowNegative: true } : {}),
      },
    };
  },
  check: ({ text, kind, options }) => {
    for (const { value } of readAllReadings(text))
      for (const number of numbersOf(value))
        if (!Number.isFinite(number)) return failed(`a reading of ${number}`);
    const read: Read<number> | Read<RatioValue> =
      kind === 'ratio' ? readQuantity(text, kind) : readQuantity(text, kind, options);
    return (
      (read.kind === 'one' ? oddValue(text, kind, options, read) : oddQuestion(kind, options, read)) ?? {
        answer: read.kind === 'one' ? 'read' : 'refused',
      }
    );
  },
  fileOf: (typed) => ({ ending: 'json', bytes: new TextEncoder().encode(JSON.stringify(typed)) }),
};

const failed = (fault: string): Verdict => ({ answer: 'read', fault });
const numbersOf = (value: number | RatioValue): number[] =>
  typeof value === 'number' ? [value] : [value.a, value.b];

type Make = (random: () => number, kind: QuantityKind) => string;

const noise: Make = (random) => Array.from({ length: whole(random, 14) }, () => pick(random, SIGNS)).join('');

const plainDecimal: Make = (random) => {
  const digits = String(whole(random, 10 ** (1 + whole(random, 7))));
  const decimals = random() < 0.5 ? `.${String(whole(random, 1000)).padStart(whole(random, 4), '0')}` : '';
  return pick(random, ['', '', '', '-', '+']) + digits + decimals;
};

const nearlyRight: Make = (random, kind) => {
  const number = pick(random, [plainDecimal, plainDecimal, numberOfGroups, fraction])(random, kind);
  const text =
    number +
    pick(random, ['', ' ', '\u00a0', '  ']) +
    pick(random, UNITS[random() < 0.85 ? kind : pick(random, KINDS)]);
  if (random() < 0.5) return text;
  const at = whole(random, text.length + 1);
  return text.slice(0, at) + pick(random, SIGNS) + text.slice(at + whole(random, 2));
};

const numberOfGroups: Make = (random) => {
  const mark = pick(random, [' ', ',', '.', "'", '\u202f']);
  const groups = Array.from({ length: whole(random, 3) }, () => String(whole(random, 1000)).padStart(3, '0'));
  return (
    [String(whole(random, 1000)), ...groups].join(mark) +
    pick(random, ['', '.5', ',5', ',25', '.125', ',125'])
  );
};

const fraction: Make = (random) =>
  `${pick(random, ['', `${whole(random, 20)} `, '1'])}${pick(random, ['1/2', '3/4', '½', '7/8', '5/4', '1/0', '9/10'])}`;

const MAY_BE_NEGATIVE: readonly QuantityKind[] = ['temperature', 'temperatureDifference', 'plain'];

/** A number that no such quantity can have. */
function oddNumber(
  kind: QuantityKind,
  { allowNegative, allowZero }: ReadOptions,
  value: number,
): string | undefined {
  if (!Number.isFinite(value)) return `${value}`;
  if (kind === 'temperature' && value < -273.15) return `${value} C`;
  if (MAY_BE_NEGATIVE.includes(kind)) return undefined;
  if (value < 0 && (allowNegative !== true || kind === 'ratio')) return `${value}, below nothing`;
  return value === 0 && kind !== 'share' && allowZero !== true ? 'nothing' : undefined;
}

function oddQuestion(
  kind: QuantityKind,
  options: ReadOptions,
  read: Exclude<Read<number> | Read<RatioValue>, { kind: 'one' }>,
): Verdict | undefined {
  const words = sayWhy(read.why);
  if (words.text === '' || words.hint === '' || /NaN|undefined/.test(words.text))
    return failed(`${read.why.reason} is not said: ${words.text}`);
  if (read.kind === 'error') return undefined;
  for (const { value } of read.readings)
    for (const number of numbersOf(value)) {
      const odd = oddNumber(kind, options, number);
      if (odd !== undefined) return failed(`asks about ${odd}`);
    }
  return undefined;
}

function oddValue(
  text: string,
  kind: QuantityKind,
  options: ReadOptions,
  { value, readback }: { value: number | RatioValue; readback: string },
): Verdict | undefined {
  for (const number of numbersOf(value)) {
    const odd = oddNumber(kind, options, number);
    if (odd !== undefined) return failed(`reads ${odd}`);
  }
  if (readback === '' || /NaN|undefined|Infinity/.test(readback)) return failed(`reads back ${readback}`);
  if (typeof value !== 'number' || kind === 'ratio') return undefined;
  return oddReadback(kind, value) ?? unlikeStrict(text, kind, options, value);
}

/** What is printed must be read again, and then be printed the same. */
function oddReadback(kind: ScalarKind, value: number): Verdict | undefined {
  if (kind === 'overpack') return undefined;
  for (const show of ['metric', 'us'] as const) {
    if (show === 'us' && kind === 'temperatureDifference') continue;
    const printed = formatQuantity(kind, value, show);
    const again = readQuantity(printed, kind, { allowZero: true, allowNegative: true });
    const read =
      again.kind === 'one' ? again.value : again.kind === 'ask' ? again.readings[0]?.value : undefined;
    if (read === undefined) return failed(`prints ${printed}, which is refused: ${JSON.stringify(again)}`);
    if (formatQuantity(kind, read, show) !== printed)
      return failed(`prints ${printed}, reads that and prints ${formatQuantity(kind, read, show)}`);
    if (Math.abs(read - value) > 0.01 * Math.abs(value) + roundedBy(kind, value)[show])
      return failed(`prints ${printed} of ${value}, reads that as ${read}`);
  }
  return undefined;
}

/** What printing may take off or add, in the unit inside: half of the last digit of `format.ts`. Of shares and viscosities three digits count. */
function roundedBy(kind: ScalarKind, value: number): { metric: number; us: number } {
  const size = Math.abs(value);
  if (kind === 'length') return { metric: size < 10 ? 0.005 : 0.05, us: 0.127 };
  if (kind === 'mass') return { metric: size < 10 ? 0.005 : 0.05, us: size < 28.3 ? 0.015 : 1.42 };
  if (kind === 'volume')
    return { metric: size < 100 ? 0.05 : 0.5, us: size < 29.5 ? 0.015 : size < 3785 ? 1.48 : 19 };
  if (kind === 'density') return { metric: size < 1000 ? 0.05 : 0.5, us: 0.081 };
  if (kind === 'pressure') return { metric: 0.005, us: 0.035 };
  if (kind === 'packFactor') return { metric: 0.005, us: 0.005 };
  return kind === 'temperature' || kind === 'temperatureDifference'
    ? { metric: 0.05, us: 0.05 }
    : { metric: 0, us: 0 };
}

/** Millimeters, grams and so on of the units a bare number may stand in (NIST SP 811, appendix B). */
const FACTORS: Readonly<Record<string, number>> = {
  ...{ mm: 1, cm: 10, in: 25.4, ft: 304.8, g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237, cm3: 1, L: 1000 },
  ...{
    'fl oz': 29.5735295625,
    'kg/m3': 1,
    'lb/ft3': 16.01846337396014,
    C: 1,
    K: 1,
    kPa: 1,
    psi: 6.894757293168361,
  },
  ...{ 'Pa s': 1, cP: 0.001, '%': 0.01 },
};

/** A bare number has the value that a strict reader of decimals gives it, and only where that has one. */
function unlikeStrict(
  text: string,
  kind: ScalarKind,
  { bareUnit }: ReadOptions,
  value: number,
): Verdict | undefined {
  // An apostrophe that no digit follows is the mark of feet.
  if (!/^[\d.,'+\- ]+$/.test(text) || /'(?!\d)/.test(text)) return undefined;
  const strict = strictNumber(text);
  if (strict.length !== 1)
    return failed(`reads ${value} where a number has ${strict.length} meanings: ${strict.join()}`);
  const factor = bareUnit === undefined ? 1 : FACTORS[bareUnit];
  if (factor === undefined || (bareUnit === 'F' && kind !== 'plain')) return undefined;
  const unit = kind === 'plain' || kind === 'packFactor' ? 1 : factor;
  return Math.abs(value - strict[0]! * unit) <= 1e-12 * Math.abs(value)
    ? undefined
    : failed(`reads ${value}, the strict reader ${strict[0]! * unit}`);
}
