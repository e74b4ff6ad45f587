import { ratioSentenceParts } from '../../yield';
import { ratioSentence } from '../../words/yieldWords';
import { Complaint } from '../parts/Complaint';
import { Figure, Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { WayTag } from '../measure/WayTag';
import type { PourOnPage } from '../../worker/pour';
import { gramsText } from '../../units';
import { Fault } from '../parts/Fault';
import { Working } from '../parts/Working';
import { SumOf } from '../pour/SumOf';
import { castingNow, volumeNow } from '../ticket/now';
import { pourByOf } from '../ticket/moldWishes';
import { textOf, type FieldName } from '../ticket/fields';
import { unreadOfPart } from '../ticket/pourWishes';
import { readField } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { unreadForBatch } from '../ticket/wishes';
import { mixedRange } from '../../words/mixedRange';
import { isVolumeStopped } from './marks';
import type { BatchProps } from './batchProps';
import { FilledVolume } from './FilledVolume';
import { GramFigures, GramsToCome, type WeighedCup } from './GramFigures';
import { AssumedOfPour, PourSum } from './PourSum';

export function WeighQuestion({ no, ticket, dispatch, mark, card, bench, pour }: BatchProps) {
  const { state, answer, problem, message } = pour;
  return (
    <Question
      no={no}
      mark={mark}
      ask="What do we weigh?"
      busy={state === 'working'}
      answer={
        state === 'working' ? (
          <Working what="the grams" tall />
        ) : answer === undefined ? (
          <Verdict>No grams yet</Verdict>
        ) : (
          <GramsAnswer {...{ ticket, card }} pour={answer} />
        )
      }
      because={becauseOf(ticket, card, state)}
      change={
        <SumOf
          pour={pour}
          part="weigh"
          lead={
            answer !== undefined && (
              <>
                <PourSum pour={answer} />
                <p>{volumeWords(ticket)}</p>
              </>
            )
          }
        >
          {answer !== undefined && <AssumedOfPour pour={answer} />}
        </SumOf>
      }
    >
      {state === 'working' && <GramsToCome />}
      {answer !== undefined && <Grams pour={answer} />}
      {problem !== undefined && <Complaint problem={problem} />}
      {message !== undefined && <Fault message={message} onAgain={bench.again} />}
      <FilledVolume ticket={ticket} dispatch={dispatch} />
    </Question>
  );
}

function GramsAnswer({
  pour: { batch, cavityCm3, cups },
  ticket,
  card,
}: Pick<BatchProps, 'ticket' | 'card'> & { pour: PourOnPage }) {
  const known = volumeNow(ticket).answer;
  const text = mixedRange({ batch, cups });
  return (
    <>
      <Figure value={gramsText(cups.totalG, batch.stepG)} unit="g" />
      <span className="rng">
        {text.low} to {text.high} g is what this pack could ask for, 9 times in 10
      </span>
      {known?.by === 'displace' ? <WayTag {...known} /> : <SourceTag from={cavityCm3.from} />}
      {card?.ok === true && <SourceTag from={card.value.freeRiseFrom} />}
      <SourceTag from={batch.packFrom} />
    </>
  );
}

function Grams({ pour: { batch, cups, color, refused } }: { pour: PourOnPage }) {
  const count = cups.cups.length;
  const cup: WeighedCup = { ...batch, ...cups.cups[0] };
  const colorG = refused.colors === undefined ? (color?.totalG ?? 0) / count : 0;
  return (
    <>
      <GramFigures batch={cup} cups={count} colorG={colorG} />
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
    </>
  );
}

function becauseOf(
  ticket: Ticket,
  card: BatchProps['card'],
  state: BatchProps['pour']['state'],
): string | undefined {
  if (state === 'working') return undefined;
  if (state !== 'answered') return whyNone(ticket, card);
  return isVolumeStopped(ticket) ? 'Measure says Stop: read what is wrong with the volume first.' : undefined;
}

/** The volume has its own sum, where it was worked out. */
const volumeWords = (ticket: Ticket): string =>
  pourByOf(ticket) === 'cavity' && volumeNow(ticket).answer?.by !== 'fill'
    ? 'The cavity is opened in Mold, by what it shrinks and grows; the sculpt in Measure, by its volume.'
    : 'The volume is opened in Measure, by its own question.';

function whyNone(ticket: Ticket, card: BatchProps['card']): string | undefined {
  const day = unreadOfPart(ticket, 'day');
  const unread: FieldName[] = [...unreadForBatch(ticket), ...(day === undefined ? [] : [day])];
  const reads = unread.map((name) => readField(name, textOf(ticket.fields, name)).kind);
  if (reads.includes('ask')) return 'A field above waits for its meaning.';
  if (reads.length > 0) return 'A field above cannot be read.';
  const missing = [
    ...(volumeNow(ticket).state === 'answered' ? [] : ['the volume from Measure']),
    ...(isCavityMissing(ticket) ? ['the cavity from Mold'] : []),
    ...(card === undefined ? ['a foam'] : card.ok ? [] : ['a foam card without a mistake']),
  ];
  return missing.length === 0 ? undefined : `Still missing: ${missing.join(' and ')}.`;
}

/** The size is known, and what it leaves of the cavity is not. */
const isCavityMissing = (ticket: Ticket): boolean =>
  pourByOf(ticket) === 'cavity' &&
  volumeNow(ticket).state === 'answered' &&
  volumeNow(ticket).answer?.by !== 'fill' &&
  castingNow(ticket).state !== 'answered';
