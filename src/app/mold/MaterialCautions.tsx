import { CautionList } from '../parts/CautionList';
import { cautionsAt, type CautionPlace } from '../../words/moldPartWords';

/** The cautions of these materials, beside them, never folded away. Nothing where there is no material. */
export function MaterialCautions({
  of,
  places,
  keys,
}: {
  of: string;
  places: readonly CautionPlace[];
  keys: readonly string[];
}) {
  const cautions = places.flatMap((place) => cautionsAt(place, keys));
  return <CautionList of={of} cautions={cautions} />;
}
