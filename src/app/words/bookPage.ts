import { amount, counted } from '../../words/sentence';

/** "35 °C": in the table and in buttons. */
export const settingC = (tempC: number): string => `${amount(tempC, 3)}\u00a0°C`;

/** "12 pours, 1 to ask about". */
export function poursAnswer(pours: number, asked: number): string {
  if (pours === 0) return 'No pour yet';
  return `${counted(pours, 'pour')}, ${asked === 0 ? 'nothing to ask about' : `${asked} to ask about`}`;
}

/** What a book without pours will have after its first weigh-back, and after the next ones. */
export const FIRST_WEIGH_BACK =
  'The first weigh-back replaces one guess: how much stays in the cup. After three the Book tells it as a line, with its scatter. A short pour tells how far the foam rises by itself; a full one never can, as less might have filled.';

/** What stands in the place of what nobody wrote down: nothing trimmed is 0 g, and another thing. */
export const NOT_WEIGHED = 'not weighed';
export const NOT_SAID = 'not said';

/** What the note says of a pour that nothing is learned from, and of a figure that stays as it was typed. */
export const LEFT_OUT_WORDS = 'left out: nothing is learned from it';
export const KEPT_WORDS = 'kept as typed';

export const CHANCE_WORDS: readonly { value: string; label: string; chance: number }[] = [
  { value: '0.9', label: '9 times in 10', chance: 0.9 },
  { value: '0.95', label: '19 times in 20', chance: 0.95 },
  { value: '0.99', label: '99 times in 100', chance: 0.99 },
];
