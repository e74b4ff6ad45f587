import type { BeyondStock, KitCover } from '../../yield';
import type { Mold, SiliconeNeed } from '../../plan';
import { formatMass } from '../../units';
import { amount, counted } from '../../words/sentence';
import { buyKg } from '../../words/buyKg';
import { rangeText } from '../../words/rangeText';

/** "294 × 260 × 320 mm". */
export const sidesWords = (sidesMm: readonly number[]): string =>
  `${sidesMm.map((mm) => Math.round(mm)).join(' × ')} mm`;

/** Kilograms with as many decimals as a kitchen of silicone wants: two, below one kilogram three. */
export function kgWords(massG: { value: number; low: number; high: number }): ReturnType<typeof rangeText> {
  const step = massG.value >= 1000 ? 0.01 : 0.001;
  return rangeText({ value: massG.value / 1000, low: massG.low / 1000, high: massG.high / 1000 }, { step });
}

export const totalKg = ({ silicone: { totalG, rangeG } }: Mold): ReturnType<typeof rangeText> =>
  kgWords({ value: totalG, low: Math.min(totalG, rangeG[0]), high: rangeG[1] });

/** "4.23 kg (9 lb 5.2 oz)": jackets and molds are not weighed to the gram. */
export const heavyWords = (massG: number): string =>
  massG < 1000 ? formatMass(massG) : `${amount(massG / 1000, 3)} kg (${formatMass(massG, 'us')})`;

/** What stands around the rubber: "in a box" or "in a jacket of 2 pieces". */
export function shellWords({ shape: { box, jacket } }: Mold): string {
  if (jacket !== undefined) return `in a jacket of ${counted(jacket.pieces, 'piece')}`;
  if (box === undefined) return 'on its own';
  return box.kind === 'cylinder' ? 'in a cylinder' : 'in a box';
}

/** The same for a cell of the table, with the size of a box. */
export function shellCell({ shape: { box, jacket } }: Mold): string {
  if (jacket !== undefined) return `${counted(jacket.pieces, 'piece')} of jacket`;
  if (box === undefined) return 'none';
  const [x, , z] = box.innerMm;
  return box.kind === 'cylinder'
    ? `cylinder ${Math.round(x)} across × ${Math.round(z)} mm`
    : `box ${sidesWords(box.innerMm)}`;
}

export const thicknessCell = ({ shape: { wallMm, coats } }: Mold): string =>
  coats === undefined ? amount(wallMm, 3) : `${amount(wallMm, 3)}, in ${counted(coats.length, 'coat')}`;

export const lockedCell = ({ shape: { undercut } }: Mold): string =>
  undercut === undefined
    ? 'cut by hand'
    : undercut.fillMm3 < 1000
      ? 'under 1'
      : amount(undercut.fillMm3 / 1000, 3);

export function buyCell({ purchase, stock, totalG }: SiliconeNeed): string {
  if (purchase !== undefined) return buyShort(purchase);
  const needKg = needOf(stock, totalG);
  return needKg === 0 ? 'nothing' : buyKg(needKg);
}

/** What the kits cost, where each has a price. */
export const costCell = ({ purchase, stock, totalG }: SiliconeNeed): string =>
  purchase?.price !== undefined
    ? amount(purchase.price, 9)
    : needOf(stock, totalG) === 0
      ? 'nothing'
      : 'not known';

export const needOf = (stock: BeyondStock | undefined, totalG: number): number =>
  stock?.needKg ?? totalG / 1000;

/** "2 × 5.5 kg and 1 × 1.1 kg", where room is short. */
export const buyShort = ({ kits }: KitCover): string =>
  kits.map(({ count, massKg }) => `${count} × ${amount(massKg)} kg`).join(' and ');
