import type { BroughtIn, Held, ShopStore } from '../../store';
import type { Sentence } from '../../words/sentence';

/**
 * What the page and the thread that makes and reads backups say to each other. `shop` is the name of a store; `held` what the page has beside it,
 * `held` alone a shop that is kept by the page.
 */
export type BackupAsk =
  | { do: 'make'; shop: string; held?: Held }
  | { do: 'make'; held: Held }
  | { do: 'look'; file: File }
  | { do: 'replace' | 'beside'; shop: string };

export type BackupSaid =
  /** `missing`: scans and photos that the shop names and that could not be read. */
  | { kind: 'made'; file: Blob; missing: number }
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
        const broke = (why: string): void =>
          resolve({
            kind: 'problem',
            sentence: {
              text: `The part of the page that reads and writes backups did not work (${why}).`,
              hint: 'Load the page again and try once more. Nothing here was changed.',
            },
          });
        worker.onmessage = ({ data }: MessageEvent<BackupSaid>) => resolve(data);
        worker.onerror = (event) => broke(event.message ?? 'it did not come');
        worker.onmessageerror = () => broke('its answer could not be read');
        worker.postMessage(ask);
      }),
    close: () => worker.terminate(),
  };
}

/** A backup of a store, and of what the page holds beside it. */
export async function makeBackup(
  store: Pick<ShopStore, 'name' | 'keeps'>,
  held: Held | undefined,
): Promise<BackupSaid> {
  const bench = openBackupBench();
  try {
    if (store.keeps === 'page' && held !== undefined) return await bench.ask({ do: 'make', held });
    return await bench.ask({ do: 'make', shop: store.name, ...(held === undefined ? {} : { held }) });
  } finally {
    bench.close();
  }
}
