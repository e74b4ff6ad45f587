import type { SavedMold } from '../../job/piece';
import { FILL_FIELDS } from './sizingFields';

/** A mold as another is begun from it: the water was weighed in this one alone. */
export function withoutFill(mold: SavedMold): SavedMold {
  const { filling: _filling, ...choices } = mold.choices;
  const isOfFill = (name: string): boolean => FILL_FIELDS.some((one) => one === name);
  return {
    ...mold,
    fields: Object.fromEntries(Object.entries(mold.fields).filter(([name]) => !isOfFill(name))),
    choices,
  };
}
