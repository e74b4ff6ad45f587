import { good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import type { HeldFoam } from './openingLimits';
import { pressureWithMouth, riserBackPressureKPa } from './vents';

/**
 * What a chosen opening, left open, keeps in the mold: its back pressure and the pressure really reached, kPa. Only for foam whose
 * viscosity was learned. Finding: PACK_LOST_AT_MOUTH where the extra pack leaves through it.
 */
export function pressureAtOpening({
  openingMm,
  hold: { idealKPa, ...riser },
}: {
  openingMm: number;
  hold: HeldFoam;
}): Outcome<{ mouthKPa: number; gaugeKPa: number; findings: Problem[] }> {
  const held = riserBackPressureKPa({ ...riser, sprueMm: openingMm });
  if (!held.ok) return held;
  const mouthKPa = held.value.value;
  const reached = pressureWithMouth({ idealKPa, mouthKPa });
  return reached.ok ? good({ mouthKPa, ...reached.value }) : reached;
}
