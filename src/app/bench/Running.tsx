import { useState } from 'react';
import type { BenchPlan, BenchRun, PressName } from '../../job/benchState';
import { awakeWords, dayTime, earlyWords, pressWords } from '../../words/benchWords';
import { BenchFoot } from './BenchFoot';
import type { PourClock } from './clock';
import { Closing } from './Closing';
import { Mixing } from './Mixing';
import { nextPress, type BenchPhase } from './phase';
import { Waiting } from './Waiting';

interface RunningProps {
  phase: BenchPhase;
  run: BenchRun;
  clock: PourClock;
  plan: BenchPlan | undefined;
  isAwake: boolean;
  press: (what: PressName) => void;
  undo: () => void;
}

const VIEWS = { mix: Mixing, poured: Closing, wait: Waiting } as const;

/** The clock runs: what it shows, and the next press with the undo of the last. */
export function Running({ phase, run, clock, plan, isAwake, press, undo }: RunningProps) {
  const [askedIn, setAskedIn] = useState<number>();
  const what = nextPress(run);
  const last = run.presses.at(-1);
  if (what === undefined || last === undefined || !isView(phase)) return null;
  const View = VIEWS[phase];
  const earlyMs = what === 'open' && plan?.open !== undefined ? 1000 * plan.open.s - clock.elapsedMs : 0;
  const words = (name: PressName): string => pressWords(name, plan?.opening);
  // Asked of this state of the run alone: an undo takes the question with it.
  const isAsking = askedIn === run.rev && earlyMs > 0;
  return (
    <>
      <View clock={clock} plan={plan} />
      <BenchFoot
        label={words(what)}
        onPress={() => (earlyMs > 0 ? setAskedIn(run.rev) : press(what))}
        asked={
          isAsking
            ? {
                question: earlyWords(earlyMs),
                yes: 'Yes, it is open',
                no: 'No, wait',
                onYes: () => press(what),
                onNo: () => setAskedIn(undefined),
              }
            : undefined
        }
      >
        <button type="button" className="act" onClick={undo}>
          Undo “{words(last.what)}”
        </button>
        <span className="quiet">
          {phase === 'mix' ? 'began' : 'mixed at'} {dayTime(clock.beganMs, { seconds: true })}
          <br />
          {awakeWords(isAwake)}
        </span>
      </BenchFoot>
    </>
  );
}

const isView = (phase: BenchPhase): phase is keyof typeof VIEWS => Object.hasOwn(VIEWS, phase);
