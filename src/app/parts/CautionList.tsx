import type { Caution } from '../../words/cautions';

/** Cautions beside what they are about, never folded away. Nothing where there are none. */
export function CautionList({
  of,
  cautions,
}: {
  of: string;
  cautions: readonly (Caution & { key: string; from: string })[];
}) {
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
