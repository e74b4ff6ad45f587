import { storeProblem } from './fault';
import { pack, unpack } from './gzip';
import { openStore } from './store';
import type { FromScanThread, ScanTask } from './scanTask';

interface Scope {
  onmessage: ((event: MessageEvent<ScanTask>) => void) | null;
  postMessage(message: FromScanThread, transfer?: Transferable[]): void;
}

const scope = globalThis as unknown as Scope;

scope.onmessage = ({ data }) => {
  answer(data).then(
    (said) => scope.postMessage(said, 'copy' in said ? [said.copy.file] : []),
    (fault: unknown) => scope.postMessage({ problem: storeProblem(fault) }),
  );
};

async function answer(task: ScanTask): Promise<FromScanThread> {
  const packed = task.do === 'keep' ? await pack(task.file) : undefined;
  const store = openStore(task.shop);
  try {
    if (task.do === 'keep') {
      const { id, name, file } = task;
      await store.keepScan({ id, name, bytes: file.byteLength, packed: packed! });
      return { done: true };
    }
    const found = await store.scan(task.id);
    if (found === undefined) return { done: true };
    return { copy: { name: found.name, file: await unpack(found.packed, found.bytes) } };
  } finally {
    store.close();
  }
}
