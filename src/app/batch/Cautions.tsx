import { POUR_CAUTIONS } from '../../words/cautions';

/** What hurts people, in the words that the command line uses too. Never folded away. */
export function Cautions() {
  return (
    <section className="cautions" aria-label="Cautions">
      <ul>
        {POUR_CAUTIONS.map(({ when, what }) => (
          <li key={when}>
            <b>{when}</b> <span>{what}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
