import type { PourRow } from '../../job/book';
import { FACTOR_WORDS, listed } from '../../words/bookFields';
import { amount, counted } from '../../words/sentence';
import type { Factor, OneChange } from '../../yield';
import { settingC } from './bookPage';

/** "29 °C", "1.25", "a plug". */
export function settingText(factor: Factor, value: number): string {
  if (factor === 'opening') return value === 1 ? 'a plug' : 'an open neck';
  return factor === 'packFactor' ? value.toFixed(2) : settingC(value);
}

/** "Only the mold temperature: 29 °C instead of 35 °C, pack still 1.25". */
export function headline({ factor, from, to }: OneChange, base: PourRow | undefined): string {
  const still = stillWords(factor, base);
  return `Only the ${FACTOR_WORDS[factor]}: ${settingText(factor, to)} instead of ${settingText(factor, from)}${still === '' ? '' : `, ${still}`}`;
}

/** What stays as it was, of what a plan can set. */
export function stillWords(factor: Factor, base: PourRow | undefined): string {
  const still = [
    ...(factor !== 'packFactor' && base?.pack !== undefined ? [`pack still ${base.pack.toFixed(2)}`] : []),
    ...(factor !== 'moldC' && base?.moldC !== undefined ? [`mold still ${settingC(base.moldC)}`] : []),
  ];
  return still.join(', ');
}

/** The same for the head of the page. */
export const shortHeadline = ({ factor, to }: OneChange): string =>
  `only the ${FACTOR_WORDS[factor]}, ${settingText(factor, to)}`;

/** Which pours show it. */
export const fromPoursWords = ({ fromPours }: OneChange): string =>
  `From ${fromPours.length === 1 ? 'pour' : 'pours'} ${listed(fromPours)}.`;

/** What each outcome would tell. */
export function outcomes({
  why,
  factor,
  from,
  to,
  apartFrom = [],
}: OneChange): { if: string; then: string }[] {
  const name = FACTOR_WORDS[factor];
  const good = 'If the skin is 3 or better';
  const poor = 'If it drops to 2 or less';
  if (why === 'tell-apart') {
    const others = listed(apartFrom.map((one) => FACTOR_WORDS[one]));
    return [
      {
        if: good,
        then: `It was not the ${name}: ${others} did the work. Stay at ${settingText(factor, to)}.`,
      },
      { if: poor, then: `The ${name} did the work. Go back to ${settingText(factor, from)}.` },
    ];
  }
  if (why === 'try-lighter')
    return [
      { if: good, then: `Stay at ${settingText(factor, to)}: it takes less foam.` },
      { if: poor, then: `Go back to ${settingText(factor, from)}.` },
    ];
  return [
    { if: good, then: `The ${name} did it. Stay at ${settingText(factor, to)}.` },
    {
      if: 'If it stays at 2 or less',
      then: `The ${name} was not it. The Book asks for the next thing then.`,
    },
  ];
}

/** The numeral plot for who cannot see it. */
export function skinAlt(
  pours: readonly { no: number; moldC: number; packFactor: number; skin: number }[],
): string {
  const each = pours.map(
    ({ no, moldC, packFactor, skin }) =>
      `pour ${no}: skin ${amount(skin)} at pack ${packFactor.toFixed(2)} and ${settingC(moldC)}`,
  );
  return `${counted(pours.length, 'pour')} by mold temperature and pack factor, each drawn as its skin score. ${each.join('; ')}.`;
}

export const ASK_BUTTONS = {
  vents: 'The vents are open',
  'cup-test': 'A cup was tested today',
} as const;
