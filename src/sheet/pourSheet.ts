import type { MarkedPlace, PreparedPour } from '../plan';
import type { Problem } from '../problem';
import { formatDensity, type Show } from '../units';
import { chanceWords } from '../words/chance';
import { amount } from '../words/sentence';
import { toldOnce } from '../words/toldOnce';
import { freeFirstWords, pourOfBeforeWords, type PourOfBefore } from '../words/sheetMoldWords';
import { sheetCautions } from '../words/sheetWords';
import { clockBlock } from './clock';
import { gramsBlock, mixesMm, orderBlock } from './grams';
import { blank, escaped } from './html';
import { cautionsPt, type SheetParts } from './room';
import { colorBlock, readyBlock, WEIGH_BACK, type SheetTold } from './ready';
import { stopWords } from './stops';
import { cautionClass, POUR_STYLE } from './style';

/** What the plan does not know: whose pour it is. */
export interface SheetMeta {
  /** What is cast. */
  title?: string;
  /** Short name of the job, for foot and folder. */
  jobCode?: string;
  foam?: string;
  lot?: string;
  /** Of the program. */
  version: string;
  /** As it shall stand there; left out, a line to write it on. No clock is read. */
  date?: string;
  /** Findings beside those of the plan, as those of the scan; their Stops stand on the sheet. */
  findings?: readonly Problem[];
  told?: SheetTold;
  /** Of the plan of the opening: places where the foam is thin are freed first. */
  places?: readonly MarkedPlace[];
  /** Of this mold, the first first: the last three stand on the sheet, one line each, as far as there is room. */
  before?: readonly PourOfBefore[];
  show?: Show;
}

/**
 * The pour sheet: one page of HTML, 190 by 259 mm, that needs nothing but itself. Same plan and meta, same bytes.
 *
 * @example
 * const ready = preparePour(ask);
 * const html = ready.ok ? pourSheet(ready.value, { title: 'Quay Troll head', jobCode: 'TROLL-13', version: '0.1.0' }) : '';
 */
export function pourSheet(prepared: PreparedPour, meta: SheetMeta): string {
  const { title = 'Pour', jobCode, version, date, told = {}, show = 'metric' } = meta;
  const stops = stopsBlock([...(meta.findings ?? []), ...prepared.findings, ...prepared.checks], show);
  const cautions = cautionText(prepared);
  const color = colorBlock(prepared);
  const ready = readyBlock(prepared, told, show);
  const freeFirst = freeFirstWords(meta.places ?? [], show);
  const parts = { mixesMm: mixesMm(prepared), stops, ready, color, freeFirst, cautions };
  const { before, pt } = beforeThatFits(meta.before ?? [], parts, show);
  return `<!doctype html>
<html lang="en-US"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>${escaped(`Pour sheet ${jobCode ?? title}`)}</title><style>${POUR_STYLE}</style></head>
<body><article>
<header><div><h1>${escaped(title)}</h1><p>${escaped(subtitle(prepared, meta))}</p></div><div class="right"><p>Date ${date === undefined ? blank(30) : escaped(date)}</p><p>By ${blank(30)}</p></div></header>
${gramsBlock(prepared)}
${orderBlock(prepared)}
${stops}
<div class="cols">${ready}<div>${color}${WEIGH_BACK}</div></div>
${clockBlock(prepared, freeFirst)}
${before}
<section class="cautions ${cautionClass(pt)}"><h2>Cautions</h2><p>${cautions}</p></section>
<footer><span><b>${escaped(jobCode ?? '')}</b></span><span>Plan: ${escaped(chanceWords(prepared.batch.shortFillChance))} of a short fill</span><span>risewright ${escaped(version)}</span></footer>
</article></body></html>
`;
}

/** More stand in the Book. */
const LAST_POURS = 3;

/** Smaller than this the cautions do not get for the sake of pours of before. Chosen here. */
const LEAST_CAUTIONS_PT = 9;

/** The last pours, as many as leave the cautions their size. */
function beforeThatFits(
  pours: readonly PourOfBefore[],
  parts: Omit<SheetParts, 'before'>,
  show: Show,
): { before: string; pt: number } {
  for (let count = Math.min(LAST_POURS, pours.length); count > 0; count--) {
    const before = beforeBlock(pours.slice(-count), show);
    const pt = cautionsPt({ ...parts, before });
    if (pt >= LEAST_CAUTIONS_PT) return { before, pt };
  }
  return { before: '', pt: cautionsPt({ ...parts, before: '' }) };
}

function beforeBlock(pours: readonly PourOfBefore[], show: Show): string {
  const lines = pours.map((pour) => `<p>${escaped(pourOfBeforeWords(pour, show))}</p>`);
  return `<section class="before"><h2>Last out of this mold</h2>${lines.join('')}</section>`;
}

function subtitle({ batch }: PreparedPour, { foam, lot, show = 'metric' }: SheetMeta): string {
  return [
    ...(foam === undefined ? [] : [lot === undefined ? foam : `${foam}, lot ${lot}`]),
    `pack ${amount(batch.packFactor)}`,
    formatDensity(batch.moldedDensityKgM3, show === 'us' ? 'us' : 'metric'),
  ].join(' \u00b7 ');
}

const cautionText = (prepared: PreparedPour): string =>
  sheetCautions(prepared)
    .map(
      ({ key, when, what }) =>
        `<span data-key="${escaped(key)}"><b>${escaped(when)}</b> ${escaped(what)}</span>`,
    )
    .join(' ');

/** A plan that says Stop says so on the paper too. */
function stopsBlock(all: readonly Problem[], show: Show): string {
  const findings = toldOnce(all);
  const stops = stopWords(findings, show);
  const open = findings.filter(({ status }) => status === 'unknown').length;
  const looks = findings.filter(({ status }) => status === 'look').length;
  const rest = `${looks} to look at and ${open} not checked, on the plan.`;
  if (stops === '') return `<p>Checks: no Stop; ${rest}</p>`;
  return `<p class="stop"><b>Stop, do not pour on this plan:</b> ${escaped(stops)} ${rest}</p>`;
}
