import { bad, good, type Outcome } from '../problem';
import { readFoamCard, readSiliconeCard, type FoamCard, type SiliconeCard } from '../yield';
import { isRecord, unsafeIn } from './json';
import { keyTwice } from './keyTwice';
import { readPhoto, type SavedPhoto } from './photo';
import { readPiece, type Piece } from './piece';
import { readScan, type SavedScan } from './scan';
import { readSettings, type ShopSettings } from './settings';
import { readStock, type StockRow } from './stockRow';

/**
 * A shop's file, of the app's backup and the command line alike: material cards, stock, scale, settings, pieces of work
 * and their scans. What a later version adds to any of them is carried along, never dropped.
 */
export interface Shop {
  schema: typeof SHOP_SCHEMA;
  name: string;
  foams: FoamCard[];
  silicones: SiliconeCard[];
  stock: StockRow[];
  scale?: { stepG: number; maxG?: number };
  settings?: ShopSettings;
  /** By id. */
  pieces: Record<string, Piece>;
  /** By the id that a sculpt names. */
  scans: Record<string, SavedScan>;
  /** By the id that a row of the book names. Left out where there is none. */
  photos?: Record<string, SavedPhoto>;
  /** Rows of past pours and tests, as they were written down: see `readBook`. What of them cannot be read stays all the same. */
  book?: unknown;
}

export const SHOP_SCHEMA = 'risewright/shop@2';

/** Every version ever released opens. The first had neither pieces nor scans; all else is the same. */
const READABLE: readonly unknown[] = ['risewright/shop@1', SHOP_SCHEMA];

/** A shop with nothing in it. */
export const emptyShop = (): Shop => ({
  schema: SHOP_SCHEMA,
  name: '',
  foams: [],
  silicones: [],
  stock: [],
  pieces: {},
  scans: {},
});

/**
 * Reads a shop from its JSON text. `file` is only for the message.
 * Errors: SHOP_FILE (not JSON, not a shop, with a key such as __proto__, or of a newer version), FOAM_CARD_FIELD, SILICONE_CARD_FIELD.
 */
export function readShop(text: string, file: string): Outcome<Shop> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (e) {
    return bad('SHOP_FILE', { file, why: `it is not JSON (${e instanceof Error ? e.message : String(e)})` });
  }
  if (!isRecord(json)) return bad('SHOP_FILE', { file, why: 'it is not a shop' });
  const twice = keyTwice(text);
  if (twice !== undefined)
    return bad('SHOP_FILE', { file, why: `something in it is called "${twice}" twice` });
  const unsafe = unsafeIn(json);
  if (unsafe !== undefined) return bad('SHOP_FILE', { file, why: unsafe });
  const { schema, foams, scale, settings, name, ...more } = json;
  if (!READABLE.includes(schema)) return bad('SHOP_FILE', { file, why: schemaWhy(schema) });
  if (name !== undefined && typeof name !== 'string')
    return bad('SHOP_FILE', { file, why: 'its name is not a text' });
  if (!Array.isArray(foams)) return bad('SHOP_FILE', { file, why: 'it has no list of foams' });
  const foamCards = readCards({ list: foams, read: readFoamCard, kind: 'foam', file });
  if (!foamCards.ok) return foamCards;
  const noList = ['silicones', 'stock'].find((key) => json[key] !== undefined && !Array.isArray(json[key]));
  if (noList !== undefined)
    return bad('SHOP_FILE', { file, why: `its ${noList} ${noList === 'stock' ? 'is' : 'are'} not a list` });
  const silicones = listOf(json.silicones);
  const siliconeCards = readCards({ list: silicones, read: readSiliconeCard, kind: 'silicone', file });
  if (!siliconeCards.ok) return siliconeCards;
  const stock = readStock(listOf(json.stock));
  if (typeof stock === 'string') return bad('SHOP_FILE', { file, why: stock });
  const pieces = readAll({ json: json.pieces, read: readPiece, what: 'piece' });
  if (typeof pieces === 'string') return bad('SHOP_FILE', { file, why: pieces });
  const misnamed = Object.entries(pieces).find(([id, piece]) => piece.id !== id);
  if (misnamed !== undefined)
    return bad('SHOP_FILE', { file, why: `piece "${misnamed[0]}" has another id inside` });
  const scans = readAll({ json: json.scans, read: readScan, what: 'scan' });
  if (typeof scans === 'string') return bad('SHOP_FILE', { file, why: scans });
  const photos = readAll({ json: json.photos, read: readPhoto, what: 'photo' });
  if (typeof photos === 'string') return bad('SHOP_FILE', { file, why: photos });
  const readScaleOf = scale === undefined ? undefined : readScale(scale);
  if (typeof readScaleOf === 'string') return bad('SHOP_FILE', { file, why: readScaleOf });
  const readSettingsOf = settings === undefined ? undefined : readSettings(settings);
  if (typeof readSettingsOf === 'string') return bad('SHOP_FILE', { file, why: readSettingsOf });
  return good({
    ...more,
    schema: SHOP_SCHEMA,
    name: name ?? '',
    foams: foamCards.value,
    silicones: siliconeCards.value,
    stock,
    pieces,
    scans,
    ...(json.photos === undefined ? {} : { photos }),
    ...(readScaleOf === undefined ? {} : { scale: readScaleOf }),
    ...(readSettingsOf === undefined ? {} : { settings: readSettingsOf }),
  });
}

function schemaWhy(schema: unknown): string {
  // Not String: of an object that has a "toString" of its own it throws.
  const said = typeof schema === 'string' ? schema : (JSON.stringify(schema) ?? 'missing').slice(0, 60);
  const version = /^risewright\/shop@(\d+)$/.exec(typeof schema === 'string' ? schema : '')?.[1];
  if (version !== undefined && Number(version) > 2)
    return `its schema is ${said}, of a newer Risewright than this one, which reads up to ${SHOP_SCHEMA}`;
  return `its schema is ${said}, not ${READABLE.join(' or ')}`;
}

/** Everything under its id, or what is wrong with the first that cannot be read. Nothing where the file has none. */
function readAll<T>({
  json,
  read,
  what,
}: {
  json: unknown;
  read: (json: unknown) => T | string;
  what: string;
}): Record<string, T> | string {
  if (json === undefined) return {};
  if (!isRecord(json)) return `its ${what}s are not an object`;
  const all: [string, T][] = [];
  for (const [id, entry] of Object.entries(json)) {
    const one = read(entry);
    if (typeof one === 'string') return `${what} "${id}": ${one}`;
    all.push([id, one]);
  }
  return Object.fromEntries(all);
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
  const { stepG, maxG, ...more } = scale;
  if (maxG === undefined) return { ...more, stepG };
  return typeof maxG === 'number' && maxG > 0
    ? { ...more, stepG, maxG }
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
