import type { ReactNode } from 'react';
import type { PourGroup, PourOnPage } from '../../worker/pour';
import { fieldOf } from '../batch/fieldProblem';
import type { BatchProps } from '../batch/batchProps';
import { Complaint } from '../parts/Complaint';
import { fieldId } from '../parts/fieldId';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { Working } from '../parts/Working';
import { unreadOfPart, type PourPart } from '../ticket/pourWishes';
import { KeptDisclosure } from './KeptDisclosure';
import { SumOf } from './SumOf';
import type { SumPart } from './sums';
import { fieldWords } from '../words/fieldWords';

interface PartQuestionProps {
  of: BatchProps;
  ask: string;
  /** Whose boxes it hangs on, and under which name a refusal of it comes back. */
  part?: PourPart;
  group?: PourGroup;
  /** What is being worked out, for the time it is. */
  what: string;
  tall?: boolean;
  answer: (pour: PourOnPage) => ReactNode;
  because?: (pour: PourOnPage | undefined) => ReactNode;
  /** Whose figures are opened, and what else belongs to their sum. */
  sum?: SumPart;
  sumMore?: (pour: PourOnPage) => ReactNode;
  /** Something else to open. */
  more?: { title: string; of: (pour: PourOnPage) => ReactNode };
  children?: ReactNode;
}

/** A question of the pour: its answer only where all it hangs on is as typed now; else why there is none. */
export function PartQuestion({
  of,
  ask,
  part,
  group,
  what,
  tall = false,
  answer,
  because,
  sum,
  sumMore,
  more,
  children,
}: PartQuestionProps) {
  const { no, mark, ticket, pour } = of;
  const unread = part === undefined ? undefined : unreadOfPart(ticket, part);
  const problem = group === undefined ? undefined : pour.answer?.refused[group];
  const stopped = unread ?? (problem === undefined ? undefined : fieldOf(problem));
  const held = stopped === undefined && problem === undefined ? pour.answer : undefined;
  return (
    <Question
      no={no}
      mark={mark}
      ask={ask}
      busy={pour.state === 'working'}
      answer={
        pour.state === 'working' ? (
          <Working what={what} tall={tall} />
        ) : held !== undefined ? (
          answer(held)
        ) : (
          <Verdict>
            {stopped === undefined && problem === undefined ? 'No batch yet' : 'Not worked out'}
          </Verdict>
        )
      }
      because={
        stopped === undefined ? (
          because?.(held)
        ) : (
          <>
            One field has to be put right:{' '}
            <a className="act" href={`#${fieldId(stopped)}`}>
              {fieldWords(stopped)}
            </a>
          </>
        )
      }
      change={
        <>
          {sum !== undefined && (
            <SumOf
              pour={held === undefined && pour.state !== 'working' ? { state: 'open' } : pour}
              part={sum}
            >
              {held !== undefined && sumMore?.(held)}
            </SumOf>
          )}
          {more !== undefined && (
            <KeptDisclosure title={more.title} isWorking={pour.state === 'working'}>
              {held !== undefined && more.of(held)}
            </KeptDisclosure>
          )}
        </>
      }
    >
      {problem !== undefined && stopped === undefined && <Complaint problem={problem} />}
      {children}
    </Question>
  );
}
