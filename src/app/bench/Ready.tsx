import { useState } from 'react';
import { startWords } from '../../words/benchWords';
import { cautionsOfPour } from '../../words/cautionsOfPour';
import { CautionList } from '../parts/CautionList';
import { MarkShape } from '../parts/StatusMark';
import { pourNow } from '../ticket/now';
import { valueIn } from '../ticket/readField';
import { readyNow } from '../ticket/ready';
import { cardOf } from '../ticket/wishes';
import type { PourOnPage } from '../../worker/pour';
import { BenchFoot } from './BenchFoot';
import { BenchGrams, BInCup, ReadAloud } from './BenchGrams';
import type { ReadyProps } from './benchProps';
import { benchStops } from './benchStops';
import { benchTicks } from './benchTicks';
import { colorOfCupG, cupAtBench } from './cupAtBench';
import { DayBoxes } from './DayBoxes';
import { NoPour } from './NoPour';
import { Stops } from './Stops';
import { Ticks } from './Ticks';
import { UndoneClock } from './UndoneClock';

/** Before A goes in: grams, what the day is like, what has to be sure, and the button that starts the clock. */
export function Ready(props: ReadyProps) {
  const pour = pourNow(props.ticket).answer;
  return (
    <>
      <h1 tabIndex={-1}>Ready?</h1>
      <UndoneClock run={props.run} session={props.session} />
      {pour === undefined || !props.isInHand ? <NoPour {...props} /> : <ReadyToMix {...props} pour={pour} />}
    </>
  );
}

function ReadyToMix({ pour, ...props }: ReadyProps & { pour: PourOnPage }) {
  const { ticket, dispatch, said, say, press, onWeigh } = props;
  const [isRefused, setRefused] = useState(false);
  const stops = benchStops(ticket, cardOf(ticket));
  const unread = stops.filter(({ text }) => said.read[text] !== true);
  const ticks = benchTicks(ticket, pour);
  const cup = cupAtBench(pour, valueIn(ticket.fields, 'bInCup'));
  const { stepG } = pour.batch;
  const start = (): void => {
    setRefused(unread.length > 0);
    if (unread.length > 0) document.querySelector<HTMLElement>('.stops input:not(:checked)')?.focus();
    else press('mixing');
  };
  return (
    <>
      <Stops stops={stops} read={said.read} onRead={(read) => say({ read })} />
      <ReadySaid ticket={ticket} />
      <BenchGrams pour={pour} cup={cup} />
      <DayBoxes ticket={ticket} said={said} say={say}>
        <BInCup ticket={ticket} dispatch={dispatch} pour={pour} />
      </DayBoxes>
      <Ticks ticks={ticks} said={said.ticks} onTick={(set) => say({ ticks: set })} />
      <ReadAloud pour={pour} cup={cup} />
      <CautionList of="the pour" cautions={cautionsOfPour(pour)} />
      <p>
        <button type="button" className="act" onClick={onWeigh}>
          Weigh back without the clock
        </button>
      </p>
      <BenchFoot label="I am mixing" onPress={start}>
        <span>
          {startWords(
            { scaleG: cup.totalG + colorOfCupG(pour), cupAG: cup.partAG, stepG },
            ticks.filter(({ id }) => said.ticks[id] !== true).length,
            pour.cups.cups.length,
          )}
          <b role="alert" className="refused">
            {isRefused && unread.length > 0 && ' The plan says Stop: read it, and say that you have.'}
          </b>
        </span>
      </BenchFoot>
    </>
  );
}

/** "Ready to pour" is said in Batch, of the pour as it stands. */
function ReadySaid({ ticket }: Pick<ReadyProps, 'ticket'>) {
  const ready = readyNow(ticket);
  if (ready === 'ready') return null;
  return (
    <p className="said">
      <MarkShape mark="look" />
      <span>
        {ready === 'changed'
          ? 'An input has changed since you said ready: Batch has the checks.'
          : 'Nobody has said in Batch that this pour is ready.'}
      </span>
    </p>
  );
}
