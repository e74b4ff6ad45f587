import type { PreparedPour } from '../plan';
import { gramsText, formatRatio } from '../units';
import { targetAG } from '../yield';
import { escaped, BOX } from './html';

interface Mix {
  partAG: number;
  partBG: number;
  totalG: number;
}

/** Up to so many cups each have their pair of grams; of more, all alike, one pair stands with a box a cup. */
const MOST_PAIRS = 4;
const MOST_BOXES = 24;

/** What one cup takes: one is the batch itself. */
export const mixesOf = ({ batch, cups }: PreparedPour): Mix[] =>
  cups.cups.length > 1 ? cups.cups : [{ partAG: batch.partAG, partBG: batch.partBG, totalG: batch.totalG }];

/** Height of the large grams as printed, mm. */
export function mixesMm(prepared: PreparedPour): number {
  const count = mixesOf(prepared).length;
  if (count > MOST_PAIRS) return 18;
  return count > 2 ? 24 : 13;
}

/** The grams, large: A before B as on every label, the order in words. */
export function gramsBlock(prepared: PreparedPour): string {
  const mixes = mixesOf(prepared);
  const one = mixes[0]!;
  const { stepG } = prepared.batch;
  const pair = (name: string, mix: Mix): string =>
    `<div class="mix">${name}<i>A</i><b>${gramsText(mix.partAG, stepG)}&#160;g</b> <i>B</i><b>${gramsText(mix.partBG, stepG)}&#160;g</b></div>`;
  if (mixes.length === 1) return `<div class="mixes">${pair('', one)}</div>`;
  if (mixes.length > MOST_PAIRS) {
    const boxes = mixes.length > MOST_BOXES ? '' : BOX.repeat(mixes.length);
    return `<div class="mixes">${pair(`each of ${mixes.length} cups`, one)}<div>${boxes}</div></div>`;
  }
  return `<div class="mixes two">${mixes.map((mix, n) => pair(`cup ${n + 1}`, mix)).join('')}</div>`;
}

/** The order of weighing, and the A that belongs to the B that lies in the cup. */
export function orderBlock(prepared: PreparedPour): string {
  const { batch } = prepared;
  const mixes = mixesOf(prepared);
  const { partAG, partBG, totalG } = mixes[0]!;
  const { stepG, ratio } = batch;
  const grams = (massG: number): string => gramsText(massG, stepG);
  const label = `A:B ${formatRatio(ratio)} by ${ratio.by === 'mass' ? 'weight' : 'volume'}`;
  const sum = mixes.length === 1 ? '' : ` a cup, ${grams(mixes.length * totalG)} g in all`;
  const rows = readings(partBG, stepG).map((bG) => {
    const aG = bG === partBG ? partAG : Math.round(targetAG(batch.massRatio, bG) / stepG) * stepG;
    return { bG, aG, isAim: bG === partBG };
  });
  const cells = (text: (row: (typeof rows)[number]) => string): string =>
    rows.map((row) => `<td${row.isAim ? ' class="aim"' : ''}>${text(row)}</td>`).join('');
  return `<section><p>${escaped(label)}, <b>${grams(totalG)} g together</b>${sum}. <b>Weigh B into the mixing cup, read it</b>, set the scale to zero, then A is as below. A (isocyanate) goes in last: the clock starts.</p>
<table class="read"><tbody><tr><th>B read, g</th>${cells(({ bG }) => grams(bG))}</tr><tr><th>then A is, g</th>${cells(({ aG }) => grams(aG))}</tr><tr><th>scale not zeroed, g</th>${cells(({ aG, bG }) => grams(aG + bG))}</tr></tbody></table></section>`;
}

/** Shares off the aim that a hand is likely to be off by. Chosen here. */
const OFF = [-0.03, -0.02, -0.01, 0, 0.01, 0.02, 0.03];

/** Readings of B around its aim, in whole steps of the scale, each once, above nothing. */
function readings(partBG: number, stepG: number): number[] {
  const aim = Math.round(partBG / stepG);
  const steps = OFF.map((off, n) => {
    const by = Math.round((partBG * off) / stepG);
    // On a coarse scale the readings lie at least a step apart.
    return aim + (off < 0 ? Math.min(by, n - MIDDLE) : Math.max(by, n - MIDDLE));
  });
  return steps.filter((step) => step > 0).map((step) => (step === aim ? partBG : step * stepG));
}

const MIDDLE = 3;
