import { widthClass, type WidthMm } from './widths';

/** Text as HTML text: nothing that was typed can become a tag, an attribute or an entity. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A line to write on, so wide. */
export const blank = (widthMm: WidthMm): string => `<span class="blank ${widthClass(widthMm)}"></span>`;

/** A box to tick. */
export const BOX = '<span class="box"></span>';

export const tick = (html: string): string => `<li>${BOX}${html}</li>`;
