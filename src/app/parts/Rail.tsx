import type { Saving } from '../../store';
import type { Step } from '../route';
import type { StepMark } from '../ticket/steps';
import type { Way } from '../useRoute';
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

const KEPT: Record<Saving['state'], string> = {
  kept: 'All is kept.',
  keeping: 'Being kept …',
  failed: 'The last change is not kept.',
};

interface RailProps {
  steps: readonly StepMark[];
  at: Step;
  way: Way;
  piece: string;
  kept: Saving;
}

export function Rail({ steps, at, way, piece, kept }: RailProps) {
  return (
    <nav className="stub" aria-label="Ticket">
      <div className="top">
        <p className="shop">
          <Link way={way} to={{ at: 'shelf' }} className="act">
            Back to the Shelf
          </Link>
        </p>
        <ol className="rail">
          {steps.map(({ step, name, mark }) => (
            <li key={step}>
              <Link way={way} to={{ at: step, piece }} current={at === step}>
                <MarkShape mark={mark} />
                <span className="nm">{name}</span>
                <span className="st">{WORDS[mark]}</span>
              </Link>
            </li>
          ))}
        </ol>
        <p className="kept">{KEPT[kept.state]}</p>
      </div>
    </nav>
  );
}
