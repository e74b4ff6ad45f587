import type { PreparedPour } from '../plan';
import { POUR_RULES } from '../yield';
import { amount } from '../words/sentence';
import { blank, BOX, escaped } from './html';
import { widthClass } from './widths';

/** Minutes and seconds of the clock that starts with A. */
function clock(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

/** The pour by the clock, with room for the time of day. `freeFirst`: what is freed before the rest is pulled. */
export function clockBlock({ times, cups }: PreparedPour, freeFirst?: string): string {
  const { window, openMin, openCommonMin } = times;
  const together = cups.cups.length > 1 ? ' all cups,' : '';
  const rows: [string, string][] = [['0:00', `A into B,${together} mix; scrape wall and bottom`]];
  if (window === undefined) {
    rows.push([`${blank(16)}`, 'All poured, in one go, before it creams']);
    rows.push([`${blank(16)}`, 'It creams (time not known: write it down)']);
  } else {
    const { low, value } = window.creamS;
    rows.push([`by ${clock(Math.max(0, low - POUR_RULES.pourMargin.value))}`, 'All poured, in one go']);
    rows.push([`about ${clock(value)}`, 'It creams. Plug in and held; vents free']);
  }
  rows.push([`${blank(16)}`, 'Rise done. Leave the straps']);
  rows.push(
    openMin === undefined
      ? [
          `${blank(16)}`,
          `Open (time not known; ${amount(openCommonMin.low)} to ${amount(openCommonMin.high)} min common), if quiet and cool`,
        ]
      : [`${amount(openMin.value, 2)} min`, 'Open, if it is quiet and cool'],
  );
  if (freeFirst !== undefined) rows.push(['then', escaped(freeFirst)]);
  return `<table class="clock"><thead><tr><th class="${widthClass(10)}"></th><th class="${widthClass(26)}">Clock</th><th>What</th><th class="${widthClass(34)}">Time of day</th></tr></thead><tbody>${rows
    .map(([when, what]) => `<tr><td>${BOX}</td><td>${when}</td><td>${what}</td><td></td></tr>`)
    .join('')}</tbody></table>`;
}
