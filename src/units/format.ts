import {
  CM3_PER_FL_OZ,
  CM3_PER_GAL,
  G_PER_LB,
  G_PER_OZ,
  KG_M3_PER_LB_FT3,
  KPA_PER_PSI,
  MM_PER_IN,
} from './constants';
import type { QuantityKind, RatioValue, ScalarKind } from './kinds';

export type Show = 'metric' | 'us' | 'both';

/**
 * A quantity in words and both systems: `264 mm (10.39 in)`, `500 g (1 lb 1.6 oz)`. The value is in the inside unit of
 * its kind. Thousands stand apart by a narrow no-break space, never by a comma.
 */
export function formatQuantity(kind: ScalarKind, value: number, show: Show = 'both'): string {
  const [metric, us] = FORMATS[kind](value);
  if (us === undefined || show === 'metric') return metric;
  return show === 'us' ? us : `${metric} (${us})`;
}

export const formatLength = (valueMm: number, show?: Show): string => formatQuantity('length', valueMm, show);
export const formatMass = (valueG: number, show?: Show): string => formatQuantity('mass', valueG, show);
export const formatVolume = (valueCm3: number, show?: Show): string =>
  formatQuantity('volume', valueCm3, show);
export const formatDensity = (valueKgM3: number, show?: Show): string =>
  formatQuantity('density', valueKgM3, show);
export const formatTemperature = (valueC: number, show?: Show): string =>
  formatQuantity('temperature', valueC, show);

/** `5 020 to 5 380 cm³ (1.33 to 1.42 gal)`: both ends in the unit that suits the high one. */
export function formatVolumeRange(lowCm3: number, highCm3: number, show: Show = 'both'): string {
  const metric = rangeText(lowCm3, highCm3, 'cm³');
  const us =
    highCm3 < CM3_PER_GAL
      ? rangeText(lowCm3 / CM3_PER_FL_OZ, highCm3 / CM3_PER_FL_OZ, 'fl oz')
      : rangeText(lowCm3 / CM3_PER_GAL, highCm3 / CM3_PER_GAL, 'gal');
  return show === 'us' ? us : show === 'metric' ? metric : `${metric} (${us})`;
}

/** `98.8 cm² (15.3 sq in)`. */
export function formatArea(areaCm2: number, show: Show = 'both'): string {
  const metric = `${digits(areaCm2, 4)} cm²`;
  const us = `${digits(areaCm2 / (MM_PER_IN / 10) ** 2, 4)} sq in`;
  return show === 'us' ? us : show === 'metric' ? metric : `${metric} (${us})`;
}

/** `52:100`, A first. */
export const formatRatio = (ratio: RatioValue): string => `${numberText(ratio.a)}:${numberText(ratio.b)}`;

/** `1 %`, `0.5 %`: three significant digits at most. */
export const formatShare = (share: number): string => `${Number((100 * share).toPrecision(3))} %`;

/**
 * Grams as the scale shows them, without the unit: as many decimals as its step has. The step of an ounce scale is no round
 * figure in grams: then one decimal.
 */
export function gramsText(massG: number, stepG: number): string {
  const decimals = decimalsOf(stepG);
  return grouped(massG.toFixed(decimals > MOST_DECIMALS ? 1 : decimals));
}

/** The same with its unit, and with what an ounce scale shows. */
export function formatGrams(massG: number, stepG: number): string {
  const text = `${gramsText(massG, stepG)} g`;
  if (decimalsOf(stepG) <= MOST_DECIMALS) return text;
  const ounceDecimals = Math.min(MOST_DECIMALS, decimalsOf(Number((stepG / G_PER_OZ).toPrecision(9))));
  return `${text} (${(massG / G_PER_OZ).toFixed(ounceDecimals)} oz)`;
}

/** A scale of a workshop shows no finer than a milligram. */
const MOST_DECIMALS = 3;

/** A number without unit, without trailing zeros and without separators. */
export function numberText(value: number): string {
  return String(Number(value.toPrecision(12)));
}

