import {
  CM3_PER_FL_OZ,
  CM3_PER_FT3,
  CM3_PER_GAL,
  CM3_PER_IN3,
  G_PER_LB,
  G_PER_OZ,
  KELVIN_AT_0_C,
  KG_M3_PER_LB_FT3,
  KPA_PER_PSI,
  MM_PER_FT,
  MM_PER_IN,
} from './constants';
import type { ScalarKind } from './kinds';

/** inside = typed x factor + offset. `shown` is how the unit is spelled back. */
export interface Unit {
  shown: string;
  factor: number;
  offset: number;
}

/**
 * The unit of that spelling among the units of a kind, or undefined. The spelling is compared in lower case without
 * `^`, full stop or degree sign and with a space for a raised dot, so `ft^3`, `Fl. oz.` and `72 °F` are found.
 */
export function findUnit(kind: ScalarKind, spelling: string): Unit | undefined {
  const name = tidy(spelling);
  const found = TABLE[kind].get(name);
  return found ?? (kind === 'density' ? perVolume(name) : undefined);
}

/** The kinds that own a unit of that spelling, in the order of the table. */
export function kindsOfUnit(spelling: string): ScalarKind[] {
  return (Object.keys(TABLE) as ScalarKind[]).filter((kind) => findUnit(kind, spelling) !== undefined);
}

/** The units offered when a number came without one. */
export const OFFERED_UNITS: Readonly<Record<ScalarKind, readonly string[]>> = {
  length: ['mm', 'cm', 'in'],
  mass: ['g', 'kg', 'oz', 'lb'],
  volume: ['cm3', 'L', 'fl oz'],
  density: ['kg/m3', 'g/cm3', 'lb/ft3'],
  temperature: ['C', 'F'],
  temperatureDifference: ['K', 'F'],
  pressure: ['kPa', 'hPa', 'psi'],
  viscosity: ['Pa s', 'mPa s', 'cP'],
  share: [],
  packFactor: [],
  overpack: [],
  plain: [],
};

function tidy(spelling: string): string {
  const plain = spelling
    .toLowerCase()
    .replaceAll('^', '')
    .replaceAll('.', '')
    .replaceAll('°', '')
    .replaceAll('·', ' ')
    .trim();
  const words = plain.split(' ').filter((word) => word !== '');
  return words.join(' ').replaceAll(' /', '/').replaceAll('/ ', '/');
}

/** Any mass over any volume: lb/ft3, g/cu in, oz/gal. g/cm3 is 1000 kg/m3. */
function perVolume(name: string): Unit | undefined {
  const slash = name.indexOf('/');
  if (slash < 0) return undefined;
  const mass = TABLE.mass.get(name.slice(0, slash));
  const volume = TABLE.volume.get(name.slice(slash + 1));
  if (mass === undefined || volume === undefined) return undefined;
  return { shown: `${mass.shown}/${volume.shown}`, factor: (1000 * mass.factor) / volume.factor, offset: 0 };
}

function units(
  rows: readonly (readonly [spellings: string, factor: number, offset?: number])[],
): Map<string, Unit> {
  const table = new Map<string, Unit>();
  for (const [spellings, factor, offset = 0] of rows) {
    const names = spellings.split('|');
    const shown = names[0] ?? '';
    for (const name of names) table.set(name.toLowerCase(), { shown, factor, offset });
  }
  return table;
}

const NONE: Map<string, Unit> = new Map();

/** Conventional mercury column: 133.322 387 415 Pa per mm at 0 C (NIST SP 811; from memory). */
const KPA_PER_MMHG = 0.133322387415;

const TABLE: Readonly<Record<ScalarKind, Map<string, Unit>>> = {
  length: units([
    ['mm|millimeter|millimeters|millimetre|millimetres', 1],
    ['cm|centimeter|centimeters|centimetre|centimetres', 10],
    ['m|meter|meters|metre|metres', 1000],
    ['in|"|inch|inches', MM_PER_IN],
    ["ft|'|foot|feet", MM_PER_FT],
  ]),
  mass: units([
    ['g|gram|grams', 1],
    ['kg|kilo|kilos|kilogram|kilograms', 1000],
    ['mg', 0.001],
    ['oz|ounce|ounces', G_PER_OZ],
    ['lb|lbs|pound|pounds', G_PER_LB],
  ]),
  volume: units([
    ['cm3|cc|cu cm', 1],
    ['mL|milliliter|milliliters|millilitre|millilitres', 1],
    ['L|liter|liters|litre|litres|dm3', 1000],
    ['m3', 1e6],
    ['mm3', 0.001],
    ['fl oz|floz|fluid ounce|fluid ounces', CM3_PER_FL_OZ],
    ['gal|gallon|gallons', CM3_PER_GAL],
    ['qt|quart|quarts', CM3_PER_GAL / 4],
    ['pt|pint|pints', CM3_PER_GAL / 8],
    ['in3|cu in|cubic inch|cubic inches', CM3_PER_IN3],
    ['ft3|cu ft|cubic foot|cubic feet', CM3_PER_FT3],
  ]),
  density: units([['lb/ft3|pcf', KG_M3_PER_LB_FT3]]),
  temperature: units([
    ['C|deg C|degC|celsius', 1],
    ['K|kelvin', 1, -KELVIN_AT_0_C],
    ['F|deg F|degF|fahrenheit', 5 / 9, -160 / 9],
  ]),
  temperatureDifference: units([
    ['K|kelvin', 1],
    ['C|deg C|degC|celsius', 1],
    ['F|deg F|degF|fahrenheit', 5 / 9],
  ]),
  pressure: units([
    ['kPa', 1],
    ['Pa', 0.001],
    ['hPa|mbar', 0.1],
    ['bar', 100],
    ['psi', KPA_PER_PSI],
    ['atm', 101.325],
    ['mmHg|mm Hg', KPA_PER_MMHG],
    ['inHg|in Hg', 25.4 * KPA_PER_MMHG],
  ]),
  // A centipoise is a millipascal second, exact.
  viscosity: units([
    ['Pa s|Pas|pascal second|pascal seconds', 1],
    ['mPa s|mPas|millipascal second|millipascal seconds', 0.001],
    ['cP|cps|centipoise', 0.001],
    ['poise', 0.1],
  ]),
  share: NONE,
  packFactor: NONE,
  overpack: NONE,
  plain: NONE,
};
