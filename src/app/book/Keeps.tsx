import type { LearnedBook } from '../../job/book';
import { LEARN_RULES } from '../../yield';
import { percent } from '../../words/sentence';
import { cannotTell, isKeptKnown, keepsWords } from '../words/bookLearned';
import { LearnedTag } from './LearnedTag';

/** How much of the overpack an opening keeps, of every foam. */
export const Keeps = ({ learned: { keeps } }: { learned: LearnedBook }) => (
  <>
    {(['plug', 'open'] as const).map((opening) => {
      const kept = keeps.find((one) => one.opening === opening);
      return (
        <div key={opening}>
          <h3>Overpack kept by {opening === 'plug' ? 'a plug' : 'an open neck'}</h3>
          {kept !== undefined && isKeptKnown(kept) ? (
            <>
              <p className="ans">
                <span className="fig s">{percent(kept.keptShare.value)}</span>
                <LearnedTag from="learned" count={kept.pours} />
              </p>
              <p className="note">{keepsWords(kept)}</p>
            </>
          ) : (
            <p className="note">
              {cannotTell(kept?.pours ?? 0, LEARN_RULES.leastPours.value, 'full pour')} with a weighed trim.
            </p>
          )}
        </div>
      );
    })}
  </>
);
