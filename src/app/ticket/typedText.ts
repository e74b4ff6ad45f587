import { G_PER_LB, G_PER_OZ, KG_M3_PER_LB_FT3, numberText } from '../../units';
import type { FieldSpec } from './fieldSpec';

/**
 * A value as someone would type it into a box: in the unit that writes it shortest, the first of the box's units where two are
 * as short. 96.11 kg/m3 on a card came from 6 lb/ft3, and reads back as that.
 */
export function typedText({ units }: FieldSpec, value: number | undefined): { text: string; unit: string } {
  const first = units[0] ?? '';
  if (value === undefined) return { text: '', unit: first };
  const ways = (units.length === 0 ? [''] : units).flatMap((unit) => {
    const per = INSIDE_PER[unit];
    return per === undefined ? [] : [{ text: numberText(value / per), unit }];
  });
  if (ways.length === 0) throw new Error(`typedText: expected a unit with a factor, got ${units.join(', ')}`);
  return ways.reduce((best, way) => (way.text.length < best.text.length ? way : best));
}

/** Inside units in one of these. A degree F is none: it has a zero of its own. */
const INSIDE_PER: Readonly<Record<string, number>> = {
  '': 1,
  'kg/m3': 1,
  'g/cm3': 1000,
  'g/mL': 1000,
  'lb/ft3': KG_M3_PER_LB_FT3,
  g: 1,
  kg: 1000,
  oz: G_PER_OZ,
  lb: G_PER_LB,
  C: 1,
  '%': 0.01,
};
