import { MarkShape, type Mark } from './StatusMark';
import { usePartInView } from './usePartInView';

export interface Step {
  id: string;
  name: string;
  mark: Mark;
}

/** A step is open, needs a look, or is ready. */
const WORDS: Record<Mark, string> = {
  open: 'open',
  unknown: 'needs a look',
  look: 'needs a look',
  stop: 'needs a look',
  fine: 'ready',
};

export function Rail({ steps }: { steps: readonly Step[] }) {
  const current = usePartInView(steps.map(({ id }) => id));
  return (
    <nav className="stub" aria-label="Ticket">
      <div className="top">
        <p className="shop">Risewright</p>
        <ol className="rail">
          {steps.map(({ id, name, mark }) => (
            <li key={id}>
              <a href={`#${id}`} aria-current={current === id ? 'step' : undefined}>
                <MarkShape mark={mark} />
                <span className="nm">{name}</span>
                <span className="st">{WORDS[mark]}</span>
              </a>
            </li>
          ))}
        </ol>
      </div>
    </nav>
  );
}
