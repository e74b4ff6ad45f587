import { useEffect, useState, useSyncExternalStore } from 'react';
import { holdUpdates, isHeld } from './pourHold';
import { updateGate } from './updateGate';
import { useUpdate } from './useUpdate';
import { versionText } from './version';

/** Says that another version is there, and takes it when it is told to. Nothing otherwise. What holds it: `useUpdateHold`. */
export function UpdateBar() {
  const { state, next, version, update } = useUpdate();
  const hold = useSyncExternalStore(updateGate.subscribe, updateGate.why);
  const [isHeldElsewhere, setHeldElsewhere] = useState(false);
  useEffect(() => (hold === undefined ? undefined : holdUpdates()), [hold]);
  const take = async (): Promise<void> => {
    const held = await isHeld();
    setHeldElsewhere(held);
    if (!held) await update();
  };
  const isThere = next !== undefined && state !== 'none' && state !== 'unavailable';
  const held = hold ?? (isHeldElsewhere ? 'A pour goes on in another window.' : undefined);
  return (
    <div className={isThere ? 'update' : 'sr'}>
      <p role="status">
        {isThere && (
          <>
            <b>Another version is here: {versionText(next)}.</b> This is {versionText(version)}.{' '}
            {held === undefined ? WORDS[state] : `${held} The other version waits until that is over.`}
          </>
        )}
      </p>
      {isThere && hold === undefined && (
        <button type="button" className="btn line" disabled={state === 'taking'} onClick={() => void take()}>
          Take the other version
        </button>
      )}
    </div>
  );
}

const WORDS = {
  waiting: 'It is taken when you say so.',
  taking: 'It is being fetched. Once all that was typed is kept, the page starts anew with it.',
  refused: 'It could not be fetched whole, so this one goes on. Try again with a network.',
};
