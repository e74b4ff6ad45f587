import type { Problem } from '../problem';
import type { FromScanThread, ScanCopy, ScanTask } from './scanTask';

/**
 * Packs a scan's file and keeps it in the store of that name; why not, where it is not kept. In a thread of its own: packing takes seconds, and even
 * handing what was packed to the database would hold up the page.
 */
export async function keepScanAside(
  shop: string,
  { id, name, file }: ScanCopy & { id: string },
): Promise<Problem | undefined> {
  const said = await ask({ do: 'keep', shop, id, name, file }, [file]);
  return 'problem' in said ? said.problem : undefined;
}

/** A scan that is kept, unpacked; undefined where there is none. Throws when it cannot be read. */
export async function readScanAside(shop: string, id: string): Promise<ScanCopy | undefined> {
  const said = await ask({ do: 'read', shop, id }, []);
  if ('problem' in said) throw new Error(String(said.problem.values.why));
  return 'copy' in said ? said.copy : undefined;
}

function ask(task: ScanTask, handed: Transferable[]): Promise<FromScanThread> {
  const worker = new Worker(new URL('./scan.worker.ts', import.meta.url), { type: 'module' });
  return new Promise<FromScanThread>((resolve, reject) => {
    worker.onerror = (event) => reject(new Error(event.message));
    worker.onmessage = ({ data }: MessageEvent<FromScanThread>) => resolve(data);
    worker.postMessage(task, handed);
  }).finally(() => worker.terminate());
}
