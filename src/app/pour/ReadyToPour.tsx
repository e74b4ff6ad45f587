import { useState } from 'react';
import { ratioSentenceParts } from '../../yield';
import { ratioSentence } from '../../words/yieldWords';
import type { PourOnPage } from '../../worker/pour';
import { batchChecks } from '../batch/batchProblems';
import type { BatchProps } from '../batch/batchProps';
import { isVolumeStopped } from '../batch/marks';
import { MarkShape } from '../parts/StatusMark';
import { readyKeyOf, readyNow } from '../ticket/ready';
import { stopsQuestion } from '../words/readyWords';

/** "Ready to pour" is said of the pour as it stands, and holds as long as that does. What says Stop is asked about first, and never refuses. */
export function ReadyToPour({ ticket, dispatch, card, pour }: BatchProps) {
  const [isAsking, setAsking] = useState(false);
  const key = pour.answer === undefined ? undefined : readyKeyOf(ticket);
  const ready = readyNow(ticket);
  const question = stopsQuestion(stopsIn(ticket, card), isVolumeStopped(ticket));
  const say = (readyFor: string): void => {
    setAsking(false);
    dispatch({ do: 'pouring', pouring: { readyFor } });
  };
  return (
    <div className="readyto">
      {pour.answer !== undefined && <p className="why">{readBack(pour.answer)}</p>}
      <div role="status">
        {ready !== 'not said' && (
          <p className="said">
            <MarkShape mark={ready === 'ready' ? 'fine' : 'look'} />
            {ready === 'ready' ? 'Ready to pour, as it stands' : 'An input has changed since you said ready'}
          </p>
        )}
        {isAsking && question !== undefined && <p className="said">{question}</p>}
      </div>
      <p className="chg">
        {ready === 'ready' ? (
          <button type="button" className="act" onClick={() => say('')}>
            Not ready after all
          </button>
        ) : key === undefined ? null : isAsking && question !== undefined ? (
          <>
            <button type="button" className="btn" onClick={() => say(key)}>
              Ready all the same
            </button>
            <button type="button" className="act" onClick={() => setAsking(false)}>
              Not yet
            </button>
          </>
        ) : (
          <button
            type="button"
            className="btn"
            onClick={() => (question === undefined ? say(key) : setAsking(true))}
          >
            Ready to pour
          </button>
        )}
      </p>
    </div>
  );
}

const stopsIn = (ticket: BatchProps['ticket'], card: BatchProps['card']): number =>
  (batchChecks(ticket, card) ?? []).filter(({ status }) => status === 'stop').length;

/** A:B as it is read aloud from the drums, of one cup. */
function readBack({ batch, cups }: PourOnPage): string {
  const count = cups.cups.length;
  const sentence = ratioSentence(ratioSentenceParts({ ...batch, ...cups.cups[0] }));
  return count > 1 ? `In each of ${count} cups: ${sentence}` : sentence;
}
