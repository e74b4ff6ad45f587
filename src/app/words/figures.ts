import { decimalsOf } from '../../units';

/** Grams as the scale shows them, without the unit: thousands apart by a thin space. */
export function gramsText(massG: number, stepG: number): string {
  const [whole = '', fraction] = massG.toFixed(decimalsOf(stepG)).split('.');
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u2009') : whole;
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
