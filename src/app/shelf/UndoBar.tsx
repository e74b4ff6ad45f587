import { useEffect, useRef, useState } from 'react';
import { StoreProblem } from '../shop/StoreProblem';
import { useTrying } from '../shop/useTrying';

export interface Undo {
  id: number;
  /** "Quay Troll head is deleted." */
  words: string;
  undo: () => Promise<void>;
  /** The key that was pressed is where the focus was: it goes to the way back. */
  isByKey: boolean;
}

/** How long a delete can be taken back. A choice of ours. */
const UNDO_S = 10;

/** The clock stands while the pointer or the focus is on the bar: nobody has to be quick. */
export function UndoBar({ undo, onOver }: { undo: Undo; onOver: () => void }) {
  const [leftS, setLeftS] = useState(UNDO_S);
  const [isHeld, setHeld] = useState(false);
  const { attempt, isBusy, problem } = useTrying();
  const button = useRef<HTMLButtonElement>(null);
  const { isByKey } = undo;
  const isStanding = isHeld || isBusy || problem !== undefined;
  useEffect(() => {
    if (isByKey) button.current?.focus();
  }, [isByKey]);
  useEffect(() => {
    if (isStanding) return;
    const timer = setInterval(() => setLeftS((s) => s - 1), 1000);
    return () => clearInterval(timer);
  }, [isStanding]);
  useEffect(() => {
    if (leftS <= 0) onOver();
  }, [leftS, onOver]);
  return (
    <div
      className="undo"
      onPointerEnter={() => setHeld(true)}
      onPointerLeave={() => setHeld(false)}
      onFocus={() => setHeld(true)}
      onBlur={() => setHeld(false)}
    >
      <span>{undo.words}</span>
      <button
        ref={button}
        type="button"
        className="act"
        onClick={() =>
          attempt(async () => {
            await undo.undo();
            onOver();
          })
        }
      >
        Undo, {Math.max(0, leftS)} s left<span className="sr">: {undo.words}</span>
      </button>
      <StoreProblem problem={problem} />
    </div>
  );
}
