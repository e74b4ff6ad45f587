import { sheetOf } from '../../job/foamSheet';
import { stockTotals, type StockPart } from '../../job/stockTotals';
import type { ShopCore } from '../../store';
import { massRatio } from '../../yield/foam';
import { stockBoxes, type Box } from './stockBoxes';

/** A part of a material as it stands on the stock shelf. */
export interface PartLeft {
  part: StockPart;
  name: string;
  leftKg: number;
  boxes: Box[];
}

/** What is left of one card, part by part: a kit's A without its B makes no foam. Parts that nobody has counted are left out. */
export interface CardLeft {
  card: string;
  kind: 'foam' | 'silicone' | 'unknown';
  parts: PartLeft[];
}

const NAMES: Readonly<Record<StockPart, string>> = {
  aKg: 'A',
  bKg: 'B',
  baseKg: 'base',
  catalystKg: 'catalyst',
};

/** Every card of the shop, and every name that the stock has besides. */
export function stockLeft(core: ShopCore): CardLeft[] {
  const names = [
    ...core.foams.map(({ name }) => name),
    ...core.silicones.map(({ name }) => name),
    ...core.stock.map(({ card }) => card),
  ];
  return [...new Set(names)].map((card) => ({
    card,
    kind: core.foams.some(({ name }) => name === card)
      ? 'foam'
      : core.silicones.some(({ name }) => name === card)
        ? 'silicone'
        : 'unknown',
    parts: partsOf(core, card),
  }));
}

function partsOf(core: ShopCore, card: string): PartLeft[] {
  const sizes = kitParts(core, card);
  return Object.entries(stockTotals(core.stock, card)).map(([part, leftKg]) => ({
    part: part as StockPart,
    name: NAMES[part as StockPart],
    leftKg,
    boxes: stockBoxes(leftKg, sizes[part as StockPart] ?? []),
  }));
}

/** What one kit of each size of the card holds of each part. */
function kitParts(core: ShopCore, card: string): Partial<Record<StockPart, number[]>> {
  const foam = core.foams.find(({ name }) => name === card);
  if (foam !== undefined) {
    const kits = sheetOf(foam).kits ?? [];
    const ratio = massRatio(foam.ratio, foam.partDensities);
    if (!ratio.ok) return {};
    const { a, b } = ratio.value;
    return {
      aKg: kits.map(({ massKg }) => (massKg * a) / (a + b)),
      bKg: kits.map(({ massKg }) => (massKg * b) / (a + b)),
    };
  }
  const silicone = core.silicones.find(({ name }) => name === card);
  if (silicone === undefined) return {};
  const { base, catalyst } = silicone.ratio;
  return {
    baseKg: silicone.kits.map(({ massKg }) => (massKg * base) / (base + catalyst)),
    catalystKg: silicone.kits.map(({ massKg }) => (massKg * catalyst) / (base + catalyst)),
  };
}
