import type { CardDot, MarkedPlace } from '../plan';
import { formatLength, type Show } from '../units';
import { DEMOLD_RULES } from '../yield';
import { smallVolume } from './smallVolume';

/** A marked place, as table and card name it: short, for a narrow column. */
export function markedPlaceWords(place: MarkedPlace, show: Show = 'both'): string {
  switch (place.kind) {
    case 'opening':
      return `Opening ${formatLength(place.diameterMm, show)}`;
    case 'vent planned':
      return `Vent ${formatLength(place.ventMm, show)}, planned`;
    case 'vent advised':
      return `Vent ${formatLength(place.ventMm, show)}, frees ${volume(place.curesCm3, show)}`;
    case 'air under silicone':
      return `Brush silicone in first: ${volume(place.volumeCm3, show)} of air`;
    case 'thin foam':
      return `Thin foam ${thick(place.thicknessMm, show)}: free it first`;
    case 'thin rubber':
      return `Thin rubber ${thick(place.thicknessMm, show)}${place.thicknessMm < DEMOLD_RULES.rubberStop.value ? ': tears' : ''}`;
  }
}

/** How the card marks each kind. */
export const DOT_OF_KIND: Readonly<Record<MarkedPlace['kind'], CardDot['kind']>> = {
  opening: 'opening',
  'vent planned': 'vent',
  'vent advised': 'vent',
  'air under silicone': 'trap',
  'thin foam': 'thin',
  'thin rubber': 'web',
};

/** Walls are known to two digits at the most. */
const thick = (mm: number, show: Show): string => formatLength(Number(mm.toPrecision(2)), show);

/** In one system: the column is narrow. */
const volume = (cm3: number, show: Show): string => smallVolume(cm3, show === 'both' ? 'metric' : show);
