import { describe, expect, it } from 'vitest';
import { emptiedProblem, noteKept, type Notes } from '../../src/app/shop/keptBefore';
import { newPiece } from '../../src/app/ticket/newPiece';
import { emptyCore, type ShopView } from '../../src/store';
import { say } from '../../src/words/say';

const EMPTY: ShopView = { core: emptyCore(), pieces: [], lastBackup: undefined };
const filled = (lastBackup?: string): ShopView => ({
  core: emptyCore(),
  pieces: [newPiece({ name: 'Troll', today: '2026-01-01', core: emptyCore() })],
  lastBackup,
});

function notes(): Notes {
  const all = new Map<string, string>();
  return {
    getItem: (key) => all.get(key) ?? null,
    setItem: (key, text) => void all.set(key, text),
    removeItem: (key) => void all.delete(key),
  };
}

describe('a shop that is found with nothing in it', () => {
  it('although something was kept is told of, with how much it was and when it was backed up', () => {
    const kept = notes();
    noteKept(kept, 'own', filled('2026-11-29'));
    const problem = emptiedProblem(kept, 'own', EMPTY)!;
    expect(problem).toMatchObject({ code: 'STORE_EMPTIED', values: { pieces: 1, lastBackup: '2026-11-29' } });
    expect(say(problem).text).toContain('1 piece when this page was open last');
    expect(say(problem).hint).toContain('2026-11-29');
  });

  it('is told as without a backup where there was none', () => {
    const kept = notes();
    noteKept(kept, 'own', filled());
    expect(say(emptiedProblem(kept, 'own', EMPTY)!).hint).toContain('there is none');
  });

  it.each<[string, (kept: Notes) => void]>([
    ['that was never used', () => undefined],
    ['that was emptied here', (kept) => (noteKept(kept, 'own', filled()), noteKept(kept, 'own', EMPTY))],
    ['of another name', (kept) => noteKept(kept, 'other', filled())],
    ['whose note cannot be read', (kept) => kept.setItem('own: kept here', '{')],
  ])('%s is as it should be', (_, before) => {
    const kept = notes();
    before(kept);
    expect(emptiedProblem(kept, 'own', EMPTY)).toBeUndefined();
  });

  it('a shop with something in it, and a browser that lets nothing be noted, are left alone', () => {
    const kept = notes();
    noteKept(kept, 'own', filled());
    expect(emptiedProblem(kept, 'own', filled())).toBeUndefined();
    const closed: Notes = {
      getItem: () => {
        throw new Error('no');
      },
      setItem: () => {
        throw new Error('no');
      },
      removeItem: () => undefined,
    };
    noteKept(closed, 'own', filled());
    expect(emptiedProblem(closed, 'own', EMPTY)).toBeUndefined();
    expect(emptiedProblem(undefined, 'own', EMPTY)).toBeUndefined();
  });
});
