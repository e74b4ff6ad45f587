import { afterEach } from 'vitest';
import { newId } from '../../src/store/newId';
import { openStore, type Store } from '../../src/store/store';

/** Opens stores by a name, or each by one of its own; all are closed after each test. Call it once a file. */
export function openedStores(): (name?: string) => Store {
  let open: Store[] = [];
  afterEach(() => {
    open.forEach((store) => store.close());
    open = [];
  });
  return (name = newId()) => {
    const store = openStore(name);
    open.push(store);
    return store;
  };
}
