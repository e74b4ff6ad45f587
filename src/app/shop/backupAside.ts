import type { BroughtIn } from '../../store';
import type { Sentence } from '../../words/sentence';

/** What the page and the thread that makes and reads backups say to each other. `shop` is the name of a store. */
export type BackupAsk =
  { do: 'make'; shop: string } | { do: 'look'; file: File } | { do: 'replace' | 'beside'; shop: string };

export type BackupSaid =
  | { kind: 'made'; file: Blob }
  | { kind: 'looked'; told: BackupTold }
  | { kind: 'brought'; came: BroughtIn }
  | { kind: 'problem'; sentence: Sentence };

/** What is in a backup. */
export interface BackupTold {
  name: string;
  pieces: number;
  scans: number;
  cards: number;
  /** Of the book. */
  rows: number;
  photos: number;
}

export interface BackupBench {
  ask(ask: BackupAsk): Promise<BackupSaid>;
  close(): void;
}

/** A thread of its own: the scans of a shop can be hundreds of megabytes, and meanwhile the page stays awake. */
export function openBackupBench(): BackupBench {
  const worker = new Worker(new URL('./backup.worker.ts', import.meta.url), { type: 'module' });
  return {
    ask: (ask) =>
      new Promise((resolve) => {
        worker.onmessage = ({ data }: MessageEvent<BackupSaid>) => resolve(data);
        worker.onerror = (event) =>
          resolve({
            kind: 'problem',
            sentence: {
              text: `The part of the page that reads and writes backups did not start (${event.message}).`,
              hint: 'Load the page again and try once more. Nothing here was changed.',
            },
          });
        worker.postMessage(ask);
      }),
    close: () => worker.terminate(),
  };
}

/** A backup of the store of that name. */
export async function makeBackup(shop: string): Promise<BackupSaid> {
  const bench = openBackupBench();
  try {
    return await bench.ask({ do: 'make', shop });
  } finally {
    bench.close();
  }
}
