import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it } from 'vitest';
import { storeProblem } from '../../src/store/fault';
import { newId } from '../../src/store/newId';
import { openStore, type Store } from '../../src/store/store';
import { digestOf, doStep, stepName, STEPS_A_ROUND } from '../support/storeWork';

/*
 * A device that has no room left, at every write of a round of work in turn: pieces, scans, photos, rows, the bin, backups. Browsers say it
 * in three ways: a write throws, it fails, or all writes seem to be done and the transaction is then taken back as a whole.
 */

type Put = (this: IDBObjectStore, ...all: unknown[]) => IDBRequest;
const table = IDBObjectStore.prototype as unknown as Record<'add' | 'put', Put>;
const real = { add: table.add, put: table.put };

/** What of the stand-in for IndexedDB is not of the standard, and is needed to let it fail as browsers do. */
interface Inner {
  _abort(name: string): void;
  _execRequestAsync(asked: { operation: () => unknown }): unknown;
  dispatchEvent(event: Event): boolean;
}
const innerOf = (transaction: IDBTransaction): Inner => transaction as unknown as Inner;

const noRoom = (): never => {
  throw new DOMException('no room', 'QuotaExceededError');
};

const WAYS: readonly (readonly [name: string, fail: (put: Put) => Put])[] = [
  ['a write that throws', () => noRoom],
  [
    'a write that fails',
    (put) =>
      function (this: IDBObjectStore, ...all) {
        const inner = innerOf(this.transaction);
        const real = Reflect.get(inner, '_execRequestAsync') as (asked: object) => unknown;
        inner._execRequestAsync = (asked) => real.call(inner, { ...asked, operation: noRoom });
        try {
          return put.apply(this, all);
        } finally {
          inner._execRequestAsync = real;
        }
      },
  ],
  [
    'a transaction that cannot be ended, all of whose writes seemed to be done',
    (put) =>
      function (this: IDBObjectStore, ...all) {
        const inner = innerOf(this.transaction);
        const real = inner.dispatchEvent.bind(inner);
        inner.dispatchEvent = (event) => {
          if (event.type !== 'complete') return real(event);
          inner._abort('QuotaExceededError');
          return true;
        };
        return put.apply(this, all);
      },
  ],
];

/** Counts the writes from here on, and lets the one of that number (from 1) find no room; 0: none. */
function armed(fullAt: number, fail: (put: Put) => Put): { writes: number } {
  const count = { writes: 0 };
  for (const way of ['add', 'put'] as const)
    table[way] = function (this: IDBObjectStore, ...all) {
      return (++count.writes === fullAt ? fail(real[way]) : real[way]).apply(this, all);
    };
  return count;
}

const stores: Store[] = [];
afterEach(() => {
  Object.assign(table, real);
  stores.splice(0).forEach((store) => store.close());
});

describe.each(WAYS)('no room for %s', (_, fail) => {
  it('at any write of a round: what was kept stays to the byte, it is said, and with room again it goes on', async () => {
    const store = openStore(newId());
    stores.push(store);
    let full = 0;
    for (let step = 0; step < STEPS_A_ROUND; step++) {
      const before = await digestOf(store);
      for (let n = 1; ; n++) {
        const count = armed(n, fail);
        const said = await doStep(store, step).then(
          () => undefined,
          (fault: unknown) => storeProblem(fault),
        );
        Object.assign(table, real);
        // The step has fewer writes than that: it is done.
        if (count.writes < n) {
          expect(said).toBeUndefined();
          break;
        }
        full++;
        expect(said?.code, `${stepName(step)}, write ${n}`).toBe('STORE_FULL');
        expect(await digestOf(store), `${stepName(step)}, write ${n}`).toBe(before);
      }
    }
    expect(full).toBeGreaterThanOrEqual(STEPS_A_ROUND);
    // As after a round in which there was always room.
    const other = openStore(newId());
    stores.push(other);
    for (let step = 0; step < STEPS_A_ROUND; step++) await doStep(other, step);
    expect(await digestOf(store)).toBe(await digestOf(other));
  });
});
