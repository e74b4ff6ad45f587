import { useEffect, useState } from 'react';
import { bad, type Problem } from '../../problem';
import { keepScanAside, readScanAside, storeProblem, type ShopStore } from '../../store';
import type { KeptSource } from './keptSource';
import type { Action } from './reducer';
import type { Ticket } from './state';
import type { Bench } from './useEngine';
import type { Dispatch } from 'react';

/** How it stands with keeping the scan's file. */
export type ScanKeeping = 'none' | 'keeping' | 'kept';

/**
 * Keeps the file of every scan that is opened, and reads it again for a ticket that names one it has not open: after a reload,
 * and when a step is undone.
 */
export function useScanKept({
  store,
  ticket,
  dispatch,
  bench,
}: {
  store: ShopStore;
  ticket: Ticket;
  dispatch: Dispatch<Action>;
  bench: Bench;
}): { keeping: ScanKeeping; problem: Problem | undefined; keepNow: () => void } {
  const [kept, setKept] = useState<{ id: string; problem?: Problem }>();
  const [tries, setTries] = useState(0);
  const source = ticket.scan?.source;

  useEffect(() => {
    const { id } = source ?? {};
    if (source === undefined || id === undefined || source.isKept === true) return;
    keep(store, { ...source, id }).then(
      (problem) => setKept(problem === undefined ? { id } : { id, problem }),
      (fault: unknown) => setKept({ id, problem: storeProblem(fault) }),
    );
  }, [store, source, tries]);

  const wanted = scanToReopen(ticket);
  const { reopen } = bench;
  useEffect(() => {
    if (wanted === undefined) return;
    let isOver = false;
    readScanAside(store, wanted).then(
      (found) => {
        if (isOver) return;
        if (found === undefined) return dispatch(goneAction(wanted));
        reopen({ id: wanted, name: found.name, isKept: true, bytes: bytesOf(store, wanted, found.file) });
      },
      (fault: unknown) => {
        if (!isOver) dispatch({ do: 'reopened', source: noSource(wanted), ended: failed(fault) });
      },
    );
    return () => {
      isOver = true;
    };
    // `reopen` is another function at every turn, and the same to do.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [store, wanted, dispatch]);

  const isThis = kept !== undefined && kept.id === source?.id;
  return {
    keeping: source === undefined ? 'none' : source.isKept === true || isThis ? 'kept' : 'keeping',
    problem: isThis ? kept.problem : undefined,
    keepNow: () => {
      if (isThis && kept.problem !== undefined) setTries((before) => before + 1);
    },
  };
}

async function keep(store: ShopStore, source: KeptSource & { id: string }): Promise<Problem | undefined> {
  const { id, name } = source;
  return keepScanAside(store, { id, name, file: await source.bytes() });
}

/** The file that was just read; whoever takes it takes it away, so after that it is read again. */
function bytesOf(store: ShopStore, id: string, file: ArrayBuffer): () => Promise<ArrayBuffer> {
  let fresh: ArrayBuffer | undefined = file;
  return async () => {
    const bytes = fresh ?? (await readScanAside(store, id))?.file;
    fresh = undefined;
    if (bytes === undefined) throw new Error('the scan is no longer kept');
    return bytes;
  };
}

/** The scan that the ticket names, where it is neither open nor was tried. */
export function scanToReopen({ scanId, scan, reading }: Ticket): string | undefined {
  if (scanId === undefined || scan?.source.id === scanId || reading.state === 'running') return undefined;
  return reading.source?.id === scanId ? undefined : scanId;
}

const noSource = (id: string): KeptSource => ({
  id,
  name: 'the scan',
  bytes: () => Promise.reject(new Error('the scan is not kept')),
});

const goneAction = (id: string): Action => ({
  do: 'reopened',
  source: noSource(id),
  ended: { how: 'answered', answer: bad('SCAN_GONE') },
});

const failed = (fault: unknown): { how: 'failed'; message: string } => ({
  how: 'failed',
  message: fault instanceof Error ? fault.message : String(fault),
});
