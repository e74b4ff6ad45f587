import { ratioSentenceParts } from '../../yield';
import { ratioSentence } from '../../words/yieldWords';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { chanceWords } from '../../words/chance';
import { gramsText } from '../../units';
import type { BatchProps } from './batchProps';
import { GramFigures } from './GramFigures';
import { PourSum } from './PourSum';

export function WeighQuestion({ ticket, mark, card }: BatchProps) {
  const { pour, size } = ticket;
  const answer = pour.answer;
  if (answer === undefined) {
    const missing = [
      ...(size.answer === undefined ? ['the volume from Measure'] : []),
      ...(card?.ok === true ? [] : ['a foam']),
    ];
    return (
      <Question
        no={4}
        mark={mark}
        ask="What do we weigh?"
        busy={pour.state === 'running'}
        answer={<Verdict>No grams yet</Verdict>}
        because={
          missing.length === 0
            ? 'A field above waits for its meaning.'
            : `Still missing: ${missing.join(' and ')}.`
        }
      >
        {pour.problem !== undefined && <Complaint problem={pour.problem} />}
        {pour.state === 'failed' && <p className="note">A fault of ours: {pour.message}</p>}
      </Question>
    );
  }
  const { batch, cavityCm3 } = answer;
  const [low, high] = batch.mixedRangeG;
  const stale = pour.state === 'running' || size.state === 'running';
  return (
    <Question
      no={4}
      mark={mark}
      ask="What do we weigh?"
      busy={stale}
      answer={
        <>
          <Figure value={gramsText(batch.totalG, batch.stepG)} unit="g" />
          <span className="rng">
            {gramsText(low, batch.stepG)} to {gramsText(high, batch.stepG)} g would do it, 9 times in 10
          </span>
          <SourceTag from={cavityCm3.from} />
          {card?.ok === true && <SourceTag from={card.value.freeRiseFrom} />}
          <SourceTag from={batch.packFrom} />
        </>
      }
      change={
        <Disclosure>
          <PourSum pour={answer} />
        </Disclosure>
      }
    >
      <GramFigures batch={batch} />
      <p className="why">{ratioSentence(ratioSentenceParts(batch))}</p>
      <p className="why">
        The chance of a short fill is <b>{chanceWords(batch.shortFillChance)}</b>.
      </p>
    </Question>
  );
}
