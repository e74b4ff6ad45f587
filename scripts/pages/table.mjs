/** A table of Markdown. A cell is text; what would end it is escaped. */
export const table = (head, rows) =>
  [head, head.map(() => '---'), ...rows]
    .map((row) => `| ${row.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`)
    .join('\n');

/** Digits that a person reads; a third stays a third to four places. */
export const figure = (value) => String(Number(value.toPrecision(9)));

export const span = ({ low, high }) =>
  low === undefined && high === undefined
    ? ''
    : `${low === undefined ? '' : figure(low)} to ${high === undefined ? '' : figure(high)}`;

/** How a unit is printed; the tables of the code have what a keyboard has. */
export const unit = (text) =>
  ({ '': '1', C: '\u00b0C', cm3: 'cm\u00b3', cm2: 'cm\u00b2', m2: 'm\u00b2' })[text] ??
  text.replace(/(?<=[a-z])3\b/, '\u00b3').replace(/(?<=[a-z])2\b/, '\u00b2');

export const MADE =
  '<!-- Made by `npm run docs` from the tables of the code. Change those, not this page. -->';
