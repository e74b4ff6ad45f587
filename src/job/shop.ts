import { bad, good, type Outcome } from '../problem';
import { readFoamCard, readSiliconeCard, type FoamCard, type SiliconeCard } from '../yield';
import { readStock, type StockRow } from './stockRow';

/**
 * A shop's file: material cards, stock and scale. What a later version adds, to the shop, to a silicone card or to a row
 * of stock, is carried along, never dropped.
 */
export interface Shop {
  schema: 'risewright/shop@1';
  name: string;
  foams: FoamCard[];
  silicones: SiliconeCard[];
  stock: StockRow[];
  scale?: { stepG: number; maxG: number };
}

/**
 * Reads a shop from its JSON text. `file` is only for the message.
 * Errors: SHOP_FILE (not JSON, not a shop, or of a newer version), FOAM_CARD_FIELD, SILICONE_CARD_FIELD.
 */
export function readShop(text: string, file: string): Outcome<Shop> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (e) {
    return bad('SHOP_FILE', { file, why: `it is not JSON (${e instanceof Error ? e.message : String(e)})` });
  }
  if (!isRecord(json)) return bad('SHOP_FILE', { file, why: 'it is not a shop' });
  const { schema, foams, scale, name, ...more } = json;
  if (schema !== 'risewright/shop@1')
    return bad('SHOP_FILE', { file, why: `its schema is ${String(schema)}, not risewright/shop@1` });
  if (!Array.isArray(foams)) return bad('SHOP_FILE', { file, why: 'it has no list of foams' });
  const foamCards = readCards({ list: foams, read: readFoamCard, kind: 'foam', file });
  if (!foamCards.ok) return foamCards;
  const silicones = listOf(json.silicones);
  const siliconeCards = readCards({ list: silicones, read: readSiliconeCard, kind: 'silicone', file });
  if (!siliconeCards.ok) return siliconeCards;
  const stock = readStock(listOf(json.stock));
  if (typeof stock === 'string') return bad('SHOP_FILE', { file, why: stock });
  const shop: Shop = {
    ...more,
    schema,
    name: typeof name === 'string' ? name : '',
    foams: foamCards.value,
    silicones: siliconeCards.value,
    stock,
  };
  if (scale === undefined) return good(shop);
  const read = readScale(scale);
  return typeof read === 'string' ? bad('SHOP_FILE', { file, why: read }) : good({ ...shop, scale: read });
}

/** The cards of one kind, each by a name of its own. */
function readCards<Card extends { name: string }>({
  list,
  read,
  kind,
  file,
}: {
  list: readonly unknown[];
  read: (json: unknown) => Outcome<Card>;
  kind: string;
  file: string;
}): Outcome<Card[]> {
  const cards: Card[] = [];
  for (const entry of list) {
    const card = read(entry);
    if (!card.ok) return card;
    cards.push(card.value);
  }
  const twice = firstTwice(cards.map((card) => card.name));
  return twice === undefined
    ? good(cards)
    : bad('SHOP_FILE', { file, why: `two ${kind} cards are called "${twice}"` });
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

/** The foam card of exactly that name. */
export const foamNamed = (shop: Shop, name: string): Outcome<FoamCard> => cardNamed(shop.foams, name);

/** The silicone card of exactly that name. */
export const siliconeNamed = (shop: Shop, name: string): Outcome<SiliconeCard> =>
  cardNamed(shop.silicones, name);

/** The lots of one material, none when the shop has none. */
export const stockOf = (shop: Shop, name: string): StockRow[] =>
  shop.stock.filter(({ card }) => card === name);

function cardNamed<Card extends { name: string }>(cards: readonly Card[], name: string): Outcome<Card> {
  const card = cards.find((known) => known.name === name);
  if (card !== undefined) return good(card);
  return bad('CARD_UNKNOWN', { name, known: cards.map((known) => `"${known.name}"`).join(', ') });
}

const listOf = (value: unknown): unknown[] => (Array.isArray(value) ? (value as unknown[]) : []);

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
