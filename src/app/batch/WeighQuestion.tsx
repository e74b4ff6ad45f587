import { ratioSentenceParts } from '../../yield';
import { ratioSentence } from '../../words/yieldWords';
import { Complaint } from '../parts/Complaint';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { chanceWords } from '../../words/chance';
import type { PourOnPage } from '../../worker/pour';
import { gramsText } from '../../units';
import { Fault } from '../parts/Fault';
import { Working } from '../parts/Working';
import { castingNow, pourNow, sizeNow } from '../ticket/now';
import { pourByOf } from '../ticket/moldWishes';
import { textOf, type FieldName } from '../ticket/fields';
import { unreadOfPart } from '../ticket/pourWishes';
import { readField } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { unreadForBatch } from '../ticket/wishes';
import { rangeText } from '../words/rangeText';
import { isVolumeStopped } from './marks';
import type { BatchProps } from './batchProps';
import { FilledVolume } from './FilledVolume';
import { GramFigures, GramsToCome, type WeighedCup } from './GramFigures';
import { PourSum } from './PourSum';

const ASK = { ask: 'What do we weigh?' };

export function WeighQuestion({ no, ticket, dispatch, mark, card, bench }: BatchProps) {
  const pour = pourNow(ticket);
  if (pour.state === 'working')
    return (
      <Question {...ASK} no={no} mark={mark} busy answer={<Working what="the grams" tall />}>
        <GramsToCome />
        <FilledVolume ticket={ticket} dispatch={dispatch} />
      </Question>
    );
  if (pour.answer !== undefined)
    return <Weighing {...{ no, ticket, dispatch, mark, card }} pour={pour.answer} />;
  return (
    <Question
      {...ASK}
      no={no}
      mark={mark}
      answer={<Verdict>No grams yet</Verdict>}
      because={whyNone(ticket, card)}
    >
      {pour.problem !== undefined && <Complaint problem={pour.problem} />}
      {pour.message !== undefined && <Fault message={pour.message} onAgain={bench.again} />}
      <FilledVolume ticket={ticket} dispatch={dispatch} />
    </Question>
  );
}

function Weighing({
  no,
  ticket,
  dispatch,
  mark,
  card,
  pour,
}: Pick<BatchProps, 'no' | 'ticket' | 'dispatch' | 'mark' | 'card'> & { pour: PourOnPage }) {
  const { batch, cavityCm3, cups } = pour;
  const count = cups.cups.length;
  const cup: WeighedCup = { ...batch, ...cups.cups[0] };
  const [low, high] = batch.mixedRangeG;
  // Every cup more keeps one residue more.
  const moreG = (count - 1) * batch.inputs.residueG;
  const text = rangeText({ value: cups.totalG, low: low + moreG, high: high + moreG }, { step: batch.stepG });
  return (
    <Question
      {...ASK}
      no={no}
      mark={mark}
      answer={
        <>
          <Figure value={gramsText(cups.totalG, batch.stepG)} unit="g" />
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
      <GramFigures batch={cup} cups={count} />
      <p className="why">
        {count > 1 && (
          <>
            <b>
              {count} cups, {gramsText(cups.totalG, batch.stepG)} g in all:
            </b>{' '}
            each keeps its residue, so together they take more than one would. For each cup:{' '}
          </>
        )}
        {ratioSentence(ratioSentenceParts(cup))}
      </p>
      <p className="why">
        The chance of a short fill is <b>{chanceWords(batch.shortFillChance)}</b>.
      </p>
      <FilledVolume ticket={ticket} dispatch={dispatch} />
    </Question>
  );
}

function whyNone(ticket: Ticket, card: BatchProps['card']): string | undefined {
  const day = unreadOfPart(ticket, 'day');
  const unread: FieldName[] = [...unreadForBatch(ticket), ...(day === undefined ? [] : [day])];
  const reads = unread.map((name) => readField(name, textOf(ticket.fields, name)).kind);
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
