import { bad, good, type Outcome } from '../problem';
import { readBook, withRows, type Book, type BookRow } from '../job/book';
import { emptyShop, readShop, SHOP_SCHEMA, type Shop } from '../job/shop';
import { shopText } from '../job/shopText';
import { textOf, type OptionValues } from './command';
import { fileTrouble } from './fileTrouble';
import type { Io } from './io';
import { orCannotWrite } from './report';

/** The file that the book is in, as it was read, and the cards to read it with. */
export interface OpenBook {
  file: string;
  /** All of it, with keys that only a later version knows. */
  json: Record<string, unknown>;
  book: Book;
  /** Of --shop where both are given. */
  shop: Shop;
  isNew: boolean;
}

/**
 * Opens the book of --book, else of --shop. Both are a shop's file. `mayBeNew`: a --book that is not there yet is an empty one.
 * Errors: BAD_CALL, CANNOT_READ_FILE and those of `readShop`.
 */
export function openBook(options: OptionValues, io: Io, mayBeNew = false): Outcome<OpenBook> {
  const [bookFile, shopFile] = [textOf(options, 'book'), textOf(options, 'shop')];
  const file = bookFile ?? shopFile;
  if (file === undefined)
    return bad('BAD_CALL', {
      text: 'Which book is not said.',
      hint: 'Give --book FILE, or --shop FILE; "risewright sample DIR" writes one to try.',
    });
  const isNew = mayBeNew && bookFile !== undefined && !io.exists(file);
  const own = isNew ? good({ shop: emptyShop(), json: { ...emptyShop() } }) : readFile(file, io);
  if (!own.ok) return own;
  const { json, shop } = own.value;
  const cards = bookFile !== undefined && shopFile !== undefined ? readFile(shopFile, io) : own;
  if (!cards.ok) return cards;
  return good({ file, json, book: readBook(shop.book), shop: cards.value.shop, isNew });
}

function readFile(file: string, io: Io): Outcome<{ shop: Shop; json: Record<string, unknown> }> {
  let text: string;
  try {
    text = new TextDecoder().decode(io.readFile(file));
  } catch (e) {
    return bad('CANNOT_READ_FILE', { file, why: fileTrouble(e) });
  }
  const shop = readShop(text, file);
  return shop.ok ? good({ shop: shop.value, json: JSON.parse(text) as Record<string, unknown> }) : shop;
}

/** Writes rows into the book; every other thing in its file keeps what it said. */
export function writeRows({ file, json }: OpenBook, rows: readonly BookRow[], io: Io): Outcome<true> {
  const book = withRows(json.book, rows);
  if (!book.ok) return book;
  const shop = { pieces: {}, scans: {}, ...json, schema: SHOP_SCHEMA, book: book.value } as unknown as Shop;
  orCannotWrite(file, '--book', () => io.replaceFile(file, shopText(shop)));
  return good(true);
}
