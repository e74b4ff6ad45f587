import type { Assumption } from '../estimate';
import { amount, percent } from './sentence';

/** What was taken for granted, as a person reads it: "residue: 30 g", "doubt of the free rise: 8 %". */
export function assumptionWords({ name, value, unit }: Assumption): string {
  const subject = name
    .replace(/_(kg_m3|cm3|g)$/, '')
    .replace(/^u_/, 'doubt of the ')
    .replace('min_fill', 'minimum-fill density')
    .replace(/_/g, ' ');
  const isShare = unit === '' && typeof value === 'number' && value < 1;
  return `${subject}: ${isShare ? percent(value) : `${amount(value)}${unit === '' ? '' : ` ${unit.replace('m3', 'm\u00b3')}`}`}`;
}
