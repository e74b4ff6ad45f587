import type { ComponentType } from 'react';
import type { Problem } from '../../problem';
import type { AskProps } from '../measure/askProps';
import { ErrorSummary } from '../parts/ErrorSummary';
import { BenchQuestion } from '../pour/BenchQuestion';
import { ColorQuestion } from '../pour/ColorQuestion';
import { CupsQuestion } from '../pour/CupsQuestion';
import { DayQuestion } from '../pour/DayQuestion';
import { ForcesQuestion } from '../pour/ForcesQuestion';
import { ReadyQuestion } from '../pour/ReadyQuestion';
import { ShortQuestion } from '../pour/ShortQuestion';
import { TimesQuestion } from '../pour/TimesQuestion';
import { WarmQuestion } from '../pour/WarmQuestion';
import type { FieldName } from '../ticket/fields';
import { pourNow } from '../ticket/now';
import { fieldsOfPour } from '../ticket/pourWishes';
import { cardOf, FIELDS_OF_BATCH } from '../ticket/wishes';
import { batchProblems } from './batchProblems';
import type { BatchProps } from './batchProps';
import { fieldOf } from './fieldProblem';
import { FoamQuestion } from './FoamQuestion';
import { LossQuestion } from './LossQuestion';
import { BATCH_QUESTIONS, batchMarks, type BatchQuestion } from './marks';
import { PackQuestion } from './PackQuestion';
import { WeighQuestion } from './WeighQuestion';

const QUESTIONS: Readonly<Record<BatchQuestion, ComponentType<BatchProps>>> = {
  foam: FoamQuestion,
  pack: PackQuestion,
  losses: LossQuestion,
  day: DayQuestion,
  weigh: WeighQuestion,
  short: ShortQuestion,
  cups: CupsQuestion,
  warm: WarmQuestion,
  forces: ForcesQuestion,
  times: TimesQuestion,
  colors: ColorQuestion,
  ready: ReadyQuestion,
  bench: BenchQuestion,
};

export function Batch({
  ticket,
  dispatch,
  bench,
  piece,
}: Omit<AskProps, 'mark'> & Pick<BatchProps, 'bench' | 'piece'>) {
  const card = cardOf(ticket);
  const pour = pourNow(ticket);
  const problems = batchProblems(ticket, card);
  const problemOf = (field: FieldName): Problem | undefined =>
    problems.find((problem) => fieldOf(problem) === field);
  const marks = batchMarks(ticket, card);
  return (
    <>
      <ErrorSummary
        ticket={ticket}
        names={[...FIELDS_OF_BATCH, ...fieldsOfPour(ticket)]}
        problemOf={problemOf}
      />
      {BATCH_QUESTIONS.map((key, i) => {
        const Ask = QUESTIONS[key];
        return (
          <Ask
            key={key}
            no={i + 1}
            mark={marks[key]}
            {...{ ticket, dispatch, card, pour, problemOf, bench, piece }}
          />
        );
      })}
    </>
  );
}
