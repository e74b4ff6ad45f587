import type { Problem } from '../../problem';
import type { AskProps } from '../measure/askProps';
import type { FieldName } from '../ticket/fields';
import type { Bench } from '../ticket/useEngine';
import { ErrorSummary } from '../parts/ErrorSummary';
import { cardOf, FIELDS_OF_BATCH } from '../ticket/wishes';
import { batchProblems } from './batchProblems';
import { batchMarks } from './marks';
import { ChecksQuestion } from './ChecksQuestion';
import { fieldOf } from './fieldProblem';
import { FoamQuestion } from './FoamQuestion';
import { LossQuestion } from './LossQuestion';
import { PackQuestion } from './PackQuestion';
import { WeighQuestion } from './WeighQuestion';

const QUESTIONS = [FoamQuestion, PackQuestion, LossQuestion, WeighQuestion, ChecksQuestion];

export function Batch({ ticket, dispatch, bench }: Omit<AskProps, 'mark'> & { bench: Bench }) {
  const card = cardOf(ticket);
  const problems = batchProblems(ticket, card);
  const problemOf = (field: FieldName): Problem | undefined =>
    problems.find((problem) => fieldOf(problem) === field);
  const marks = batchMarks(ticket, card);
  return (
    <section className="part" id="batch" aria-labelledby="batch-title" tabIndex={-1}>
      <h2 id="batch-title" tabIndex={-1}>
        Batch
      </h2>
      <ErrorSummary ticket={ticket} names={FIELDS_OF_BATCH} problemOf={problemOf} />
      {QUESTIONS.map((Ask, i) => (
        <Ask key={i} {...{ ticket, dispatch, card, problemOf, bench }} mark={marks[i] ?? 'open'} />
      ))}
    </section>
  );
}
