import { good } from '../../problem';
import type { Outcome } from '../../problem';
import { checkDemold } from './checkDemold';
import { DEMOLD_RULES as R } from './rules';

/** Young's modulus of rubber, MPa, from its Shore A hardness: Gent 1958 (from memory, not verified). */
export function gentModulusMPa({ shoreA }: { shoreA: number }): Outcome<number> {
  const sound = checkDemold({ shoreA });
  if (!sound.ok) return sound;
  const above = R.gentAtZero.value + R.gentPerPoint.value * shoreA;
  const below = R.gentIndenter.value * (R.gentFull.value - R.gentFullPerPoint.value * shoreA);
  return good((R.gentFactor.value * above) / below);
}

/**
 * Pull on stretched rubber over its unstretched section, MPa: E/3 (l - 1/l^2), l = 1 + stretch (neo-Hookean, one way, textbook).
 * Rubber that is not stretched pulls with nothing.
 */
export function lipStressMPa({
  modulusMPa,
  stretchShare,
}: {
  modulusMPa: number;
  stretchShare: number;
}): Outcome<number> {
  const sound = checkDemold({ modulusMPa, stretchShare });
  if (!sound.ok) return sound;
  if (stretchShare <= 0) return good(0);
  const longer = 1 + stretchShare;
  return good((modulusMPa / 3) * (longer - longer ** -2));
}

/** Scale of the pull on a lip of rubber, N: stress x thickness x girth. Friction, suction and how fast it is pulled are not in it. */
export function pullForceN({
  shoreA,
  stretchShare,
  lipMm,
  lipGirthMm,
}: {
  shoreA: number;
  stretchShare: number;
  lipMm: number;
  lipGirthMm: number;
}): Outcome<number> {
  const sound = checkDemold({ lipMm, lipGirthMm });
  if (!sound.ok) return sound;
  const modulus = gentModulusMPa({ shoreA });
  if (!modulus.ok) return modulus;
  const stress = lipStressMPa({ modulusMPa: modulus.value, stretchShare });
  return stress.ok ? good(stress.value * lipMm * lipGirthMm) : stress;
}
