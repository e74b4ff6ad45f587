import type { ShopCore } from '../../store';
import { FIELD_NAMES, specOf, type FieldName, type FieldText } from './fields';
import { typedText } from './typedText';
import { newWords, type Words } from './words';

/** The words that a new piece begins with: the unit the shop chose last in each box, its scale and the air of its place. */
export function shopWords({ settings, scale }: Pick<ShopCore, 'settings' | 'scale'>): Words {
  const words = newWords();
  const fields: Record<string, FieldText> = { ...words.fields };
  for (const name of FIELD_NAMES) {
    const unit = settings?.units?.[name];
    if (unit !== undefined && isUnitOf(name, unit)) fields[name] = { text: '', unit };
  }
  for (const [name, massG] of [
    ['scaleStep', scale?.stepG],
    ['scaleMost', scale?.maxG],
  ] as const)
    if (massG !== undefined) fields[name] = typedText(specOf(name), massG);
  if (settings?.altitude !== undefined) fields.altitude = { ...settings.altitude };
  if (settings?.station !== undefined) fields.station = { ...settings.station };
  return { ...words, fields: fields as Words['fields'] };
}

const isUnitOf = (name: FieldName, unit: string): boolean => specOf(name).units.includes(unit);
