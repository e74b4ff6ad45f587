import { finding, type Outcome, type Problem } from '../../problem';
import { reversedRatio, type FoamCard } from '../../yield';
import type { AskProps } from '../measure/askProps';
import type { FieldName } from '../ticket/fields';
import { SAMPLE_CARDS } from '../ticket/sampleCards';
import type { Ticket } from '../ticket/state';
import { cardOf } from '../ticket/wishes';
import { batchMarks } from './marks';
import { ChecksQuestion } from './ChecksQuestion';
import { fieldOf } from './fieldProblem';
import { FoamQuestion } from './FoamQuestion';
import { LossQuestion } from './LossQuestion';
import { PackQuestion } from './PackQuestion';
import { WeighQuestion } from './WeighQuestion';

const QUESTIONS = [FoamQuestion, PackQuestion, LossQuestion, WeighQuestion, ChecksQuestion];

export function Batch({ ticket, dispatch }: Omit<AskProps, 'mark'>) {
  const card = cardOf(ticket);
  const problems = problemsOf(ticket, card);
  const problemOf = (field: FieldName): Problem | undefined =>
    problems.find((problem) => fieldOf(problem) === field);
  const marks = batchMarks(ticket, card);
  return (
    <section className="part" id="batch" aria-labelledby="batch-title" tabIndex={-1}>
      <h2 id="batch-title">Batch</h2>
      {QUESTIONS.map((Ask, i) => (
        <Ask key={i} {...{ ticket, dispatch, card, problemOf }} mark={marks[i] ?? 'open'} />
      ))}
    </section>
  );
}

function problemsOf(ticket: Ticket, card: Outcome<FoamCard> | undefined): Problem[] {
  const reversed = card?.ok === true ? reversedFromCard(ticket, card.value) : undefined;
  return [
    ...(card?.ok === false ? [card.problem] : []),
    ...(ticket.pour.problem === undefined ? [] : [ticket.pour.problem]),
    ...(reversed === undefined ? [] : [reversed]),
  ];
}

/** A sample card's ratio typed the other way round. */
function reversedFromCard({ foam }: Ticket, card: FoamCard): Problem | undefined {
  const texts = SAMPLE_CARDS.find(({ key }) => key === foam.sample)?.texts;
  const [a, b] = [Number(texts?.partsA?.text), Number(texts?.partsB?.text)];
  if (!reversedRatio({ ...card, ratio: { a, b, by: 'mass' } }, card.ratio)) return undefined;
  return finding('RATIO_REVERSED', 'look', { a: card.ratio.a, b: card.ratio.b, cardA: a, cardB: b });
}
