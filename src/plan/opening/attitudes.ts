import {
  degreesBetween,
  searchAttitude,
  VENT_MM3,
  type Mouth,
  type TriangleMesh,
  type Vector,
} from '../../geometry';
import { MM3_PER_CM3 } from '../sizeDoubts';
import { fillingOf, LEAST_TRAP_MM3, type LevelFill } from './filling';

/** Directions that are tried over the part of the sphere that keeps the opening usable. Chosen here: about 4 degrees apart. */
export const DIRECTIONS = 500;

/** Steps of the columns for the search, in those of the answer. Chosen here: 2 mm on usual pieces. */
const COARSER = 2;

/** Nearer to today's than this is today's. Chosen here. */
const SAME_DEGREES = 1;

/** So many are told beside today's; more are looked at, as some do not hold the liquid. */
const [TOLD, LOOKED_AT] = [3, 5];

/**
 * The best ways up, each worked out as closely as today's: first those that hold the liquid, then by the air they shut in. Vents that are planned
 * already are not asked about: they belong to today's way up.
 */
export function bestAttitudes(
  chain: TriangleMesh,
  {
    mouth,
    today,
    stepMm,
    liquidCm3,
    onStep,
  }: { mouth: Mouth; today: Vector; stepMm: number; liquidCm3: number | undefined; onStep: () => void },
): LevelFill[] {
  const grid = { stepMm: COARSER * stepMm, most: LOOKED_AT };
  const found = searchAttitude(chain, grid, {
    mouth,
    leastMm3: LEAST_TRAP_MM3,
    directions: DIRECTIONS,
    onStep,
  });
  const others = found.filter(({ up }) => degreesBetween(up, today) > SAME_DEGREES);
  const close = others.map(({ up }) => fillingOf(chain, { mouth, up, vents: [], stepMm, liquidCm3, onStep }));
  const holds = ({ holdCm3 }: LevelFill): boolean => liquidCm3 === undefined || holdCm3 >= liquidCm3;
  return close
    .sort((a, b) => Number(holds(b)) - Number(holds(a)) || attitudeScore(a) - attitudeScore(b))
    .slice(0, TOLD);
}

/** A level ceiling keeps so much air under foam, mm over its area: filled to a level it would keep none. Chosen here. */
const LEVEL_MM = 1;

/** What speaks against a way up, in cubic centimeters: air, that of the search for every vent it asks for, and the air foam leaves under level ceilings. */
export const attitudeScore = ({ trappedCm3, traps, flat }: LevelFill): number =>
  trappedCm3.value + (VENT_MM3 / MM3_PER_CM3) * traps.length + (LEVEL_MM / 10) * flat.areaCm2;
