import type { Shop } from '../../job/shop';
import { readShop } from '../../job/shop';
import { backupWith, bringIn, openStore, replaceBy, storeProblem, type Store } from '../../store';
import { say } from '../../words/say';
import type { BackupAsk, BackupSaid, BackupTold } from './backupAside';

interface Scope {
  onmessage: ((event: MessageEvent<BackupAsk>) => void) | null;
  postMessage(message: BackupSaid): void;
}

const scope = globalThis as unknown as Scope;

/** The backup that was looked at last, until it is said what is to become of it. */
let held: Shop | undefined;

scope.onmessage = ({ data }) => {
  answer(data).then(
    (said) => scope.postMessage(said),
    (fault: unknown) => scope.postMessage({ kind: 'problem', sentence: say(storeProblem(fault)) }),
  );
};

async function answer(ask: BackupAsk): Promise<BackupSaid> {
  switch (ask.do) {
    case 'make':
      return make(ask);
    case 'look':
      return lookAt(ask.file);
    case 'replace':
      return within(ask.shop, async ({ database }) => {
        const shop = heldShop();
        await replaceBy(database, shop);
        return {
          kind: 'brought',
          came: {
            pieces: Object.keys(shop.pieces).length,
            cards: cardsOf(shop),
            rows: rowsOf(shop),
            left: [],
          },
        };
      });
    case 'beside':
      return within(ask.shop, async ({ database }) => ({
        kind: 'brought',
        came: await bringIn(database, heldShop()),
      }));
  }
}

async function make(ask: BackupAsk & { do: 'make' }): Promise<BackupSaid> {
  if (!('shop' in ask)) return { kind: 'made', ...(await backupWith(noDisk, ask.held)) };
  const { shop, held = { pieces: [], scans: [], photos: [] } } = ask;
  return within(shop, async (store) => ({ kind: 'made', ...(await backupWith(store.contents, held)) }));
}

const noDisk = (): Promise<never> => Promise.reject(new Error('the shop is kept by the page'));

async function lookAt(file: File): Promise<BackupSaid> {
  const read = readShop(await file.text(), file.name);
  if (!read.ok) {
    const { text } = say(read.problem);
    return { kind: 'problem', sentence: { text, hint: 'Choose another file. Nothing here was changed.' } };
  }
  held = read.value;
  return { kind: 'looked', told: toldOf(held) };
}

const toldOf = (shop: Shop): BackupTold => ({
  name: shop.name,
  pieces: Object.keys(shop.pieces).length,
  scans: Object.keys(shop.scans).length,
  cards: cardsOf(shop),
  rows: rowsOf(shop),
  photos: Object.keys(shop.photos ?? {}).length,
});

const cardsOf = ({ foams, silicones }: Shop): number => foams.length + silicones.length;

const rowsOf = ({ book }: Shop): number => (Array.isArray(book) ? book.length : 0);

function heldShop(): Shop {
  if (held === undefined) throw new Error('backup.worker: expected a backup that was looked at, got none');
  return held;
}

async function within(name: string, work: (store: Store) => Promise<BackupSaid>): Promise<BackupSaid> {
  const store = openStore(name);
  try {
    return await work(store);
  } finally {
    store.close();
  }
}