/** Decimals needed to write a step: 0.05 -> 2, 1 -> 0. */
export function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 12; decimals += 1) {
    const shifted = step * 10 ** decimals;
    if (Math.abs(shifted - Math.round(shifted)) <= 1e-9 * shifted) return decimals;
  }
  return 12;
}

/** Any quantity as text in both systems, a ratio as A:B. */
export function readbackOf(kind: QuantityKind, value: number | RatioValue): string {
  if (typeof value === 'object') return formatRatio(value);
  return kind === 'ratio' ? numberText(value) : formatQuantity(kind, value);
}

type Formatter = (value: number) => [metric: string, us?: string];

const FORMATS: Readonly<Record<ScalarKind, Formatter>> = {
  length: (mm) => [`${upTo(mm, Math.abs(mm) < 10 ? 2 : 1)} mm`, `${(mm / MM_PER_IN).toFixed(2)} in`],
  mass: (g) => [`${upTo(g, Math.abs(g) < 10 ? 2 : 1)} g`, poundsAndOunces(g)],
  volume: (cm3) => [`${upTo(cm3, Math.abs(cm3) < 100 ? 1 : 0)} cm³`, usVolume(cm3)],
  density: (kgM3) => [
    `${kgM3 < 1000 ? kgM3.toFixed(1) : upTo(kgM3, 0)} kg/m³`,
    `${(kgM3 / KG_M3_PER_LB_FT3).toFixed(2)} lb/ft³`,
  ],
  temperature: (c) => [`${upTo(c, 1)} °C`, `${upTo(1.8 * c + 32, 1)} °F`],
  temperatureDifference: (k) => [`${upTo(k, 1)} K`, `${upTo(1.8 * k, 1)} °F of difference`],
  pressure: (kpa) => [`${upTo(kpa, 2)} kPa`, `${(kpa / KPA_PER_PSI).toFixed(2)} psi`],
  viscosity: (paS) => [`${digits(paS, 3)} Pa s`, `${digits(1000 * paS, 3)} cP`],
  share: (share) => [formatShare(share)],
  packFactor: (factor) => [factor.toFixed(2)],
  overpack: (share) => [`${upTo(100 * share, 1)} % of the minimum fill`],
  plain: (value) => [numberText(value)],
};

/** At most so many decimals, no trailing zeros, never "-0". */
const upTo = (value: number, decimals: number): string =>
  grouped(String(Number(value.toFixed(decimals)) + 0));

const rangeText = (low: number, high: number, unit: string): string =>
  `${digits(low, 5)} to ${digits(high, 5)} ${unit}`;

/** So many digits that count, but whole numbers whole; never an exponent. */
const digits = (value: number, count: number): string =>
  upTo(
    value,
    value === 0 ? 0 : Math.min(6, Math.max(0, count - 1 - Math.floor(Math.log10(Math.abs(value))))),
  );

/** Thousands apart by a narrow no-break space. */
function grouped(digits: string): string {
  const [whole = '', fraction] = digits.split('.');
  const thousands = whole.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  return fraction === undefined ? thousands : `${thousands}.${fraction}`;
}

function poundsAndOunces(massG: number): string {
  const tenths = Math.round((10 * Math.abs(massG)) / G_PER_OZ);
  const sign = massG < 0 && tenths > 0 ? '-' : '';
  const ounces = (tenths % 160) / 10;
  if (Math.abs(massG) < G_PER_LB && tenths < 160)
    return Math.abs(massG) < G_PER_OZ ? `${upTo(massG / G_PER_OZ, 3)} oz` : `${sign}${upTo(ounces, 1)} oz`;
  const pounds = Math.floor(tenths / 160);
  return ounces === 0 ? `${sign}${upTo(pounds, 0)} lb` : `${sign}${upTo(pounds, 0)} lb ${upTo(ounces, 1)} oz`;
}

function usVolume(cm3: number): string {
  const ounces = cm3 / CM3_PER_FL_OZ;
  if (Math.abs(ounces) < 1) return `${upTo(ounces, 3)} fl oz`;
  return Math.abs(cm3) < CM3_PER_GAL ? `${ounces.toFixed(1)} fl oz` : `${(cm3 / CM3_PER_GAL).toFixed(2)} gal`;
}
