/** What has to be over before an update may start the page anew. With a `why` it is told, and no update is offered meanwhile. */
interface Hold {
  why?: string;
}

export interface UpdateGate {
  hold: (why?: string) => () => void;
  /** The first reason that can be told. */
  why: () => string | undefined;
  subscribe: (heard: () => void) => () => void;
  /** Over as soon as nothing holds. */
  free: () => Promise<void>;
}

export function createUpdateGate(): UpdateGate {
  const holds = new Set<Hold>();
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const heard of [...listeners]) heard();
  };
  const subscribe = (heard: () => void): (() => void) => {
    listeners.add(heard);
    return () => void listeners.delete(heard);
  };
  return {
    hold: (why) => {
      const mine: Hold = why === undefined ? {} : { why };
      holds.add(mine);
      tell();
      return () => {
        holds.delete(mine);
        tell();
      };
    },
    why: () => [...holds].find(({ why }) => why !== undefined)?.why,
    subscribe,
    free: () =>
      new Promise((resolve) => {
        const look = (): void => {
          if (holds.size > 0) return;
          stop();
          resolve();
        };
        const stop = subscribe(look);
        look();
      }),
  };
}

/** The one of this page. */
export const updateGate = createUpdateGate();
