import { bad, good, type Outcome } from '../problem';
import { readFoamCard, type FoamCard } from '../yield';

/** A shop's file: material cards, stock and scale. What a later version adds is carried along, never dropped. */
export interface Shop {
  schema: 'risewright/shop@1';
  name: string;
  foams: FoamCard[];
  silicones: unknown[];
  stock: unknown[];
  scale?: { stepG: number; maxG: number };
}

/**
 * Reads a shop from its JSON text. `file` is only for the message.
 * Errors: SHOP_FILE (not JSON, not a shop, or of a newer version), FOAM_CARD_FIELD.
 */
export function readShop(text: string, file: string): Outcome<Shop> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (e) {
    return bad('SHOP_FILE', { file, why: `it is not JSON (${e instanceof Error ? e.message : String(e)})` });
  }
  if (!isRecord(json)) return bad('SHOP_FILE', { file, why: 'it is not a shop' });
  const { schema, foams, scale, name } = json;
  if (schema !== 'risewright/shop@1')
    return bad('SHOP_FILE', { file, why: `its schema is ${String(schema)}, not risewright/shop@1` });
  if (!Array.isArray(foams)) return bad('SHOP_FILE', { file, why: 'it has no list of foams' });
  const cards: FoamCard[] = [];
  for (const foam of foams) {
    const card = readFoamCard(foam);
    if (!card.ok) return card;
    cards.push(card.value);
  }
  const twice = firstTwice(cards.map((card) => card.name));
  if (twice !== undefined) return bad('SHOP_FILE', { file, why: `two foam cards are called "${twice}"` });
  const shop: Shop = {
    schema,
    name: typeof name === 'string' ? name : '',
    foams: cards,
    silicones: listOf(json.silicones),
    stock: listOf(json.stock),
  };
  if (scale === undefined) return good(shop);
  const read = readScale(scale);
  return typeof read === 'string' ? bad('SHOP_FILE', { file, why: read }) : good({ ...shop, scale: read });
}

/** The scale, or what is wrong with it. */
function readScale(scale: unknown): NonNullable<Shop['scale']> | string {
  if (!isRecord(scale) || typeof scale.stepG !== 'number' || !(scale.stepG > 0))
    return 'its scale has no step in grams';
  const { stepG, maxG } = scale;
  if (maxG === undefined) return { stepG, maxG: Infinity };
  return typeof maxG === 'number' && maxG > 0
    ? { stepG, maxG }
    : 'the most its scale takes is no number of grams';
}

const firstTwice = (names: readonly string[]): string | undefined =>
  names.find((name, index) => names.indexOf(name) !== index);

/** The card of exactly that name. */
export function foamNamed(shop: Shop, name: string): Outcome<FoamCard> {
  const card = shop.foams.find((foam) => foam.name === name);
  if (card !== undefined) return good(card);
  return bad('CARD_UNKNOWN', { name, known: shop.foams.map((foam) => `"${foam.name}"`).join(', ') });
}

const listOf = (value: unknown): unknown[] => (Array.isArray(value) ? (value as unknown[]) : []);

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
