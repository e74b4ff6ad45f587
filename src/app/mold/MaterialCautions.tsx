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
  if (cautions.length === 0) return null;
  return (
    <section className="cautions wide" aria-label={`Cautions: ${of}`}>
      <ul>
        {cautions.map(({ key, when, what, from }) => (
          <li key={key}>
            <b>{when}</b>{' '}
            <span>
              {what} <small className="where">{from}</small>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
