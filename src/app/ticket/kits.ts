import { readQuantity } from '../../units';
import type { SiliconeKit } from '../../yield';

/** Kits as typed: read, or the piece of text that could not be, and what is wrong with it. */
export type KitsRead = { ok: true; kits: SiliconeKit[] } | { ok: false; text: string };

/**
 * "1.1 kg=30, 5.5 kg=130": each kit by its mass, base and catalyst together, and behind a sign of equality its price in the shop's own money, if it is
 * known. Kits stand apart by a comma and a space or by a semicolon, so that 1,1 kg is one number; a mass without a unit is in kg.
 */
export function readKitsText(text: string): KitsRead {
  const pieces = text.split(/;|,\s/).map((piece) => piece.trim());
  const kits: SiliconeKit[] = [];
  for (const piece of pieces.filter((one) => one !== '')) {
    const [mass = '', price, more] = piece.split('=').map((side) => side.trim());
    const massG = readQuantity(mass, 'mass', { bareUnit: 'kg' });
    if (massG.kind !== 'one' || more !== undefined) return { ok: false, text: piece };
    const massKg = massG.value / 1000;
    if (price === undefined) {
      kits.push({ massKg });
      continue;
    }
    const paid = readQuantity(price, 'plain', { allowZero: true });
    if (paid.kind !== 'one') return { ok: false, text: piece };
    kits.push({ massKg, price: paid.value });
  }
  return { ok: true, kits };
}
