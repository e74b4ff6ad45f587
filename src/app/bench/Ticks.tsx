import { useEffect, useLayoutEffect, useRef, useState } from 'react';
import type { BenchTick } from './benchTicks';
import { BOUNCE_MS } from './phase';

interface TicksProps {
  ticks: readonly BenchTick[];
  said: Readonly<Record<string, boolean>>;
  onTick: (said: Readonly<Record<string, boolean>>) => void;
}

/** What has to be sure before A goes in. Open ones stand on top, so that none hides behind the foot. */
export function Ticks({ ticks, said, onTick }: TicksProps) {
  const { list, order } = useOpenFirst(ticks, said);
  return (
    <ul className="ticks" ref={list} aria-label="Before A goes in">
      {order.map(({ id, words, plan, from }) => (
        <li key={id}>
          <label className="tick">
            <input
              type="checkbox"
              checked={said[id] === true}
              onChange={(event) => onTick({ ...said, [id]: event.target.checked })}
            />
            <span>
              {words}
              {from !== undefined && <small className="quiet note"> {from}</small>}
            </span>
            <span className="r">{plan !== '' ? plan : said[id] === true ? '' : 'open'}</span>
          </label>
        </li>
      ))}
    </ul>
  );
}

/** Sorted once the finger is away: what moves under it would be ticked by a bounce. The focus stays on its tick. */
function useOpenFirst(ticks: readonly BenchTick[], said: TicksProps['said']) {
  const list = useRef<HTMLUListElement>(null);
  const [sortedBy, setSortedBy] = useState(said);
  const focused = useRef<Element | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => {
      focused.current =
        list.current?.contains(document.activeElement) === true ? document.activeElement : null;
      setSortedBy(said);
    }, BOUNCE_MS);
    return () => clearTimeout(timer);
  }, [said]);
  useLayoutEffect(() => {
    if (focused.current instanceof HTMLElement) focused.current.focus({ preventScroll: true });
    focused.current = null;
  }, [sortedBy]);
  const isDone = ({ id }: BenchTick): boolean => sortedBy[id] === true;
  return { list, order: [...ticks.filter((tick) => !isDone(tick)), ...ticks.filter(isDone)] };
}
