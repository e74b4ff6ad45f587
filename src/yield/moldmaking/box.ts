import type { Estimate } from '../../estimate';
import { finding, good } from '../../problem';
import type { Outcome, Problem } from '../../problem';
import { RULES } from '../rules';
import { checkBounds } from './checkBounds';
import { MOLDMAKING_RULES as R } from './rules';
import type { WallMaterial } from './wallMaterials';

/** A wall of a box that rubber is poured into. `wallWidthMm` is the free span between corners or braces. */
export interface BoxWall {
  rubberHeightMm: number;
  wallWidthMm: number;
  wallMm: number;
  siliconeKgM3: number;
  material: WallMaterial;
}

export interface BoxWallLoad {
  pressureKPa: number;
  forceN: number;
  /** Where that force acts, above the base: a brace belongs here. */
  forceHeightMm: number;
  bulgeMm: Estimate;
  /** Rubber that the bulge takes beyond the straight box. */
  extraRubberCm3: Estimate;
  /** For a bulge below the limit even at the soft end of the material's range. */
  neededWallMm: number;
  largestSpanMm: number;
  findings: Problem[];
}

/**
 * Pressure at the foot of a wall, kPa: rho g h (hydrostatics). Full head, as rubber poured within its pot life has not
 * begun to carry itself.
 */
export const wallPressureKPa = ({ rubberHeightMm, siliconeKgM3 }: Head): number =>
  (siliconeKgM3 * RULES.gravity.value * rubberHeightMm) / 1e6;

/** Push on a whole wall, N: rho g h^2 w / 2. It acts at a third of the height (hydrostatics). */
export const wallForceN = ({ wallWidthMm, ...head }: Head & { wallWidthMm: number }): number =>
  (wallPressureKPa(head) * head.rubberHeightMm * wallWidthMm) / 2000;

/**
 * How far a wall bows out midway, mm: a strip between its corners under the pressure at its foot, ends free to turn,
 * 5 p b^4 / (384 E I') with I' = s^3/12 (beam theory). On the safe side: base board and corners help. Where it exceeds a
 * tenth of the span it only says that the wall gives way.
 */
export const wallBulgeMm = ({ pressureKPa, wallWidthMm, wallMm, stiffnessGPa }: Strip): number =>
  (5 * BEAM * pressureKPa * wallWidthMm ** 4) / (384 * stiffnessGPa * wallMm ** 3);

/** Everything about one wall: push, bulge, rubber that the bulge takes, what would be stiff enough. */
export function boxWall(wall: BoxWall): Outcome<BoxWallLoad> {
  const { rubberHeightMm, wallWidthMm, wallMm, siliconeKgM3 } = wall;
  const stiffness = wall.material.stiffness;
  const checked = checkBounds({ rubberHeightMm, wallWidthMm, wallMm, siliconeKgM3 });
  if (!checked.ok) return checked;
  for (const wallStiffnessGPa of [stiffness.value, stiffness.low, stiffness.high]) {
    const stiff = checkBounds({ wallStiffnessGPa });
    if (!stiff.ok) return stiff;
  }
  const pressureKPa = wallPressureKPa(wall);
  const bulge = (stiffnessGPa: number): number =>
    wallBulgeMm({ pressureKPa, wallWidthMm, wallMm, stiffnessGPa });
  const bulgeMm = span(bulge, stiffness);
  const softShare = bulgeMm.high / R.wallBulge.value;
  const load = {
    pressureKPa,
    forceN: wallForceN(wall),
    forceHeightMm: rubberHeightMm / 3,
    bulgeMm,
    extraRubberCm3: span((stiffnessGPa) => extraRubberCm3(bulge(stiffnessGPa), wall), stiffness),
    // The bulge goes with the cube of the thickness and the fourth power of the span.
    neededWallMm: wallMm * Math.cbrt(softShare),
    largestSpanMm: wallWidthMm / softShare ** 0.25,
  };
  return good({ ...load, findings: [...bulgeFindings(wall, load), leakFinding(wall, pressureKPa)] });
}

export interface Head {
  rubberHeightMm: number;
  siliconeKgM3: number;
}

export interface Strip {
  pressureKPa: number;
  wallWidthMm: number;
  wallMm: number;
  stiffnessGPa: number;
}

/** The 12 of s^3/12, and kPa over GPa. */
const BEAM = 12 / 1e6;

/** Mean over peak of a strip bent by an even load: 16/25, from the integral of its line. */
const MEAN_OF_BOW = 0.64;

/** Half, because the pressure falls to nothing at the top; mm3 to cm3. */
const extraRubberCm3 = (bulgeMm: number, { wallWidthMm, rubberHeightMm }: BoxWall): number =>
  (MEAN_OF_BOW * bulgeMm * wallWidthMm * rubberHeightMm) / 2 / 1000;

/** The softer the wall, the larger the figure. */
const span = (of: (gPa: number) => number, gPa: { value: number; low: number; high: number }): Estimate => ({
  value: of(gPa.value),
  low: of(gPa.high),
  high: of(gPa.low),
  from: 'assumed',
});

function bulgeFindings(
  { material, wallMm, wallWidthMm }: BoxWall,
  { bulgeMm, neededWallMm, largestSpanMm, forceHeightMm, extraRubberCm3 }: Omit<BoxWallLoad, 'findings'>,
): Problem[] {
  const limitMm = R.wallBulge.value;
  if (bulgeMm.high <= limitMm) return [];
  const givesWayMm = R.wallGivesWay.value * wallWidthMm;
  return [
    finding('WALL_BULGES', bulgeMm.value > givesWayMm ? 'stop' : 'look', {
      material: material.title,
      wallMm,
      wallWidthMm,
      bulgeMm: bulgeMm.value,
      bulgeHighMm: bulgeMm.high,
      limitMm,
      givesWayMm,
      neededWallMm,
      largestSpanMm,
      forceHeightMm,
      extraRubberCm3: extraRubberCm3.value,
    }),
  ];
}

/** Nothing here can know whether the seams are tight: "Not checked", with the head that they must hold. */
const leakFinding = ({ rubberHeightMm }: BoxWall, pressureKPa: number): Problem =>
  finding('BOX_LEAKS', 'unknown', { rubberHeightMm, pressureKPa });
