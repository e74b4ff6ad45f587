import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkPour } from './checkPour';
import { POUR_RULES as R } from './rules';

/** Pull in the wall of a round jacket, MPa: p r / t (thin ring). */
export function hoopStressMPa({
  gaugeKPa,
  radiusMm,
  panelMm,
}: {
  gaugeKPa: number;
  radiusMm: number;
  panelMm: number;
}): Outcome<number> {
  const sound = checkPour({ gaugeKPa, radiusMm, panelMm });
  return sound.ok ? good((gaugeKPa * radiusMm) / panelMm / 1000) : sound;
}

export interface PanelLoad {
  gaugeKPa: number;
  /** Free span of the flat part, between edges, ribs or straps over a board. */
  panelSpanMm: number;
  panelMm: number;
}

export interface PanelStress {
  stressMPa: number;
  /** `cracks`: above what dry gypsum bears at best. `may crack`: above what wet gypsum bears. */
  verdict: 'holds' | 'may crack' | 'cracks';
  /** The widest free span that wet gypsum of this thickness bears; never over the 150 mm of common practice. */
  largestSpanMm: number;
}

/**
 * Bending stress of a flat jacket panel, MPa: 0.31 p (b/t)^2 for a square held at its edges (Roark and Timoshenko, from
 * memory, not verified), against the strength of gypsum. For thin plates: b many times t. Flat panels bend where round
 * jackets only stretch: rib them, or strap over a board.
 */
export function panelStress({ gaugeKPa, panelSpanMm, panelMm }: PanelLoad): Outcome<PanelStress> {
  const sound = checkPour({ gaugeKPa, panelSpanMm, panelMm });
  if (!sound.ok) return sound;
  const stressMPa = (R.panelBend.value * gaugeKPa * (panelSpanMm / panelMm) ** 2) / 1000;
  const { low, high } = R.panelStrength;
  const verdict = stressMPa > high ? 'cracks' : stressMPa > low ? 'may crack' : 'holds';
  const strongMm = panelMm * Math.sqrt((1000 * low) / (R.panelBend.value * gaugeKPa));
  return good({ stressMPa, verdict, largestSpanMm: Math.min(R.panelSpan.value, strongMm) });
}
