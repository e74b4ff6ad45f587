import type { ShopView, ShopStore } from '../../store';

/** What the shop has now, read from the store: also for who is faster than its first answer. */
export const viewNow = (store: ShopStore): Promise<ShopView> =>
  new Promise((resolve, reject) => {
    // The store answers in a later turn: by then there is something to stop.
    const stop = store.watch(
      (view) => {
        stop();
        resolve(view);
      },
      (fault) => {
        stop();
        reject(fault instanceof Error ? fault : new Error(String(fault)));
      },
    );
  });
