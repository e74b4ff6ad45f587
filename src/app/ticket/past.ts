import { readQuantity } from '../../units';
import type { PastCasting } from '../../yield';

/** Castings as typed: read, or the piece of text that could not be. */
export type PastRead = { ok: true; past: PastCasting[] } | { ok: false; text: string };

/** More of one pack than these are typed by mistake. Chosen here. */
const MOST = 1000;

/**
 * "1.15 short, 1.25 filled 3": each by its pack factor, whether the mold filled, and how many there were if more than one. They stand apart by a
 * comma and a space or by a semicolon, so that 1,25 is one number.
 */
export function readPastText(text: string): PastRead {
  const past: PastCasting[] = [];
  for (const piece of text.split(/;|,\s/).map((one) => one.trim())) {
    if (piece === '') continue;
    const [, pack = '', how = '', count = '1'] = /^(\S+)\s+(filled|short)(?:\s+(\d+))?$/i.exec(piece) ?? [];
    const packFactor = readQuantity(pack, 'packFactor');
    const many = Number(count);
    if (packFactor.kind !== 'one' || many < 1 || many > MOST) return { ok: false, text: piece };
    const casting = { packFactor: packFactor.value, filled: how.toLowerCase() === 'filled' };
    past.push(...Array.from({ length: many }, () => casting));
  }
  return { ok: true, past };
}
