import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import type { PourRow } from '../../src/job/book';
import { mergeBooks } from '../../src/job/book/mergeBooks';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { emptyShop, readShop } from '../../src/job/shop';
import { backupOf, bringIn } from '../../src/store/backup';
import { newId } from '../../src/store/newId';
import { openStore } from '../../src/store/store';
import { valueOf } from '../support/outcome';

const pour = (id: string, more: Partial<PourRow> = {}): PourRow => ({ kind: 'pour', id, ...more });

describe('the books of two shops as one', () => {
  it('hold the rows of both, each once: those that are here first, and as they are here', () => {
    const here = [pour('a', { no: 1, skin: 3 }), pour('b')];
    const theirs = [pour('b'), pour('c'), pour('a', { no: 1, skin: 5 })];
    expect(mergeBooks(here, theirs)).toEqual({
      book: [here[0], here[1], pour('c')],
      added: 1,
      left: ['pour 1 of the Book'],
    });
  });

  it('name what was left so that it can be found', () => {
    const here = [
      pour('a'),
      { kind: 'cup', id: 'b', day: '2026-03-01' },
      { kind: 'fill', id: 'c' },
      { id: 'd', kind: 'mood' },
    ];
    const theirs = here.map((row) => ({ ...row, note: 'else' }));
    expect(mergeBooks(here, theirs).left).toEqual([
      'a pour of the Book',
      'a cup test of the Book (2026-03-01)',
      'a water fill of the Book',
      'a row of the Book',
    ]);
  });

  it('hold entries that cannot be read too: by their id, or where they have none by what they say', () => {
    const here = [{ later: 1 }, { no: 3, piece: 'p' }];
    const theirs = [{ later: 1 }, { later: 2 }, { id: 'pour-3', kind: 'pour', no: 3, piece: 'p' }];
    // A row of the first form is the same row as one of the second under its number, though it says it otherwise.
    expect(mergeBooks(here, theirs)).toEqual({
      book: [{ later: 1 }, { no: 3, piece: 'p' }, { later: 2 }],
      added: 1,
      left: ['pour 3 of the Book'],
    });
  });

  it('are the one book where the other shop has none, and a book that is no list is left alone', () => {
    expect(mergeBooks(undefined, undefined)).toEqual({ book: undefined, added: 0, left: [] });
    expect(mergeBooks([pour('a')], undefined)).toEqual({ book: [pour('a')], added: 0, left: [] });
    expect(mergeBooks(undefined, [pour('a')])).toEqual({ book: [pour('a')], added: 1, left: [] });
    expect(mergeBooks({ later: 1 }, [pour('a')])).toEqual({
      book: { later: 1 },
      added: 0,
      left: ['the Book'],
    });
    expect(mergeBooks({ later: 1 }, { later: 1 })).toEqual({ book: { later: 1 }, added: 0, left: [] });
  });

  it('come together when a backup is put beside what is here, and twice is once', async () => {
    const store = openStore(newId());
    const mine = pour('mine', { no: 1 });
    await store.changeCore((core) => ({ ...core, book: [mine, { ...SAMPLE_ROWS[0], note: 'mine' }] }));
    const theirs = { ...emptyShop(), book: SAMPLE_ROWS };
    const came = await bringIn(store.database, theirs);
    expect(came).toEqual({ pieces: 0, cards: 0, rows: SAMPLE_ROWS.length - 1, left: ['pour 1 of the Book'] });
    const { book } = valueOf(readShop(await (await backupOf(store.database)).text(), 'b.json'));
    expect(book).toEqual([mine, { ...SAMPLE_ROWS[0], note: 'mine' }, ...SAMPLE_ROWS.slice(1)]);
    expect(await bringIn(store.database, theirs)).toMatchObject({ rows: 0 });
    store.close();
  });
});
