import type { FoamCard } from '../yield';

/** A kit of a foam: A and B together, with its price in the shop's own money where it is known. */
export interface FoamKit {
  massKg: number;
  price?: number;
}

/** What a data sheet tells beside what the grams hang on. It stands on a foam card of the shop, and is left out where it is not known. */
export interface FoamSheet {
  /** The temperature that the sheet's times and density hold at. */
  timesAtC?: number;
  /** Isocyanate groups in part A by weight, 0..1. */
  ncoShare?: number;
  /** Water in part B by weight, 0..1. */
  waterShare?: number;
  aPerKg?: number;
  bPerKg?: number;
  kits?: FoamKit[];
}

export type ShopFoam = FoamCard & FoamSheet;

/** What of the sheet stands on a card that was read; a figure that is none is left out, not repaired. */
export function sheetOf(card: FoamCard): FoamSheet {
  const json = card as unknown as Record<string, unknown>;
  const kits = Array.isArray(json.kits) ? (json.kits as unknown[]).filter(isKit) : [];
  return {
    ...Object.fromEntries(
      SHEET_NUMBERS.flatMap((name) => {
        const value = json[name];
        return typeof value === 'number' && Number.isFinite(value) ? [[name, value]] : [];
      }),
    ),
    ...(kits.length === 0 ? {} : { kits }),
  };
}

const SHEET_NUMBERS = ['timesAtC', 'ncoShare', 'waterShare', 'aPerKg', 'bPerKg'] as const;

function isKit(kit: unknown): kit is FoamKit {
  if (typeof kit !== 'object' || kit === null) return false;
  const { massKg, price } = kit as Record<string, unknown>;
  return (
    typeof massKg === 'number' &&
    massKg > 0 &&
    massKg < Infinity &&
    (price === undefined || (typeof price === 'number' && price >= 0))
  );
}
