import { cautionsFor, type MaterialCaution } from './materialCautions';
import { amount } from './sentence';
import type { KitCover } from '../yield';

/** Which material of a mold a caution belongs to; it stands directly under the line of that one. */
export type CautionPlace =
  'first' | 'silicone' | 'clay' | 'jacket' | 'vacuum' | 'weight' | 'cavity' | 'finish';

const PLACES: Readonly<Record<MaterialCaution['key'], CautionPlace>> = {
  first: 'first',
  clay: 'clay',
  'condensation-silicone': 'silicone',
  'addition-silicone': 'silicone',
  'silica-dust': 'silicone',
  'plaster-heat': 'jacket',
  'plaster-dust': 'jacket',
  'polyester-styrene': 'jacket',
  'polyester-catalyst': 'jacket',
  'glass-dust': 'jacket',
  'putty-skin': 'jacket',
  'vacuum-pot': 'vacuum',
  'heavy-lift': 'weight',
  'hot-mold': 'cavity',
  straps: 'cavity',
  solvents: 'finish',
};

/** The cautions of these keys that belong to one place, in the order of the list. */
export const cautionsAt = (place: CautionPlace, keys: readonly string[]): MaterialCaution[] =>
  cautionsFor(keys).filter(({ key }) => PLACES[key] === place);

/** "2 kits of 5.5 kg and 1 of 1.1 kg, 12.1 kg in all for 290, 0.4 kg of it left over". */
export function kitsWords({ kits, totalKg, surplusKg, price }: KitCover): string {
  const each = kits.map(
    ({ massKg, count }, n) =>
      `${count} ${n > 0 ? '' : count === 1 ? 'kit ' : 'kits '}of ${amount(massKg)} kg`,
  );
  const all = each.length > 1 || kits[0]!.count > 1 ? `, ${amount(totalKg)} kg in all` : '';
  const paid = price === undefined ? '' : ` for ${amount(price, 9)}`;
  return `${each.join(' and ')}${all}${paid}, ${amount(surplusKg, 3)} kg of it left over`;
}

/** "2 x 5.5 + 1 x 1.1 kg", for a table. */
export const kitsShort = ({ kits }: KitCover): string =>
  `${kits.map(({ massKg, count }) => `${count} x ${amount(massKg)}`).join(' + ')} kg`;
