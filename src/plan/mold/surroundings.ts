import type { MoldShape } from '../../geometry';
import { good, type Outcome, type Problem } from '../../problem';
import {
  boxWall,
  floatCheck,
  JACKET_MATERIALS,
  MOLDMAKING_RULES,
  moldWeight,
  standingBox,
  WALL_MATERIALS,
  type BoxWallLoad,
  type JacketAmounts,
  type Sides,
} from '../../yield';
import { MM3_PER_CM3 } from '../sizeDoubts';
import type { MoldAsk } from './moldWish';

/** Everything around the rubber: walls that hold it, jacket, weight, and how the finished mold stands for the pour. */
export interface Surroundings {
  /** The widest wall of the box while rubber is poured. */
  wall?: BoxWallLoad & { material: string; wallMm: number; wallWidthMm: number };
  floating?: { forceN: number; weightKg: number };
  jacket?: JacketAmounts & { title: string };
  /** Rubber and jacket, g. */
  moldG: number;
  outerMm: Sides;
  /** A box that holds the finished mold upright, and what fills it around the mold. */
  standing: { innerMm: Sides; packingCm3: number };
  findings: Problem[];
}

/** What the walls of a box are made of when nothing is said. */
const BOX = { material: 'plywood', wallMm: MOLDMAKING_RULES.boxWall.value };

/** @param siliconeG rubber in the mold. Errors: INPUT_OUT_OF_BOUNDS, INPUT_NOT_A_NUMBER. */
export function surroundingsOf(
  shape: MoldShape,
  { siliconeG, siliconeKgM3 }: { siliconeG: number; siliconeKgM3: number },
  ask: MoldAsk,
): Outcome<Surroundings> {
  const wall = wallOf(shape, siliconeKgM3, ask);
  if (!wall.ok) return wall;
  const floats = floatsIn(shape, siliconeKgM3, ask.sculptMassG);
  if (!floats.ok) return floats;
  const jacket = jacketOf(shape, ask);
  if (!jacket.ok) return jacket;
  const weight = moldWeight({ siliconeG, jacketDryG: jacket.value?.dryMassG ?? 0 });
  if (!weight.ok) return weight;
  const standing = standingBox({ outerMm: shape.outerMm, outerCm3: filledCm3(shape) });
  if (!standing.ok) return standing;
  return good({
    ...(wall.value === undefined ? {} : { wall: wall.value }),
    ...(floats.value.floating === undefined ? {} : { floating: floats.value.floating }),
    ...(jacket.value === undefined ? {} : { jacket: jacket.value }),
    moldG: weight.value.moldG,
    outerMm: shape.outerMm,
    standing: standing.value,
    findings: [...(wall.value?.findings ?? []), ...floats.value.findings, ...weight.value.findings],
  });
}

function wallOf({ box }: MoldShape, siliconeKgM3: number, ask: MoldAsk): Outcome<Surroundings['wall']> {
  if (box === undefined) return good(undefined);
  const key = ask.box?.material ?? BOX.material;
  const material = WALL_MATERIALS.find((one) => one.key === key);
  if (material === undefined) throw new Error(`wallOf: expected a wall material of the list, got ${key}`);
  const wallMm = ask.box?.wallMm ?? BOX.wallMm;
  const wallWidthMm = Math.max(box.innerMm[0], box.innerMm[1]);
  const load = boxWall({ rubberHeightMm: box.innerMm[2], wallWidthMm, wallMm, siliconeKgM3, material });
  if (!load.ok) return load;
  const others = boxWall({
    rubberHeightMm: box.innerMm[2],
    wallWidthMm: Math.min(box.innerMm[0], box.innerMm[1]),
    wallMm,
    siliconeKgM3,
    material,
  });
  if (!others.ok) return others;
  // Two walls of either width bow out.
  const around = (of: (load: BoxWallLoad) => number): number => 2 * (of(load.value) + of(others.value));
  const extraRubberCm3 = {
    ...load.value.extraRubberCm3,
    value: around(({ extraRubberCm3: e }) => e.value),
    low: around(({ extraRubberCm3: e }) => e.low),
    high: around(({ extraRubberCm3: e }) => e.high),
  };
  const told = load.value.findings.map((one) =>
    one.code === 'WALL_BULGES'
      ? { ...one, values: { ...one.values, extraRubberCm3: extraRubberCm3.value } }
      : one,
  );
  // A cylinder is stretched, not bent: only its pressure and its seams count.
  const findings = box.kind === 'cylinder' ? told.filter(({ code }) => code !== 'WALL_BULGES') : told;
  return good({ ...load.value, extraRubberCm3, findings, material: material.title, wallMm, wallWidthMm });
}

/** A sculpt floats where rubber is poured around it; brushed rubber does not lift it. */
function floatsIn(
  shape: MoldShape,
  siliconeKgM3: number,
  sculptMassG: number | undefined,
): Outcome<{ floating?: { forceN: number; weightKg: number }; findings: Problem[] }> {
  if (shape.coats !== undefined) return good({ findings: [] });
  return floatCheck({
    siliconeKgM3,
    submergedCm3: shape.sculptMm3 / MM3_PER_CM3,
    ...(sculptMassG === undefined ? {} : { sculptMassG }),
  });
}

function jacketOf({ jacket }: MoldShape, ask: MoldAsk): Outcome<Surroundings['jacket']> {
  if (jacket === undefined) return good(undefined);
  const key = ask.jacketMaterial ?? 'plaster';
  const material = JACKET_MATERIALS.find((one) => one.key === key);
  if (material === undefined) throw new Error(`jacketOf: expected a jacket material of the list, got ${key}`);
  const amounts = material.build(
    {
      jacketCm3: jacket.volumeMm3 / MM3_PER_CM3,
      jacketInnerCm2: jacket.innerMm2 / 100,
      jacketOuterCm2: jacket.outerMm2 / 100,
      jacketMm: jacket.thicknessMm,
    },
    ask.jacketSettings ?? {},
  );
  return amounts.ok ? good({ ...amounts.value, title: material.title }) : amounts;
}

/** All that the outside of the mold encloses, its cavity too. */
const filledCm3 = ({ rubberMm3, sculptMm3, voids, jacket }: MoldShape): number =>
  (rubberMm3 + sculptMm3 + (jacket?.volumeMm3 ?? 0) + voids.reduce((sum, v) => sum + v.volumeMm3, 0)) /
  MM3_PER_CM3;
