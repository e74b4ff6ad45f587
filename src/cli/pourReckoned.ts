import type { CheckFacts } from '../checks';
import type { PourAsk, PreparedPour } from '../plan';
import { good, type Outcome } from '../problem';
import { panelStress } from '../yield';

/**
 * Facts of the checks that follow from the plan and from what was told together: the share of pigment in the mix, and what a flat panel
 * of the jacket bears. Errors: INPUT_OUT_OF_BOUNDS for a panel.
 */
export function reckonedFacts(
  { forces, color, batch }: PreparedPour,
  told: PourAsk['facts'],
  panelMm: number | undefined,
): Outcome<CheckFacts> {
  const pigment =
    color === undefined || told?.pigmentShare !== undefined
      ? {}
      : { pigmentShare: color.totalG / (batch.partAG + batch.partBG) };
  const panelSpanMm = told?.panelSpanMm;
  if (panelMm === undefined || panelSpanMm === undefined || panelSpanMm === 0) return good(pigment);
  const panel = panelStress({ gaugeKPa: forces.pressureKPa.designKPa, panelSpanMm, panelMm });
  if (!panel.ok) return panel;
  return good({ ...pigment, panelLargestMm: panel.value.largestSpanMm, panelVerdict: panel.value.verdict });
}
