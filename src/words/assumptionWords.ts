import type { Assumption } from '../estimate';
import { formatDensity, formatVolume, type Show } from '../units';
import { amount, percent } from './sentence';

/** What was taken for granted, as a person reads it: "residue: 30 g", "doubt of the free rise: 8 %". */
export function assumptionWords(assumption: Assumption, show: Show = 'metric'): string {
  const subject = assumption.name
    .replace(/_(kg_m3|cm3|g)$/, '')
    .replace(/^u_/, 'doubt of the ')
    .replace('min_fill', 'minimum-fill density')
    .replace(/_/g, ' ');
  return `${subject}: ${valueWords(assumption, show)}`;
}

/** The same with where the figure comes from: "residue: 30 g (common practice, no source)". */
export function assumptionLine(assumption: Assumption & { basis?: string }, show?: Show): string {
  const words = assumptionWords(assumption, show);
  return assumption.basis === undefined ? words : `${words} (${assumption.basis})`;
}

/** Masses stay in grams, which is what the scale shows. */
function valueWords({ value, unit }: Assumption, show: Show): string {
  if (unit === '') return typeof value === 'number' && value < 1 ? percent(value) : amount(value);
  if (show === 'us' && typeof value === 'number' && unit === 'kg/m3') return formatDensity(value, show);
  if (show === 'us' && typeof value === 'number' && unit === 'cm3') return formatVolume(value, show);
  return `${amount(value)} ${unit.replace('m3', 'm\u00b3')}`;
}
