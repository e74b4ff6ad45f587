import { ratioSentenceParts } from '../../yield';
import { ratioSentence } from '../../words/yieldWords';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { chanceWords } from '../../words/chance';
import type { Pour } from '../../plan';
import { gramsText } from '../../units';
import { Fault } from '../parts/Fault';
import { Working } from '../parts/Working';
import { castingNow, pourNow, sizeNow } from '../ticket/now';
import { pourByOf } from '../ticket/moldWishes';
import { readField } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { unreadForBatch } from '../ticket/wishes';
import { rangeText } from '../words/rangeText';
import { isVolumeStopped } from './marks';
import type { BatchProps } from './batchProps';
import { FilledVolume } from './FilledVolume';
import { GramFigures, GramsToCome } from './GramFigures';
import { PourSum } from './PourSum';

const ASK = { no: 4, ask: 'What do we weigh?' };

export function WeighQuestion({ ticket, dispatch, mark, card, bench }: BatchProps) {
  const pour = pourNow(ticket);
  if (pour.state === 'working')
    return (
      <Question {...ASK} mark={mark} busy answer={<Working what="the grams" tall />}>
        <GramsToCome />
        <FilledVolume ticket={ticket} dispatch={dispatch} />
      </Question>
    );
  if (pour.answer !== undefined) return <Weighing {...{ ticket, dispatch, mark, card }} pour={pour.answer} />;
  return (
    <Question {...ASK} mark={mark} answer={<Verdict>No grams yet</Verdict>} because={whyNone(ticket, card)}>
      {pour.problem !== undefined && <Complaint problem={pour.problem} />}
      {pour.message !== undefined && <Fault message={pour.message} onAgain={bench.again} />}
      <FilledVolume ticket={ticket} dispatch={dispatch} />
    </Question>
  );
}

function Weighing({
  ticket,
  dispatch,
  mark,
  card,
  pour,
}: Pick<BatchProps, 'ticket' | 'dispatch' | 'mark' | 'card'> & { pour: Pour }) {
  const { batch, cavityCm3 } = pour;
  const [low, high] = batch.mixedRangeG;
  const text = rangeText({ value: batch.totalG, low, high }, { step: batch.stepG });
  return (
    <Question
      {...ASK}
      mark={mark}
      answer={
        <>
          <Figure value={gramsText(batch.totalG, batch.stepG)} unit="g" />
          <span className="rng">
            {text.low} to {text.high} g would do it, 9 times in 10
          </span>
          <SourceTag from={cavityCm3.from} />
          {card?.ok === true && <SourceTag from={card.value.freeRiseFrom} />}
          <SourceTag from={batch.packFrom} />
        </>
      }
      because={
        isVolumeStopped(ticket) ? 'Measure says Stop: read what is wrong with the volume first.' : undefined
      }
      change={
        <Disclosure>
          <PourSum pour={pour} />
        </Disclosure>
      }
    >
      <GramFigures batch={batch} />
      <p className="why">{ratioSentence(ratioSentenceParts(batch))}</p>
      <p className="why">
        The chance of a short fill is <b>{chanceWords(batch.shortFillChance)}</b>.
      </p>
      <FilledVolume ticket={ticket} dispatch={dispatch} />
    </Question>
  );
}

function whyNone(ticket: Ticket, card: BatchProps['card']): string | undefined {
  const reads = unreadForBatch(ticket).map((name) => readField(name, ticket.fields[name]).kind);
  if (reads.includes('ask')) return 'A field above waits for its meaning.';
  if (reads.length > 0) return 'A field above cannot be read.';
  const missing = [
    ...(sizeNow(ticket).state === 'answered' ? [] : ['the volume from Measure']),
    ...(isCavityMissing(ticket) ? ['the cavity from Mold'] : []),
    ...(card === undefined ? ['a foam'] : card.ok ? [] : ['a foam card without a mistake']),
  ];
  return missing.length === 0 ? undefined : `Still missing: ${missing.join(' and ')}.`;
}

/** The size is known, and what it leaves of the cavity is not. */
const isCavityMissing = (ticket: Ticket): boolean =>
  pourByOf(ticket) === 'cavity' &&
  sizeNow(ticket).state === 'answered' &&
  castingNow(ticket).state !== 'answered';
