/** Text as HTML text: nothing that was typed can become a tag, an attribute or an entity. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A line to write on, so wide. */
export const blank = (widthMm: number): string => `<span class="blank" style="width:${widthMm}mm"></span>`;

/** A box to tick. */
export const BOX = '<span class="box"></span>';

export const tick = (html: string): string => `<li>${BOX}${html}</li>`;
