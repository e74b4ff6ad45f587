import { finding, type Problem } from '../../problem';
import type { ShopView } from '../../store';
import { isEmptyShop } from '../shelf/isEmptyShop';

/*
 * What was kept when a shop was looked at last, written down apart from it. A browser that finds its own files damaged empties its store without
 * a word to anyone; with this a page that finds nothing knows that there was something.
 */

/** Where it is written down; none where the browser lets the page write nothing. */
export type Notes = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const keyOf = (shop: string): string => `${shop}: kept here`;

/** Notes what is kept now, for the next time. What cannot be noted is not. */
export function noteKept(notes: Notes | undefined, shop: string, view: ShopView): void {
  const { pieces, lastBackup } = view;
  try {
    if (isEmptyShop(view)) notes?.removeItem(keyOf(shop));
    else notes?.setItem(keyOf(shop), JSON.stringify({ pieces: pieces.length, lastBackup }));
  } catch {
    // Of use only where it can be had.
  }
}

/** That a shop in which something was kept is found with nothing in it; undefined where all is as it should be. */
export function emptiedProblem(notes: Notes | undefined, shop: string, view: ShopView): Problem | undefined {
  if (!isEmptyShop(view)) return undefined;
  const noted = readNote(notes, shop);
  if (noted === undefined) return undefined;
  const { pieces, lastBackup } = noted;
  return finding('STORE_EMPTIED', 'stop', {
    pieces: typeof pieces === 'number' ? pieces : 0,
    ...(typeof lastBackup === 'string' ? { lastBackup } : {}),
  });
}

function readNote(
  notes: Notes | undefined,
  shop: string,
): { pieces?: unknown; lastBackup?: unknown } | undefined {
  try {
    const text = notes?.getItem(keyOf(shop));
    const noted: unknown = typeof text === 'string' ? JSON.parse(text) : undefined;
    return typeof noted === 'object' && noted !== null ? noted : undefined;
  } catch {
    return undefined;
  }
}

/** Of the browser. Reading the property alone throws where storage is forbidden. */
export function browserNotes(): Notes | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}
