/**
 * What a line to write on or a column may be wide, mm. Each is a class of the style: a page with a strict policy refuses a style that stands at
 * the tag itself.
 */
export const WIDTHS_MM = [8, 10, 13, 16, 24, 26, 28, 30, 31, 33, 34, 38, 42, 50, 64] as const;

export type WidthMm = (typeof WIDTHS_MM)[number];

export const widthClass = (mm: WidthMm): string => `w${mm}`;

export const WIDTH_STYLE = WIDTHS_MM.map((mm) => `.${widthClass(mm)}{width:${mm}mm}`).join('');
