import { good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { checkBounds } from './checkBounds';
import { liftFindings } from './lift';
import { MOLDMAKING_RULES } from './rules';

/** Along x, y and z. */
export type Sides = readonly [xMm: number, yMm: number, zMm: number];

/** The finished mold on the scale, g, and whether it takes two to lift it. The casting counts if it is in it. */
export function moldWeight({
  siliconeG,
  jacketDryG,
  castingG = 0,
}: {
  siliconeG: number;
  jacketDryG: number;
  castingG?: number;
}): Outcome<{ moldG: number; findings: Problem[] }> {
  const checked = checkBounds({ siliconeG, jacketDryG, castingG });
  if (!checked.ok) return checked;
  const moldG = siliconeG + jacketDryG + castingG;
  return good({ moldG, findings: liftFindings(moldG) });
}

/**
 * Outer size of the mold, mm: the sculpt with rubber and jacket all round, or not under it where the base is open. A
 * flange reaches out sideways from the rubber, or from the jacket if that reaches farther.
 */
export function outerSize({
  sculptMm: [outerXMm, outerYMm, outerZMm],
  rubberMm,
  jacketMm = 0,
  flangeMm = 0,
  base,
}: {
  sculptMm: Sides;
  rubberMm: number;
  jacketMm?: number;
  flangeMm?: number;
  base: 'open' | 'closed';
}): Outcome<Sides> {
  const checked = checkBounds(
    { outerXMm, outerYMm, outerZMm, rubberMm, flangeMm },
    { jacketMm: jacketMm === 0 ? undefined : jacketMm },
  );
  if (!checked.ok) return checked;
  const wallMm = rubberMm + jacketMm;
  const aroundMm = 2 * Math.max(wallMm, rubberMm + flangeMm);
  return good([outerXMm + aroundMm, outerYMm + aroundMm, outerZMm + (base === 'open' ? 1 : 2) * wallMm]);
}

/**
 * A box in which the mold stands level while foam is poured: clearance at the four sides and beneath, the top flush.
 * The packing (sand, chips, crumpled paper) fills what the mold leaves: with `outerCm3`, the volume that the mold fills
 * with its cavity, exactly; without it, the least, as if the mold were a block.
 */
export function standingBox({
  outerMm: [outerXMm, outerYMm, outerZMm],
  clearanceMm = MOLDMAKING_RULES.boxClearance.value,
  outerCm3,
}: {
  outerMm: Sides;
  clearanceMm?: number;
  outerCm3?: number;
}): Outcome<{ innerMm: Sides; packingCm3: number }> {
  const checked = checkBounds({ outerXMm, outerYMm, outerZMm, clearanceMm }, { outerCm3 });
  if (!checked.ok) return checked;
  const innerMm: Sides = [outerXMm + 2 * clearanceMm, outerYMm + 2 * clearanceMm, outerZMm + clearanceMm];
  const blockCm3 = cm3(outerXMm, outerYMm, outerZMm);
  // More than its own block the mold can not fill.
  const moldCm3 = Math.min(outerCm3 ?? blockCm3, blockCm3);
  return good({ innerMm, packingCm3: cm3(...innerMm) - moldCm3 });
}

const cm3 = (...[xMm, yMm, zMm]: Sides): number => (xMm * yMm * zMm) / 1000;
