import { useEffect, useState } from 'react';
import type { PressName } from '../../job/benchState';
import { useShop } from '../shop/shopContext';
import { pourNow } from '../ticket/now';
import { castingCode } from '../words/castingCode';
import { benchPlan } from './benchPlan';
import { BenchTop } from './BenchTop';
import type { BenchProps } from './benchProps';
import { ClockTold } from './ClockTold';
import { benchPhase, isRunning, planAtBench } from './phase';
import { Ready } from './Ready';
import { Running } from './Running';
import { useBenchRun } from './useBenchRun';
import { useBenchState } from './useBenchState';
import { useCues } from './useCues';
import { useTitleFocus } from './useTitleFocus';
import { useWakeLock } from './useWakeLock';
import { WeighedBack } from './WeighedBack';

interface OfCasting extends BenchProps {
  id: string;
  onRunning: (is: boolean) => void;
}

/** One casting at the bench, in the phase that its presses say. */
export function BenchOfCasting({ id, onRunning, ...props }: OfCasting) {
  const { ticket, piece, change, nav } = props;
  const { store, view } = useShop();
  const { said, unread, run: kept, say } = useBenchState(piece, id, change);
  const { session, shown } = useBenchRun({ shop: store.name, piece, id, kept, change });
  const { run, clock, isLocal } = shown;
  const phase = benchPhase(run);
  const running = isRunning(run);
  const [isMoving, setMoving] = useState(false);
  const isAwake = useWakeLock(running);
  useEffect(() => {
    session.awake(isAwake);
    return () => session.awake(false);
  }, [session, isAwake]);
  useEffect(() => onRunning(running), [onRunning, running]);
  const pour = pourNow(ticket).answer;
  const isInHand = id === piece.hand.casting;
  const now = pour === undefined || !isInHand ? undefined : benchPlan(ticket, pour, view?.core.foams ?? []);
  const plan = planAtBench(run, now);
  useCues(phase, plan, {
    elapsedS: Math.floor((clock?.elapsedMs ?? 0) / 1000),
    isSoundOff: said.isSoundOff,
  });
  const isWeighing = phase === 'open' || (phase === 'ready' && said.withoutClock);
  useTitleFocus(`${phase} ${isWeighing}`, isMoving);
  const move = (how: () => void): void => {
    setMoving(true);
    how();
  };
  const press = (what: PressName): void => move(() => session.press(what, now));
  const undo = (): void => move(session.undo);
  return (
    <div className="bench">
      <BenchTop
        nav={nav}
        piece={piece.id}
        code={castingCode(piece, id)}
        sound={!running ? undefined : { isOff: said.isSoundOff, set: (isSoundOff) => say({ isSoundOff }) }}
      />
      <div className="benchbody">
        <ClockTold session={session} clock={running ? clock : undefined} isLocal={isLocal} unread={unread} />
        {isWeighing ? (
          <WeighedBack
            {...props}
            {...{ id, said, run, plan, undo }}
            back={() => move(() => say({ withoutClock: false }))}
          />
        ) : running && clock !== undefined ? (
          <Running {...{ phase, run, clock, plan, isAwake, press, undo }} />
        ) : (
          <Ready
            {...props}
            {...{ said, say, run, session, press, isInHand }}
            onWeigh={() => move(() => say({ withoutClock: true }))}
          />
        )}
      </div>
    </div>
  );
}
