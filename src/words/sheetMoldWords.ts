import type { MarkedPlace } from '../plan';
import { formatLength, formatTemperature, gramsText, type Show } from '../units';
import { listed } from './bookFields';

/** What a sheet says of a pour of before. Masses in g, temperatures in C; what was not written down is left out. */
export interface PourOfBefore {
  no: number;
  pack?: number;
  mixedG?: number;
  moldC?: number;
  opening?: 'open' | 'plug';
  filled?: 'full' | 'short';
  skin?: number;
}

/** "No. 11: 577 g, pack 1.30, mold 37 °C (98.6 °F), plugged, full, skin 3 of 5". */
export function pourOfBeforeWords(pour: PourOfBefore, show: Show): string {
  const { no, pack, mixedG, moldC, opening, filled, skin } = pour;
  const said = [
    ...(mixedG === undefined ? [] : [`${gramsText(mixedG, 1)} g`]),
    ...(pack === undefined ? [] : [`pack ${pack.toFixed(2)}`]),
    ...(moldC === undefined ? [] : [`mold ${formatTemperature(moldC, show)}`]),
    ...(opening === undefined ? [] : [opening === 'plug' ? 'plugged' : 'left open']),
    ...(filled === undefined ? [] : [filled]),
    ...(skin === undefined ? [] : [`skin ${skin} of 5`]),
  ];
  return `No. ${no}: ${said.length === 0 ? 'nothing written down' : said.join(', ')}`;
}

/** More than these are counted: the place card has them all. Chosen here. */
const MOST_THIN = 3;

/** The thinnest places of the foam, to be freed before the rest is pulled; by their numbers on the place card. Nothing where none is thin. */
export function freeFirstWords(places: readonly MarkedPlace[], show: Show): string | undefined {
  const thin = places
    .filter((place) => place.kind === 'thin foam')
    .sort((one, other) => one.thicknessMm - other.thicknessMm);
  if (thin.length === 0) return undefined;
  const named = thin
    .slice(0, MOST_THIN)
    .map(({ n, thicknessMm }) => `${n} (${formatLength(Number(thicknessMm.toPrecision(2)), show)})`);
  const more = thin.length - named.length;
  return `Free first, by place card: ${listed(named)}${more > 0 ? `, then ${more} more` : ''}`;
}
