/** How it stands with what was given to keep. */
export type Saving = { state: 'kept' } | { state: 'keeping' } | { state: 'failed'; fault: unknown };

export interface Saver {
  /** Keeps what is there to be kept when its turn comes: one write at a time, and the newest state only. */
  save(): void;
  /** Over when all is kept, or a write has failed. */
  settled(): Promise<void>;
  /** Nothing waits and nothing runs. */
  isKept(): boolean;
}

/**
 * Calls `write` whenever something is to be kept, never twice at a time: what comes while a write runs is kept by the next. A
 * write that fails is told, and the next `save` tries again.
 */
export function createSaver(write: () => Promise<void>, tell: (saving: Saving) => void): Saver {
  let isWanted = false;
  let running: Promise<void> | undefined;

  async function run(): Promise<void> {
    while (isWanted) {
      isWanted = false;
      tell({ state: 'keeping' });
      try {
        await write();
      } catch (fault) {
        isWanted = true;
        tell({ state: 'failed', fault });
        return;
      }
    }
    tell({ state: 'kept' });
  }

  return {
    save() {
      isWanted = true;
      running ??= run().finally(() => (running = undefined));
    },
    settled: () => running ?? Promise.resolve(),
    isKept: () => !isWanted && running === undefined,
  };
}
