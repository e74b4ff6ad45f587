import { useCallback, useState } from 'react';
import type { StoreCode } from '../../problem';
import { storeProblem } from '../../store';
import type { Sentence } from '../../words/sentence';
import { STORE_WORDS } from '../../words/storeWords';
import { localDay } from '../ticket/localDay';
import { makeBackup } from './backupAside';
import { backupName } from './backupName';
import { heldByPage } from './heldByPage';
import { saveFile } from './saveFile';
import { useShop } from './shopContext';

export interface BackUp {
  backUp: () => void;
  state: 'idle' | 'working' | 'saved';
  /** Scans and photos that are not in the file. */
  missing: number;
  problem: Sentence | undefined;
}

/** Writes all that is kept into one file among the downloads, and notes the day. */
export function useBackUp(): BackUp {
  const { store, view, problem: trouble, onTicket } = useShop();
  const [missing, setMissing] = useState(0);
  const [state, setState] = useState<BackUp['state']>('idle');
  const [problem, setProblem] = useState<Sentence>();
  const name = view?.core.name ?? '';
  const backUp = useCallback(() => {
    const run = async (): Promise<void> => {
      const held = await heldByPage({ store, view, problem: trouble, onTicket });
      const said = await makeBackup(store, held);
      if (said.kind !== 'made') {
        setState('idle');
        setProblem(said.kind === 'problem' ? said.sentence : undefined);
        return;
      }
      const today = localDay(new Date());
      saveFile(said.file, backupName(name, today));
      setMissing(said.missing);
      setState('saved');
      // The file is there; that its day is not noted where nothing can be, the page says elsewhere.
      await store.noteBackup(today).catch(() => undefined);
    };
    setState('working');
    setProblem(undefined);
    run().catch((fault: unknown) => {
      setState('idle');
      const { code, values } = storeProblem(fault);
      setProblem(STORE_WORDS[code as StoreCode](values));
    });
  }, [store, view, trouble, onTicket, name]);
  return { backUp, state, missing, problem };
}
