import { useCallback, useState } from 'react';
import type { StoreCode } from '../../problem';
import { storeProblem } from '../../store';
import type { Sentence } from '../../words/sentence';
import { STORE_WORDS } from '../../words/storeWords';
import { localDay } from '../ticket/localDay';
import { makeBackup } from './backupAside';
import { backupName } from './backupName';
import { saveFile } from './saveFile';
import { useShop } from './shopContext';

export interface BackUp {
  backUp: () => void;
  state: 'idle' | 'working' | 'saved';
  problem: Sentence | undefined;
}

/** Writes all that is kept into one file among the downloads, and notes the day. */
export function useBackUp(): BackUp {
  const { store, view } = useShop();
  const [state, setState] = useState<BackUp['state']>('idle');
  const [problem, setProblem] = useState<Sentence>();
  const name = view?.core.name ?? '';
  const backUp = useCallback(() => {
    const run = async (): Promise<void> => {
      const said = await makeBackup(store.name);
      if (said.kind !== 'made') {
        setState('idle');
        setProblem(said.kind === 'problem' ? said.sentence : undefined);
        return;
      }
      const today = localDay(new Date());
      saveFile(said.file, backupName(name, today));
      setState('saved');
      await store.noteBackup(today);
    };
    setState('working');
    setProblem(undefined);
    run().catch((fault: unknown) => {
      setState('idle');
      const { code, values } = storeProblem(fault);
      setProblem(STORE_WORDS[code as StoreCode](values));
    });
  }, [store, name]);
  return { backUp, state, problem };
}
