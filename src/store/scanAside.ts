import type { Problem } from '../problem';
import { pack, unpack } from './gzip';
import type { FromScanThread, ScanCopy, ScanTask } from './scanTask';
import type { ShopStore } from './store';

/** Where a scan's file is kept. */
type Shelf = Pick<ShopStore, 'name' | 'keeps' | 'keepScan' | 'scan'>;

/**
 * Packs a scan's file and keeps it in that store; why not, where it is not kept. In a thread of its own: packing takes seconds, and even
 * handing what was packed to the database would hold up the page. What the page alone keeps never leaves its thread.
 */
export async function keepScanAside(
  store: Shelf,
  { id, name, file }: ScanCopy & { id: string },
): Promise<Problem | undefined> {
  if (store.keeps === 'page') {
    const bytes = file.byteLength;
    await store.keepScan({ id, name, bytes, packed: await pack(file) });
    return undefined;
  }
  const said = await ask({ do: 'keep', shop: store.name, id, name, file }, [file]);
  return 'problem' in said ? said.problem : undefined;
}

/** A scan that is kept, unpacked; undefined where there is none. Throws when it cannot be read. */
export async function readScanAside(store: Shelf, id: string): Promise<ScanCopy | undefined> {
  if (store.keeps === 'page') {
    const found = await store.scan(id);
    return found === undefined
      ? undefined
      : { name: found.name, file: await unpack(found.packed, found.bytes) };
  }
  const said = await ask({ do: 'read', shop: store.name, id }, []);
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
