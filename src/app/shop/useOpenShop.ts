import { useCallback, useEffect, useRef, useState } from 'react';
import { finding, type Problem } from '../../problem';
import {
  askToPersist,
  isPersisted,
  openMemory,
  openStore,
  storeProblem,
  type Persistence,
  type ShopStore,
  type ShopView,
} from '../../store';
import type { ShopChoice } from '../route';
import { browserNotes, emptiedProblem, noteKept } from './keptBefore';
import { openHeld, type OpenShop } from './shopContext';
import { NAMES } from './storeNames';

/**
 * The store of the chosen shop, opened, watched, and closed with the page. Where the browser keeps nothing, or a later version has it, the
 * page works with a shop in its own memory, and says so; where the browser does not answer, once it is told to.
 */
export function useOpenShop(choice: ShopChoice): OpenShop {
  const [store, setStore] = useState<ShopStore>(() => openStore(NAMES[choice]));
  const [view, setView] = useState<ShopView>();
  const [problem, setProblem] = useState<Problem>();
  const persistence = usePersistence();
  const [onTicket] = useState(openHeld);
  /** Shops that the page alone keeps, and why: whoever looks at the other shop finds them again. */
  const [byPage] = useState(() => new Map<string, { store: ShopStore; why: Problem | undefined }>());
  if (store.name !== NAMES[choice]) {
    const kept = byPage.get(NAMES[choice]);
    setStore(kept?.store ?? openStore(NAMES[choice]));
    setView(undefined);
    setProblem(kept?.why);
  }
  const goWithout = useCallback(
    (why: Problem | undefined) => {
      store.close();
      const memory = openMemory(store.name);
      byPage.set(store.name, { store: memory, why });
      setStore(memory);
    },
    [store, byPage],
  );
  useEffect(() => {
    const onDisk = store.keeps === 'disk';
    const waits = (why: string): void => {
      clearTimeout(slow);
      setProblem(finding('STORE_WAITS', 'stop', { why }));
    };
    const slow = onDisk ? setTimeout(() => waits('it does not answer'), SLOW_MS) : undefined;
    // The sample shop fills itself again.
    const notes = store.name === NAMES.own ? browserNotes() : undefined;
    let isOpen = false;
    let isOver = false;
    let isFirst = true;
    let emptied: Problem | undefined;
    const stop = store.watch(
      (seen) => {
        clearTimeout(slow);
        setView(seen);
        // In memory it stays said that nothing is kept.
        if (!onDisk) return;
        // It stays said until something is kept again: whoever looks away finds it.
        emptied = isFirst || emptied !== undefined ? emptiedProblem(notes, store.name, seen) : undefined;
        isFirst = false;
        setProblem(emptied);
        if (emptied === undefined) noteKept(notes, store.name, seen);
      },
      (fault) => {
        if (isOpen) setProblem(storeProblem(fault));
      },
    );
    store.open().then(
      () => (isOpen = true),
      (fault: unknown) => {
        if (isOver) return;
        const why = openProblem(fault);
        setProblem(why);
        goWithout(why);
      },
    );
    // A newer version in another tab changes the database, or someone deletes it: the store has given way, and this page says so.
    const onGone = (): void => {
      if (isOpen)
        setProblem(
          storeProblem(
            new DOMException('it was deleted, or another tab has a newer version', 'InvalidStateError'),
          ),
        );
    };
    const dexie = store.database?.dexie;
    dexie?.on('blocked', () => waits('another tab of this page holds it open in an earlier version'));
    dexie?.on('versionchange', onGone);
    dexie?.on('close', onGone);
    // What fails here fails for the watcher too, who tells.
    store.sweep(SWEPT_AFTER_MS).catch(() => undefined);
    return () => {
      isOver = true;
      clearTimeout(slow);
      stop();
    };
  }, [store, goWithout]);
  return {
    choice,
    store,
    view,
    problem,
    ...(problem?.code === 'STORE_WAITS' && view === undefined ? { goWithout: () => goWithout(problem) } : {}),
    onTicket,
    ...persistence,
  };
}

/** Whatever keeps a store from being opened: nothing can be kept, unless a later version has it. */
function openProblem(fault: unknown): Problem {
  const problem = storeProblem(fault);
  return problem.code === 'STORE_NEWER' ? problem : finding('STORE_REFUSED', 'stop', problem.values);
}

/** A store that has not answered by then is told of; opening takes some hundredths of a second. Chosen here. */
const SLOW_MS = 8000;

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
