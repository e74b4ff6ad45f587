import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Piece } from '../../src/job/piece';
import { castingKey, sculptKey, withSeenCasting, withSeenSculpt } from '../../src/job/seen';
import { castingState, castingsWords } from '../../src/app/shelf/castingState';
import { moldNote, moldWords } from '../../src/app/shelf/moldWords';
import { nextStep } from '../../src/app/shelf/nextStep';
import { isEmptyShop } from '../../src/app/shelf/isEmptyShop';
import { shopContents } from '../../src/app/shelf/shopContents';
import { extentsWords, volumeWords } from '../../src/app/shelf/sizeWords';
import { freeName, nameOf } from '../../src/app/shelf/pieceNames';
import { backupName } from '../../src/app/shop/backupName';
import { newPiece } from '../../src/app/ticket/newPiece';
import { nextCasting, nextMold } from '../../src/app/ticket/nextCasting';
import { dayWords } from '../../src/app/words/dayWords';
import { emptyCore } from '../../src/store';

const VERSION = 'of the test';
beforeAll(() => void vi.stubGlobal('__APP_VERSION__', VERSION));
afterAll(() => void vi.unstubAllGlobals());

const fresh = newPiece({ name: 'Quay Troll head', today: '2026-01-01', core: emptyCore() });
const scanned: Piece = { ...fresh, sculpt: { ...fresh.sculpt, scan: 's' } };
const sized = withSeenSculpt(scanned, {
  on: sculptKey(scanned, VERSION),
  size: { extentsMm: [263, 230, 290.85], volumeCm3: { value: 4426.4, low: 4372, high: 4480, from: 'taped' } },
});
const inSkin: Piece = {
  ...sized,
  molds: {
    [sized.hand.mold]: {
      ...sized.molds[sized.hand.mold]!,
      choices: { molding: { type: 'skin' } },
    },
  },
};
const poured = (piece: Piece, more: object = {}): Piece =>
  withSeenCasting(piece, piece.hand.casting, {
    on: castingKey(piece, piece.hand.casting, VERSION),
    day: '2026-01-02',
    packFactor: 1.25,
    partAG: 379,
    partBG: 209,
    totalG: 588,
    stepG: 1,
    ...more,
  });

describe('the next step of a piece', () => {
  it.each<[string, Piece, unknown, string, string]>([
    ['without a scan is to measure it', fresh, undefined, 'Measure it', 'measure'],
    ['whose size is not worked out is to measure it', scanned, undefined, 'Measure it', 'measure'],
    ['that has a size is its mold', sized, undefined, 'Choose the mold', 'mold'],
    ['that has a mold is to plan the casting', inSkin, undefined, 'Plan QUAY-1', 'batch'],
    ['that has grams is to make it ready', poured(inSkin), undefined, 'Make QUAY-1 ready', 'batch'],
    ['that is ready is to pour it', poured(inSkin, { isReady: true }), undefined, 'Pour QUAY-1', 'bench'],
    [
      'that was poured is the next pour',
      poured(inSkin),
      [{ piece: fresh.id, no: 1 }],
      'Plan the next pour',
      'batch',
    ],
  ])('%s', (_, piece, book, words, at) => {
    expect(nextStep(piece, book)).toMatchObject({ words, at });
  });

  it('is to measure it again once something said of the sculpt has changed', () => {
    const retaped = { ...sized, sculpt: { ...sized.sculpt, fields: { tape: { text: '291' } } } };
    expect(nextStep(retaped, undefined).words).toBe('Measure it');
  });

  it('is no longer to pour once the casting has changed since it was ready', () => {
    const ready = poured(inSkin, { isReady: true });
    const { casting } = ready.hand;
    const changed = {
      ...ready,
      castings: { [casting]: { ...ready.castings[casting]!, fields: { pack: { text: '1.3' } } } },
    };
    expect(castingState(changed, casting, undefined)).toBe('planned');
  });
});

describe('a row', () => {
  it('counts castings by their state', () => {
    const two = nextCasting(inSkin, inSkin.hand.casting);
    expect(castingsWords(two, [{ piece: two.id, no: 1 }])).toBe('1 poured, 1 planned');
    expect(castingsWords(two, undefined)).toBe('2 planned');
    expect(castingsWords(two, 'no list')).toBe('2 planned');
    expect(castingsWords(two, [{ piece: 'another', no: 1 }, 5])).toBe('2 planned');
  });

  it('names each mold by its type and its number', () => {
    const two = nextMold(inSkin);
    expect(Object.keys(two.molds).map((id) => moldWords(two, id))).toEqual([
      'Brushed skin, 1',
      'Brushed skin, 2',
    ]);
    expect(moldNote(two, two.hand.mold)).toBe('1 casting of it');
    expect(moldWords(fresh, fresh.hand.mold)).toBe('Mold 1');
    const unknown = {
      ...inSkin,
      molds: { m: { no: 3, fields: {}, choices: { molding: { type: 'later' } } } },
    };
    expect(moldWords(unknown, 'm')).toBe('Mold 3');
  });

  it('says the size with its range and its source', () => {
    const size = {
      extentsMm: [263, 230, 290.85] as [number, number, number],
      volumeCm3: { value: 4426.4, low: 4372.2, high: 4480.1, from: 'taped' as const },
    };
    expect(extentsWords(size)).toBe('263 × 230 × 291 mm');
    expect(volumeWords(size)).toBe('4\u202f426 cm³, 4\u202f372 to 4\u202f481, taped');
  });
});

describe('names', () => {
  it('of a new piece are free, and a scan gives its own without the ending', () => {
    expect(freeName('New piece', [])).toBe('New piece');
    expect(freeName('New piece', ['New piece', 'New piece 2'])).toBe('New piece 3');
    expect([nameOf('quay-troll.stl'), nameOf('a.b.obj'), nameOf('.stl')]).toEqual([
      'quay-troll',
      'a.b',
      '.stl',
    ]);
  });

  it('of a backup go on every disk', () => {
    expect(backupName('Wrack Lane Puppet Works (invented)', '2026-11-29')).toBe(
      'wrack-lane-puppet-works-invented-2026-11-29.json',
    );
    expect(backupName('../Söder & Söhne: "1/2"', '2026-11-29')).toBe('söder-söhne-1-2-2026-11-29.json');
    expect(backupName('   ', '2026-11-29')).toBe('shop-2026-11-29.json');
  });

  it('of days are read at once', () => {
    expect(dayWords('2026-11-02')).toBe('2\u00a0Nov 2026');
    expect([dayWords('2026-13-02'), dayWords('soon')]).toEqual(['2026-13-02', 'soon']);
  });
});

describe('what stands in a shop', () => {
  it('is told with what goes when it is forgotten', () => {
    const view = { core: emptyCore(), pieces: [scanned, { ...scanned, id: 'other' }], lastBackup: undefined };
    expect(shopContents(view)).toBe('2 pieces with 2 castings and 1 scan');
    expect(shopContents({ ...view, pieces: [] })).toBe('nothing');
    expect(
      shopContents({
        ...view,
        core: { ...emptyCore(), stock: [{ card: 'X' }], scale: { stepG: 1 } },
        pieces: [],
      }),
    ).toBe('1 lot of stock and the settings');
  });

  it('is nothing in an empty one only', () => {
    const empty = { core: emptyCore(), pieces: [], lastBackup: '2026-01-01' };
    expect(isEmptyShop(empty)).toBe(true);
    expect(isEmptyShop({ ...empty, core: { ...emptyCore(), settings: {} } })).toBe(false);
    expect(isEmptyShop({ ...empty, pieces: [fresh] })).toBe(false);
  });
});
