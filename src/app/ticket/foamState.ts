import type { Source } from '../../estimate';
import { SAMPLE_SHOP } from '../../job/sampleShop';

/** What was said of the foam beside what was typed into boxes. */
export interface FoamSaid {
  name: string;
  from: FoamSource;
  by: 'mass' | 'volume';
  /** The card of the shop that was used, with its ratio as it stood there: a ratio typed the other way round is noticed. */
  card: { name: string; a: number; b: number; by: 'mass' | 'volume' } | undefined;
  /** The cups that the free rise was worked out from, and their doubt; of that figure alone. */
  cup?: { kgM3: number; uShare: number } | undefined;
}

/** How the free rise of a card can be known. */
export const FOAM_SOURCES = [
  'given',
  'data-sheet',
  'cup-test',
  'assumed',
  'learned',
] as const satisfies readonly Source[];
type FoamSource = (typeof FOAM_SOURCES)[number];

export const newFoam = (): FoamSaid => ({ name: '', from: 'data-sheet', by: 'mass', card: undefined });

/** The card that was used, unless the foam goes by another name since: then it is another foam. */
export const cardUsed = ({ card, name }: FoamSaid): FoamSaid['card'] =>
  card?.name === name.trim() ? card : undefined;

/** A card of the invented shop, as it stands there. */
export function isSampleFoam(foam: FoamSaid): boolean {
  const used = cardUsed(foam);
  return SAMPLE_SHOP.foams.some(
    ({ name, ratio }) =>
      name === used?.name && ratio.a === used.a && ratio.b === used.b && ratio.by === used.by,
  );
}
