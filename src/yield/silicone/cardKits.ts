import { bad, good } from '../../problem';
import type { Outcome } from '../../problem';
import { isWithin } from './checkSilicone';
import type { SiliconeKit } from './kits';
import { SILICONE_BOUNDS } from './rules';

/**
 * The kits of a card: `kitsKg` [1.1, 5.5] of older files, or `kits` with `kg` or `massKg` each and a price if it is
 * known. None is no error: it only means that nothing can be said about buying.
 */
export function readKits(json: Record<string, unknown>): Outcome<SiliconeKit[]> {
  const { kits, kitsKg } = json;
  if (kits !== undefined && kitsKg !== undefined)
    return field('kits', 'to be alone: kitsKg stands beside it');
  const name = kitsKg === undefined ? 'kits' : 'kitsKg';
  const list: unknown = kits ?? kitsKg ?? [];
  if (!Array.isArray(list)) return field(name, 'a list');
  if (list.length > SILICONE_BOUNDS.kits.high)
    return field(name, `a list of at most ${SILICONE_BOUNDS.kits.high} kits`);
  const read: SiliconeKit[] = [];
  for (const entry of list as unknown[]) {
    const kit = readKit(kitsKg === undefined ? entry : { kg: entry });
    if (typeof kit === 'string') return field(name, kit);
    read.push(kit);
  }
  return good(read);
}

/** The kit, or what the list needs instead. */
function readKit(entry: unknown): SiliconeKit | string {
  if (typeof entry !== 'object' || entry === null) return 'kits like { kg, price }';
  const { kg, massKg, price, ...more } = entry as Record<string, unknown>;
  const mass = kg ?? massKg;
  const { low, high } = SILICONE_BOUNDS.kitKg;
  if (!isWithin(mass, 'kitKg')) return `kits from ${low} to ${high} kg, base and catalyst together`;
  if (price === undefined || price === null) return { ...more, massKg: mass };
  return isWithin(price, 'kitPrice')
    ? { ...more, massKg: mass, price }
    : 'a price that is a number, 0 or more';
}

const field = (name: string, need: string): ReturnType<typeof bad> =>
  bad('SILICONE_CARD_FIELD', { field: name, need });
