import { BOOK_COLUMNS, headOf, type BookColumn, type BookField } from './bookColumns';

/** What a column of a file is taken for: a field, and the unit of its bare numbers. `null`: it is left out. */
export type ColumnMap = Readonly<Record<string, { field: BookField; unit?: string } | null>>;

export interface TakenColumn {
  column: BookColumn;
  unit?: string;
}

/** The head of a file's column as a column of the book: as the caller says, else by its name and the unit behind it. */
export function columnOf(head: string, map: ColumnMap): TakenColumn | null | undefined {
  if (Object.hasOwn(map, head)) {
    const told = map[head]!;
    if (told === null) return null;
    const column = BOOK_COLUMNS.find(({ field }) => field === told.field);
    return column === undefined ? undefined : taken(column, told.unit);
  }
  const own = BOOK_COLUMNS.find((column) => plain(headOf(column)) === plain(head));
  if (own !== undefined) return taken(own, own.unit);
  const { name, unit } = parted(head);
  const named = BOOK_COLUMNS.filter(
    (column) =>
      (plain(column.head) === name || (column.also ?? []).includes(name)) &&
      (unit === undefined || column.unit !== undefined),
  );
  return named.length === 1 ? taken(named[0]!, unit) : undefined;
}

const taken = (column: BookColumn, unit: string | undefined): TakenColumn =>
  unit === undefined ? { column } : { column, unit };

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** "Mixed (oz)", "Mixed [oz]" or "Mixed, oz": the name, and the unit behind it. */
function parted(head: string): { name: string; unit?: string } {
  const found = /^(.+?)\s*(?:\(([^()]+)\)|\[([^[\]]+)\]|,\s*([^,]+))$/.exec(head.trim());
  if (found === null) return { name: plain(head) };
  const unit = found[2] ?? found[3] ?? found[4];
  return unit === undefined ? { name: plain(head) } : { name: plain(found[1]!), unit: unit.trim() };
}
