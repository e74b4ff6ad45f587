import type { Plane } from '../measure/section';
import { caughtLimbs, type CaughtLimb } from './demoldCaught';
import { partsOf, tapeRound, type Part } from './demoldParts';
import { passagesOf, tightestOf, worstPassage, type Passage, type Ring } from './demoldPassage';
import type { SectionsOut } from './demoldSection';

/** A limb that is thinner where it leaves the body, or farther on, than deeper in: a lobe on a stalk, a fist on a wrist. */
export interface NeckedLimb extends Passage {
  /** Nothing else is in the plane of the neck: the limb is the rest of the body, and its passage one of `worstPassage`. */
  isWhole: boolean;
}

export interface LockedLimbs {
  /** Tightest first. */
  necked: NeckedLimb[];
  /** Farthest reach first. */
  caught: CaughtLimb[];
}

export interface LimbWish {
  /** Limbs whose bulb is more than this many times their neck are named. */
  ratio: number;
  /** Limbs of less girth than this are not named. By default a 25th of the widest girth. */
  leastGirthMm?: number;
  /** Rubber that reaches less far than this between limbs is not named. By default two steps of the planes. */
  leastReachMm?: number;
}

/** Shares of the widest girth: a limb worth a name, and a part worth following (it may be the stalk of one). Chosen here. */
const [LIMB_SHARE, PART_SHARE] = [0.04, 0.01];

const REACH_STEPS = 2;

/**
 * Limbs that the rubber has to stretch for on their own, and those it cannot leave straight. The outlines of planes next to one another are
 * matched by what lies over one another, to a tree from the mouth inward; a limb begins where an outline parts. Its neck is one of its
 * own outlines, its bulb the widest tape around all it becomes deeper in. A limb across the way is told only where it makes an outline of its
 * own; `undercutMm2` of the sections counts it in any case.
 */
export function lockedLimbs(found: SectionsOut, wish: LimbWish): LockedLimbs {
  const widestMm = found.sections.reduce((most, { girthMm }) => Math.max(most, girthMm), 0);
  const { ratio, leastGirthMm = LIMB_SHARE * widestMm } = wish;
  const planes = partsOf(found, PART_SHARE * widestMm);
  const plane: Plane = { point: found.sections[0]!.middleMm, normal: found.way };
  const isAlone = new Set(planes.filter((parts) => parts.length === 1).map(([part]) => part!.alongMm));
  const whole = worstPassage(found).list.filter(({ neckAlongMm }) => isAlone.has(neckAlongMm));
  const limbs = planes
    .flatMap((parts, i) => parts.filter((part) => i === 0 || beginsLimb(part)))
    .map((first) => ownPassages(first, plane).filter(({ neckAlongMm }) => !isAlone.has(neckAlongMm)));
  const necked = [whole, ...limbs]
    .filter((passages) => passages.length > 0)
    .map((passages, i) => ({ ...tightestOf(passages), isWhole: i === 0 && whole.length > 0 }))
    .filter((limb) => limb.ratio > ratio && limb.bulbMm >= leastGirthMm)
    .sort((a, b) => b.ratio - a.ratio);
  const caught = caughtLimbs(planes, {
    leastGirthMm,
    leastReachMm: wish.leastReachMm ?? REACH_STEPS * found.stepMm,
  });
  return { necked: oncePerBulb(necked), caught };
}

/** A speck or a hanging arm beside a limb parts it in two: of necks before one bulb the tightest is named. */
function oncePerBulb(limbs: readonly NeckedLimb[]): NeckedLimb[] {
  const isSame = (a: Passage, b: Passage): boolean =>
    Math.hypot(...a.bulbAtMm.map((c, k) => c - b.bulbAtMm[k]!)) <= SAME_PLACE_SHARE * a.bulbMm;
  return limbs.filter((limb, i) => limbs.findIndex((other) => isSame(other, limb)) === i);
}

/** Middles of one tape, however it was put together, differ by rounding only. */
const SAME_PLACE_SHARE = 1e-6;

/** Where outlines part or join. What begins at a tip is caught, and has no neck towards the mouth. */
function beginsLimb({ shallower, isHanging }: Part): boolean {
  const from = shallower.filter((part) => !part.isHanging);
  return !isHanging && (from.length > 1 || from[0]!.deeper.length > 1);
}

/** Of the planes in which the limb is one outline; their bulbs are the widest of all it becomes. */
function ownPassages(first: Part, plane: Plane): Passage[] {
  const rings: Ring[] = [];
  let parts: Part[] = [first];
  while (parts.length > 0) {
    const [{ alongMm, middleMm }] = parts as [Part];
    const round =
      parts.length === 1
        ? parts[0]!
        : tapeRound(
            parts.map(({ corners }) => corners),
            { alongMm, middleMm },
            plane,
          );
    rings.push({ alongMm, girthMm: round.girthMm, middleMm: round.middleMm });
    parts = becomesOf(parts);
  }
  return rings.length < 2 ? [] : passagesOf(rings).slice(0, ownLength(first));
}

/** In how many planes it is one outline, until it parts, joins or ends. */
function ownLength(first: Part): number {
  let count = 1;
  for (let part = first; part.deeper.length === 1; count++) {
    if (becomesOf([part]).length === 0) break;
    part = part.deeper[0]!;
  }
  return count;
}

/**
 * Deeper parts that come from these alone: where a limb grows into the body it ends. What hangs joins it and is drawn out with it.
 */
function becomesOf(parts: readonly Part[]): Part[] {
  const deeper = new Set(parts.flatMap((part) => part.deeper));
  const isFrom = (part: Part): boolean => part.isHanging || parts.includes(part);
  return Array.from(deeper).filter(({ shallower }) => shallower.every(isFrom));
}
