import type { Mold } from '../plan';
import { formatGrams, formatLength, formatVolume, gramsText } from '../units';
import { cautionsAt, kitsWords } from '../words/moldPartWords';
import { SECTION_KEYS, SECTION_WORDS } from '../words/sectionWords';
import { amount, counted } from '../words/sentence';
import { toldOnce } from '../words/toldOnce';
import type { Problem } from '../problem';
import { blank, BOX, escaped } from './html';
import type { SheetMeta } from './pourSheet';
import { MOLD_STYLE } from './moldSheetStyle';
import { stopWords } from './stops';
import { sectionDrawing, type SectionFaces } from './sectionDrawing';

export type MoldSheetMeta = Pick<SheetMeta, 'title' | 'jobCode' | 'version' | 'date' | 'findings'> & {
  silicone?: string;
  /** The mold cut open, where it was. */
  section?: SectionFaces;
};

/**
 * The mold sheet: the silicone to mix and to buy, mix by mix, and the mold cut open to scale. HTML that needs nothing but itself, one page of
 * 190 by 259 mm. Same mold and meta, same bytes.
 *
 * @example
 * const mold = planMold(bench, { type: 'skin' });
 * const html = mold.ok ? moldSheet(mold.value, { title: 'Quay Troll head', version: '0.1.0' }) : '';
 */
export function moldSheet(mold: Mold, meta: MoldSheetMeta): string {
  const { title = 'Mold', jobCode, version, date, section } = meta;
  return `<!doctype html>
<html lang="en-US"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>${escaped(`Mold sheet ${jobCode ?? title}`)}</title><style>${MOLD_STYLE}</style></head>
<body><article>
<header><div><h1>${escaped(title)}</h1><p>${escaped(subtitle(mold, meta))}</p></div><div class="right"><p>Date ${date === undefined ? blank(30) : escaped(date)}</p><p>By ${blank(30)}</p></div></header>
${massesBlock(mold)}
${stopsBlock([...(meta.findings ?? []), ...mold.findings, ...mold.silicone.findings])}
${mixesBlock(mold)}
<div class="drawn">${section === undefined ? NOT_CUT : sectionBlock(section)}<div>${volumesBlock(mold)}</div></div>
<section class="cautions"><h2>Cautions</h2><p>${cautionsOf(mold)}</p></section>
<footer><span><b>${escaped(jobCode ?? '')}</b></span><span>risewright ${escaped(version)}</span></footer>
</article></body></html>
`;
}

const NOT_CUT = '<p class="none">The mold was not cut open on the page, so no section is drawn.</p>';

function subtitle({ title, shape }: Mold, { silicone }: MoldSheetMeta): string {
  const words = [title, `${formatLength(shape.wallMm)} thick`, ...(silicone === undefined ? [] : [silicone])];
  return words.join(' \u00b7 ');
}

/** Base and catalyst in words: the letters belong to the foam. */
function massesBlock({ silicone }: Mold): string {
  const { baseG, catalystG, totalG, rangeG, pours, purchase, stock } = silicone;
  const stepG = pours[0]?.order.stepG ?? 1;
  const grams = (massG: number): string => gramsText(massG, stepG);
  const buy =
    purchase === undefined
      ? stock?.needKg === 0
        ? 'Nothing to buy: the stock is enough.'
        : `To buy: ${amount(stock?.needKg ?? totalG / 1000, 3)} kg.`
      : `To buy: ${kitsWords(purchase)}.`;
  return `<div class="mixes two"><div class="mix">base<b>${grams(baseG)}&#160;g</b></div><div class="mix">catalyst<b>${grams(catalystG)}&#160;g</b></div></div>
<p><b>${formatGrams(totalG, stepG)} together</b>, ${grams(rangeG[0])} to ${grams(rangeG[1])} g; waste and what stays in the cups are in it. ${escaped(buy)}</p>`;
}

/** More rows than these would not leave room for the drawing: mixes that are alike stand on one line anyway. */
const MOST_ROWS = 8;

function mixesBlock({ silicone: { pours } }: Mold): string {
  const stepG = pours[0]?.order.stepG ?? 1;
  const grams = (massG: number): string => gramsText(massG, stepG);
  const rows = pours.slice(0, MOST_ROWS).map(({ name, order }) => {
    const count = order.mixes.length;
    const boxes = count > 8 ? `${BOX}${count} times` : BOX.repeat(count);
    return `<tr><th>${escaped(name)}</th><td>${grams(order.mix.baseG)}</td><td>${grams(order.mix.catalystG)}</td><td>${grams(order.mix.totalG)}</td><td class="ticks">${boxes}</td></tr>`;
  });
  const more = pours.length - MOST_ROWS;
  const rest = more > 0 ? `<p>And ${counted(more, 'more', 'more')}, on the page.</p>` : '';
  return `<section><h2>Weigh base, then catalyst on top; tick each mix</h2><table class="read"><thead><tr><th>Pour or coat</th><td>Base, g</td><td>Catalyst, g</td><td>Together, g</td><td class="ticks">Mixed</td></tr></thead><tbody>${rows.join('')}</tbody></table>${rest}</section>`;
}

function sectionBlock(section: SectionFaces): string {
  const drawing = sectionDrawing(section);
  if (drawing === '') return NOT_CUT;
  const keys = [...new Set(section.faces.map(({ part }) => SECTION_KEYS[part]))];
  const at = `${SECTION_WORDS[section.plane.axis]}, at ${section.plane.axis} = ${formatLength(section.plane.atMm)}.`;
  const hasJacket = section.faces.some(({ part }) => part === 'jacket');
  const note = hasJacket ? ' Keys and the seam of the jacket are not drawn.' : '';
  return `<figure>${drawing}<figcaption>${escaped(at)} ${escaped(`${capital(keys.join('; '))}.`)}${note}</figcaption></figure>`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function volumesBlock({ shape, siliconeCm3 }: Mold): string {
  const rows = shape.rubber
    .filter(({ volumeMm3 }) => volumeMm3 > 0)
    .map(
      ({ name, volumeMm3 }) =>
        `<tr><th>${escaped(capital(name))}</th><td>${escaped(formatVolume(volumeMm3 / 1000, 'metric'))}</td></tr>`,
    );
  return `<h2>Silicone, by part</h2><table class="read"><tbody>${rows.join('')}<tr class="aim"><th>All</th><td>${escaped(formatVolume(siliconeCm3.value, 'metric'))}</td></tr></tbody></table>`;
}

function stopsBlock(all: readonly Problem[]): string {
  const stops = stopWords(toldOnce(all), 'both');
  return stops === '' ? '' : `<p class="stop"><b>Stop, do not build on this plan:</b> ${escaped(stops)}</p>`;
}

const cautionsOf = ({ cautions }: Mold): string =>
  (['first', 'silicone', 'clay', 'jacket', 'vacuum', 'weight'] as const)
    .flatMap((place) => cautionsAt(place, cautions))
    .map(({ when, what }) => `<b>${escaped(when)}</b> ${escaped(what)}`)
    .join(' ');
