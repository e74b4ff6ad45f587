import { useEffect, useRef, useState } from 'react';
import { openStore, wipe } from '../../store';
import { forgetSessions } from '../bench/sessions';
import { BackUpButton } from '../shop/BackUpButton';
import { NAMES } from '../shop/storeNames';
import { useShop } from '../shop/shopContext';
import { StoreProblem } from '../shop/StoreProblem';
import { useTrying } from '../shop/useTrying';
import { dayWords } from '../words/dayWords';
import { FileButton } from '../parts/FileButton';
import { isEmptyShop } from './isEmptyShop';
import { shopContents } from './shopContents';

const HEADING = 'safety';

/** Backup, restore, and forgetting all of it. */
export function Safety({ onBackup }: { onBackup: (file: File) => void }) {
  const { view, choice } = useShop();
  if (view === undefined) return null;
  const { lastBackup } = view;
  return (
    <section className="shelf" aria-labelledby={HEADING}>
      <h2 id={HEADING} tabIndex={-1}>
        What if this device is lost?
      </h2>
      <p className="why">
        All of it is kept in this browser and nowhere else. A backup is one file with every piece, scan, card
        and setting; brought in again, here or on another device, it is all back. The command line reads the
        same file.
      </p>
      <p>{lastBackup === undefined ? 'No backup yet.' : `Last backup: ${dayWords(lastBackup)}.`}</p>
      <div className="chg">
        <BackUpButton />
        <FileButton label="Bring in a backup" accept=".json,application/json" onFile={onBackup} />
        {choice === 'own' && <Forget />}
      </div>
    </section>
  );
}

/** Asked in place, with what goes. */
function Forget() {
  const { view } = useShop();
  const { attempt, problem } = useTrying();
  const [isAsked, setAsked] = useState(false);
  const [isDone, setDone] = useState(false);
  const asked = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isAsked) asked.current?.focus();
  }, [isAsked]);
  if (view === undefined) return null;
  if (isDone && isEmptyShop(view))
    return (
      <p className="note" role="status">
        Everything of this page on this device is forgotten.
      </p>
    );
  if (!isAsked)
    return (
      <button type="button" className="act" onClick={() => setAsked(true)}>
        Forget everything on this device
      </button>
    );
  /** The button that was pressed goes: the keyboard goes on from the heading of the question. */
  const close = (): void => {
    document.getElementById(HEADING)?.focus();
    setAsked(false);
  };
  const forget = (): void =>
    attempt(async () => {
      for (const name of Object.values(NAMES)) {
        const store = openStore(name);
        await wipe(store.database).finally(() => store.close());
      }
      forgetSessions();
      close();
      setDone(true);
    });
  return (
    <div className="ask" role="group" tabIndex={-1} ref={asked} aria-label="Forget everything on this device">
      <p>
        <b>This forgets {shopContents(view)}, and the sample shop.</b>{' '}
        {view.lastBackup === undefined
          ? 'There is no backup of it.'
          : `The last backup is of ${dayWords(view.lastBackup)}; what came after it is in none.`}
      </p>
      <div className="chg">
        <button type="button" className="act" onClick={forget}>
          Forget all of it
        </button>
        <button type="button" className="act" onClick={close}>
          Leave it
        </button>
      </div>
      <StoreProblem problem={problem} />
    </div>
  );
}
