import type { LearnedBook } from '../../job/book';
import { LEARN_RULES } from '../../yield';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { Choices } from '../parts/Choices';
import { taughtWords } from '../words/bookLearned';
import { CHANCE_WORDS } from '../words/bookPage';
import type { BookProps } from './bookProps';
import { FillBatches } from './FillBatches';
import { FreeRises } from './FreeRises';
import { Keeps } from './Keeps';
import { LeftOutList } from './LeftOutList';
import { MoldAgainstScan } from './MoldAgainstScan';
import { MoldLives } from './MoldLives';
import { Residue } from './Residue';
import type { LearnedNow } from './useLearned';

interface LearnedQuestionProps extends BookProps {
  now: LearnedNow;
  chance: number;
  onChance: (chance: number) => void;
}

/** What have the pours taught us? */
export function LearnedQuestion({ book, no, now, chance, onChance }: LearnedQuestionProps) {
  const learned = now.state === 'answered' ? now.learned : undefined;
  return (
    <Question
      no={no}
      mark={learned === undefined ? 'open' : markOf(learned)}
      ask="What have the pours taught us?"
      busy={now.state === 'working'}
      answer={<Verdict>{answerOf(now)}</Verdict>}
    >
      {learned !== undefined && (
        <>
          <Residue learned={learned} pours={book.pours} />
          <div className="taught">
            <FreeRises learned={learned} />
            <MoldAgainstScan book={book} />
            <Keeps learned={learned} />
          </div>
          <FillBatches learned={learned} book={book}>
            <Choices
              legend="Wanted chance that it fills"
              name="fillChance"
              value={String(chance)}
              options={CHANCE_WORDS}
              onChoose={(value) => onChance(Number(value))}
            />
          </FillBatches>
          <MoldLives book={book} />
          <LeftOutList learned={learned} />
        </>
      )}
    </Question>
  );
}

function markOf({ residue, foams }: LearnedBook): 'open' | 'fine' | 'look' {
  if (foams.some(({ fill }) => fill?.atOdds === true)) return 'look';
  return residue.pours < LEARN_RULES.leastPours.value ? 'open' : 'fine';
}

function answerOf(now: LearnedNow): string {
  if (now.state === 'working') return 'working out …';
  if (now.state === 'failed') return 'It could not be worked out: load the page again.';
  return taughtWords(now.learned.residue);
}
