import type { WeighFacts } from '../../src/app/weigh/pourOfWeigh';
import { SAMPLE_ROWS } from '../../src/job/sampleBook';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import type { WeighBox, WeighState } from '../../src/job/weighState';
import type { ShopCore } from '../../src/store';

const { pieces: _pieces, scans: _scans, ...bare } = SAMPLE_SHOP;
/** The sample shop with its book. */
export const SHOP_CORE: ShopCore = { ...bare, book: SAMPLE_ROWS };

/** Of a troll that is to be number 13. */
export const FACTS: WeighFacts = {
  piece: '1-troll',
  mold: 'm',
  casting: 'c13',
  no: 13,
  planned: {
    partAG: 379,
    partBG: 209,
    totalG: 588,
    stepG: 1,
    packFactor: 1.25,
    cavityCm3: 4478,
    foam: 'Sample Foam Light',
  },
  bench: { roomC: 22, moldC: 36, opening: 'plug', day: '2026-11-30' },
  units: {},
  stepG: 1,
};

/** Texts in their boxes, in g and C. */
export const typed = (
  texts: Partial<Record<WeighBox, string>>,
  more: Partial<WeighState> = {},
): WeighState => ({
  boxes: Object.fromEntries(
    Object.entries(texts).map(([box, text]) => [box, { text, unit: BOX_UNITS[box] }]),
  ),
  ...more,
});
const BOX_UNITS: Record<string, string> = {
  room: 'C',
  mold: 'C',
  ...Object.fromEntries(['mixed', 'residue', 'trim', 'casting'].map((box) => [box, 'g'])),
};
/** The four weights of the mock. */
export const FOUR = { mixed: '587', residue: '25', trim: '29', casting: '531' };
