import { useCallback, useEffect, useRef, useState } from 'react';
import type { Problem } from '../../problem';
import {
  askToPersist,
  isPersisted,
  openStore,
  storeProblem,
  type Persistence,
  type ShopView,
  type Store,
} from '../../store';
import type { ShopChoice } from '../route';
import type { OpenShop } from './shopContext';
import { NAMES } from './storeNames';

/** The store of the chosen shop, opened, watched, and closed with the page. */
export function useOpenShop(choice: ShopChoice): OpenShop {
  const [store, setStore] = useState<Store>(() => openStore(NAMES[choice]));
  const [view, setView] = useState<ShopView>();
  const [problem, setProblem] = useState<Problem>();
  const persistence = usePersistence();
  if (store.name !== NAMES[choice]) {
    setStore(openStore(NAMES[choice]));
    setView(undefined);
    setProblem(undefined);
  }
  useEffect(() => {
    const stop = store.watch(
      (seen) => {
        setView(seen);
        setProblem(undefined);
      },
      (fault) => setProblem(storeProblem(fault)),
    );
    // A newer version in another tab wants to change the database: it may, and this page says that it has.
    const onGone = (): void =>
      setProblem(storeProblem(new DOMException('another tab has a newer version', 'InvalidStateError')));
    store.database.dexie.on('versionchange', () => {
      store.close();
      onGone();
    });
    store.database.dexie.on('close', onGone);
    // What fails here fails for the watcher too, who tells.
    store.sweep(SWEPT_AFTER_MS).catch(() => undefined);
    return stop;
  }, [store]);
  return { choice, store, view, problem, ...persistence };
}

/** Long enough for any tab to have named the scan it reads, or to take a delete back. Chosen here. */
const SWEPT_AFTER_MS = 24 * 3600 * 1000;

function usePersistence(): Pick<OpenShop, 'persistence' | 'askToPersist'> {
  const [persistence, setPersistence] = useState<Persistence>();
  const isAsked = useRef(false);
  useEffect(() => {
    void isPersisted().then((is) => setPersistence((known) => known ?? (is ? 'kept' : undefined)));
  }, []);
  const ask = useCallback(() => {
    if (isAsked.current) return;
    isAsked.current = true;
    void askToPersist().then(setPersistence);
  }, []);
  return { persistence, askToPersist: ask };
}
