import type { Bounds, CutPlane } from '../geometry';

/**
 * A plane across one axis of the piece as it stands, Z up; what lies on the kept side stays. Where: in mm or in file units on the
 * file's own zero (a table found in the scan stays the same units whatever the scale turns out to be), or in mm above the
 * lowest point of the scan along that axis.
 */
export type Cut = { axis: 0 | 1 | 2; keep: 'above' | 'below' } & (
  { atMm: number } | { atUnits: number } | { aboveLowestMm: number }
);

/** The plane in file units, given the bounds of the turned scan in file units and the scale. */
export function planeInUnits(cut: Cut, bounds: Bounds, mmPerUnit: number): CutPlane {
  const { axis, keep } = cut;
  return { axis, keep, atMm: unitsOf(cut, bounds, mmPerUnit) };
}

/** The plane in mm on the placed mesh. */
export function planeInMm(cut: Cut, bounds: Bounds, mmPerUnit: number): CutPlane {
  const { axis, keep } = cut;
  // A height in mm stays to the last digit what was typed.
  return { axis, keep, atMm: 'atMm' in cut ? cut.atMm : mmPerUnit * unitsOf(cut, bounds, mmPerUnit) };
}

function unitsOf(cut: Cut, bounds: Bounds, mmPerUnit: number): number {
  if ('atUnits' in cut) return cut.atUnits;
  if ('atMm' in cut) return cut.atMm / mmPerUnit;
  return bounds.min[cut.axis] + cut.aboveLowestMm / mmPerUnit;
}
