/** How much room the parts of the sheet take, so that all of it stays on one page. Reckoned, as no page is there to measure on. */

const PT_MM = 25.4 / 72;
const BODY_PT = 12;
/** Mean width of a character and height of a line in sizes of the type: measured on printed sheets, on the safe side. */
const CHAR_EM = 0.51;
const LINE_EM = 1.17;

const charMm = (pt: number): number => CHAR_EM * pt * PT_MM;
const lineMm = (pt: number): number => LINE_EM * pt * PT_MM;

/** The text of a piece of HTML as long as it is set: a line to write on counts as the characters it is as wide as. */
function lengthOf(html: string): number {
  return html
    .replace(/<span class="blank w(\d+)"><\/span>/g, (_, mm: string) =>
      'x'.repeat(Math.ceil(Number(mm) / charMm(BODY_PT))),
    )
    .replace(/<[^>]*>/g, '')
    .replace(/&#\d+;/g, 'x').length;
}

const textMm = (html: string, widthMm: number, pt = BODY_PT): number =>
  Math.ceil(lengthOf(html) / (widthMm / charMm(pt))) * lineMm(pt);

const HEADING_MM = 6;
const PAGE = { widthMm: 190, heightMm: 259 };

/** Head, order and table, clock, foot, and the least air between the parts, as printed. */
const FIXED_MM = 12 + 29 + 40 + 5.5 + 9;
const READY_MM = 101;
const BACK_MM = 78;
const BACK_ROWS_MM = 6 * 6.4;
const CLOCK_ROW_MM = 6.8;
const CLOCK_TEXT_MM = 116;

export interface SheetParts {
  mixesMm: number;
  stops: string;
  ready: string;
  color: string;
  /** Pours of before, a paragraph each. */
  before: string;
  /** One more row of the clock. */
  freeFirst: string | undefined;
  cautions: string;
}

/** Sizes of the cautions; the largest that fits is taken, and the rest of the sheet keeps its 12 pt. */
export const CAUTION_SIZES_PT = [12, 11.5, 11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7];

/** Size of type of the cautions, pt. */
export function cautionsPt({
  mixesMm,
  stops,
  ready,
  color,
  before,
  freeFirst,
  cautions,
}: SheetParts): number {
  const left = ready
    .split('<li>')
    .slice(1)
    .reduce((sum, item) => sum + textMm(item, READY_MM) + 0.6, HEADING_MM);
  const colorMm = color === '' ? 0 : HEADING_MM + textMm(color.replace(/<h2>.*?<\/h2>/, ''), BACK_MM);
  const cols = Math.max(left, colorMm + HEADING_MM + BACK_ROWS_MM);
  const lines = before.split('<p>').length - 1;
  const moldMm =
    (lines === 0 ? 0 : HEADING_MM + lines * lineMm(BODY_PT)) +
    (freeFirst === undefined ? 0 : Math.max(CLOCK_ROW_MM, textMm(freeFirst, CLOCK_TEXT_MM) + 1.4));
  const room =
    PAGE.heightMm - FIXED_MM - mixesMm - textMm(stops, PAGE.widthMm - 5) - 2 - cols - moldMm - HEADING_MM;
  return (
    CAUTION_SIZES_PT.find((pt) => textMm(cautions, PAGE.widthMm, pt) <= room) ??
    CAUTION_SIZES_PT[CAUTION_SIZES_PT.length - 1]!
  );
}
