/** The text with one spelling for each sign, and whether its digits were written in another script. */
export interface TidyText {
  text: string;
  otherDigits: boolean;
}

/**
 * Typographic minus, primes, superscripts, vulgar fractions and no-break spaces become their plain forms. Digits of
 * other scripts are read too, but the caller must ask: a look-alike can hide in a pasted text.
 */
export function tidyText(raw: string): TidyText {
  let text = '';
  let otherDigits = false;
  for (const char of raw.trim()) {
    const digit = digitOfOtherScript(char);
    if (digit !== undefined) otherDigits = true;
    const plain = digit ?? PLAIN[char] ?? (isSpace(char) ? ' ' : char);
    if (plain === ' ' && text.endsWith(' ')) continue;
    text += VULGAR[char] === undefined ? plain : `${isAsciiDigit(text.at(-1)) ? ' ' : ''}${VULGAR[char]}`;
  }
  return { text, otherDigits };
}

const PLAIN: Readonly<Record<string, string>> = {
  '−': '-',
  '–': '-',
  '″': '"',
  '”': '"',
  '“': '"',
  '′': "'",
  '’': "'",
  '‘': "'",
  '³': '3',
  '²': '2',
  '⁄': '/',
  '∶': ':',
  '：': ':',
  '．': '.',
  '，': ',',
};

const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** First digit of the scripts that are read: full width, Arabic-Indic, its eastern form, Devanagari, Bengali, Thai. */
const ZEROS = [0xff10, 0x0660, 0x06f0, 0x0966, 0x09e6, 0x0e50];

function digitOfOtherScript(char: string): string | undefined {
  const code = char.codePointAt(0) ?? 0;
  const zero = ZEROS.find((first) => code >= first && code <= first + 9);
  return zero === undefined ? undefined : String(code - zero);
}

const isAsciiDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9';

/** Tab, no-break, figure, thin, narrow no-break and hair space. */
const isSpace = (char: string): boolean => '\t\u00a0\u2007\u2009\u202f\u200a'.includes(char);
