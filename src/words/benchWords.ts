import { formatGrams } from '../units';
import { amount, counted } from './sentence';

/** What the one button says. With no plug in the plan it is left to rise, closed or open. */
export function pressWords(
  what: 'mixing' | 'poured' | 'plugged' | 'open',
  opening: 'open' | 'plug' | undefined,
): string {
  switch (what) {
    case 'mixing':
      return 'I am mixing';
    case 'poured':
      return 'Poured';
    case 'plugged':
      return opening === 'plug' ? 'Plugged' : 'Leave it to rise';
    case 'open':
      return 'It is open';
  }
}

const two = (n: number): string => String(n).padStart(2, '0');

/** Minutes and seconds, with hours where there are any: 0:23, 1:03:20. Takes ms; what has begun does not count yet. */
export function clockText(ms: number): string {
  const s = Math.floor(Math.max(0, ms) / 1000);
  const [h, min] = [Math.floor(s / 3600), Math.floor(s / 60) % 60];
  return h > 0 ? `${h}:${two(min)}:${two(s % 60)}` : `${min}:${two(s % 60)}`;
}

/** Time of day by the device, 24 h: 14:06, or with seconds 14:06:37. Takes ms since 1970. */
export function dayTime(ms: number, { seconds = false } = {}): string {
  const date = new Date(ms);
  const hm = `${two(date.getHours())}:${two(date.getMinutes())}`;
  return seconds ? `${hm}:${two(date.getSeconds())}` : hm;
}

/** How long something still takes: "40 s", "15 min", "2 h 5 min". Takes ms, and rounds up: what is left is left. */
export const leftWords = (ms: number): string => lasting(ms, Math.ceil);

/** How long something took, rounded. Takes ms. */
export const tookWords = (ms: number): string => lasting(ms, Math.round);

function lasting(ms: number, rounded: (value: number) => number): string {
  const s = rounded(Math.max(0, ms) / 1000);
  if (s < 60) return `${s} s`;
  const min = rounded(s / 60);
  return min < 120 ? `${min} min` : `${Math.floor(min / 60)} h ${min % 60} min`;
}

/** The same in words that are spoken: "23 seconds", "2 minutes 5 seconds". */
export function spokenTime(ms: number): string {
  const s = Math.floor(Math.max(0, ms) / 1000);
  const min = Math.floor(s / 60);
  const seconds = counted(s % 60, 'second');
  return min === 0 ? seconds : `${counted(min, 'minute')} ${seconds}`;
}

/** What the scale reads once A is in: on top of B, or alone where it was set to zero. Both stand there, so that nobody takes one for the other. */
export const scaleWords = ({
  scaleG,
  cupAG,
  stepG,
}: {
  scaleG: number;
  cupAG: number;
  stepG: number;
}): string => `${formatGrams(scaleG, stepG)}, or ${formatGrams(cupAG, stepG)} if it was set to zero after B`;

/** What stands under the first button: what the hands do now, and what is still open. */
export function startWords(scale: Parameters<typeof scaleWords>[0], openTicks: number, cups: number): string {
  const cup = cups > 1 ? ' of the first cup' : '';
  const open =
    openTicks === 0
      ? ''
      : ` ${openTicks === 1 ? 'One tick is' : `${amount(openTicks)} ticks are`} open; you can start anyway.`;
  return `Press, then add A until the scale${cup} reads ${scaleWords(scale)}.${open}`;
}

/** What the hands do while it is mixed. */
export const mixWords = (cups: number): string =>
  `Scrape the sides and the bottom. Then pour in one go, down one side of the opening.${cups > 1 ? ` All ${amount(cups)} cups before that time: the clock is that of the first.` : ''}`;

export const MIX_UNTIMED =
  'When it creams is not known: neither the card nor a cup test says so. Pour as soon as it is mixed through; this only counts up.';

/** After it was poured, before it is left alone. */
export function closeWords(opening: 'open' | 'plug' | undefined): string {
  if (opening === 'plug')
    return 'Plug in and held, never by hand. Vents stay free. Stand clear of opening and parting.';
  if (opening === 'open') return 'Nothing in the opening, vents free. Stand clear of opening and parting.';
  return 'The plan does not say whether a plug goes in. With one: in and held, never by hand. Vents stay free. Stand clear of opening and parting.';
}

export const closeTitle = (opening: 'open' | 'plug' | undefined): string =>
  opening === 'plug' ? 'Plug it' : opening === 'open' ? 'Leave it' : 'Close it';

/** What is spoken while it is mixed: only where it matters, so that nothing else is talked over. Seconds left to pour. */
export function pourAloud(leftS: number): string {
  if (leftS <= 0) return 'The time to pour is over. Pour now.';
  if (leftS <= 10) return '10 seconds left to pour';
  return leftS <= 30 ? '30 seconds left to pour' : '';
}

/** While it is waited for. Seconds until it may be opened. */
export function openAloud(leftS: number): string {
  if (leftS <= 0) return 'It may be opened, if it is quiet and cool.';
  if (leftS <= 10) return '10 seconds until it may be opened';
  return leftS <= 30 ? '30 seconds until it may be opened' : '';
}

export const awakeWords = (isHeld: boolean): string =>
  isHeld ? 'screen kept awake' : 'this device may dim: set its screen to stay on';

/** Of a doubt about the clock: what happened, and what nobody but the user can tell. */
export function doubtWords(because: 'hidden' | 'awake' | 'cannot tell', aheadMs: number): string {
  const by = tookWords(aheadMs);
  switch (because) {
    case 'hidden':
      return `While this page was hidden, the time of day ran ${by} ahead of the running clock: the device slept, and the time of day is taken. If its clock was set instead, take the other.`;
    case 'awake':
      return `The device’s clock was set forward by ${by}: this one runs on as before. If the device slept instead, take the other.`;
    case 'cannot tell':
      return `The time of day has jumped ${by} ahead. The device slept, or its clock was set: that cannot be told from here. Which one is right?`;
  }
}

export const readingWords = (which: 'running' | 'day', ms: number): string =>
  which === 'running'
    ? `${clockText(ms)}: the clock was set`
    : `${clockText(ms)}: it slept, by the time of day`;

export function noteWords({
  what,
  byMs,
}: {
  what: 'set back' | 'away' | 'set back while away';
  byMs: number;
}): string {
  switch (what) {
    case 'set back':
      return `The device’s clock was set back by ${tookWords(byMs)}. This one runs on as before.`;
    case 'away':
      return `The page was away for ${tookWords(byMs)} by this device’s clock.`;
    case 'set back while away':
      return `While the page was away the device’s clock was set back, by ${tookWords(byMs)} or more. This one goes on from where it last stood: more time may have passed.`;
  }
}

export const HANDS_OFF = 'Hands off the straps: it still pushes, and it gets hot inside.';

export const riseWords = (opening: 'open' | 'plug' | undefined): string =>
  opening === 'plug' ? 'Rise done. Leave the plug in.' : 'Rise done. Leave it as it is.';

export const OPEN_WORDS =
  'If it is quiet and cool, open it: straps off little by little, face and hands out of their line.';

export const earlyWords = (leftMs: number): string => `Open ${leftWords(leftMs)} early?`;
