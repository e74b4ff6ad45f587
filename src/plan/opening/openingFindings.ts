import { CHECK_FIGURES } from '../../checks';
import { MOST_TILT_DEGREES, type Mouth, type SolidMeasure } from '../../geometry';
import { finding, type Problem } from '../../problem';
import type { Demold } from './demold';
import type { LevelFill } from './filling';
import { placeAt } from './placeOpening';
import type { ThicknessFound } from './thin';

/** What the shape itself says beside the checks. */
export function openingFindings(
  {
    filling,
    casting,
    demold,
    columnStepMm,
  }: { filling: LevelFill; casting?: ThicknessFound; demold?: Demold; columnStepMm: number },
  { diameterMm, lip, lipMissed }: Mouth,
  { byRole }: SolidMeasure,
): Problem[] {
  const { tiltDegrees, pinholes, apart, ventsMissed, ventsUnder } = filling;
  const found: Problem[] = [];
  if (lipMissed > 0)
    found.push(
      finding('OPENING_OVER_EDGE', 'look', { openingMm: diameterMm, missedShare: lipMissed / lip.length }),
    );
  if (ventsUnder.length > 0) found.push(finding('VENT_UNDER_LIQUID', 'look', { count: ventsUnder.length }));
  if (ventsMissed > 0) found.push(finding('VENT_NOT_REACHED', 'look', { count: ventsMissed, columnStepMm }));
  if (tiltDegrees > MOST_TILT_DEGREES) found.push(finding('OPENING_UNDERSIDE', 'stop', { tiltDegrees }));
  if (pinholes.count > 0)
    found.push(
      finding('TRAP_PINHOLE', 'look', { count: pinholes.count, volumeCm3: CHECK_FIGURES.trapSmall.value }),
    );
  if (apart.count > 0) found.push(finding('PIECE_CUT_OFF', 'stop', apart));
  if (byRole.sheet.count > 0)
    found.push(
      finding('SHEET_LOST', 'look', { count: byRole.sheet.count, areaCm2: byRole.sheet.areaMm2 / 100 }),
    );
  if (casting === undefined) found.push(finding('THICKNESS_NOT_MEASURED', 'unknown'));
  for (const { atMm, kind, reachMm } of demold?.caught ?? [])
    found.push(finding('LIMB_CAUGHT', 'look', { part: kind, reachMm }, placeAt(atMm)));
  return [...found, ...(demold?.findings ?? [])];
}
