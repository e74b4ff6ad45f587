import type { Step } from '../route';
import type { StepMark } from '../ticket/steps';
import type { Nav } from '../useRoute';
import { Link } from './Link';
import { MarkShape, type Mark } from './StatusMark';

/** A step is open, needs a look, or is ready. */
const WORDS: Record<Mark, string> = {
  open: 'open',
  unknown: 'needs a look',
  look: 'needs a look',
  stop: 'needs a look',
  fine: 'ready',
};

interface RailProps {
  steps: readonly StepMark[];
  at: Step;
  nav: Nav;
  piece: string;
  /** Whether what is said is kept. */
  kept: string;
}

export function Rail({ steps, at, nav, piece, kept }: RailProps) {
  return (
    <nav className="stub" aria-label="Ticket">
      <div className="top">
        <p className="shop">
          <Link nav={nav} to={{ at: 'shelf' }} className="act">
            Back to the Shelf
          </Link>
        </p>
        <ol className="rail">
          {steps.map(({ step, name, mark }) => (
            <li key={step}>
              <Link nav={nav} to={{ at: step, piece }} current={at === step}>
                <MarkShape mark={mark} />
                <span className="nm">{name}</span>
                <span className="st">{WORDS[mark]}</span>
              </Link>
            </li>
          ))}
        </ol>
        <p className="kept">{kept}</p>
      </div>
    </nav>
  );
}
