import {
  largestSection,
  mouthOn,
  sectionOf,
  widestCircle,
  type WidestCircle,
  type Mouth,
  type Sculpt,
  type TriangleMesh,
  type Vector,
} from '../../geometry';
import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { diameterOfShareMm, RULES } from '../../yield';
import type { OpeningAsk } from './openingAsk';

/** Where the opening is, and who said so. */
export interface OpeningPlace {
  atMm: Vector;
  /** Out of the body. */
  normal: Vector;
  placedBy: 'given' | 'base' | 'summit';
  /** Unit vector: up when poured, unless another way is asked for. */
  usualUp: Vector;
  /** Widest round hole that the base has room for. */
  roomMm?: number;
  findings: Problem[];
}

/** The base is looked at this far above the board, mm: its edge may be rounded or rough. Chosen here. */
const ABOVE_BOARD_MM = 0.5;

/** A given place this far off the surface, mm, is told. Chosen here: what a tape misses. */
export const OFF_SURFACE_MM = 2;

/** Errors: OPENING_NONE_FOUND where the base has no room. */
export function placeOpening(sculpt: Sculpt, { opening = {} }: OpeningAsk): Outcome<OpeningPlace> {
  const chain = sculpt.chain!;
  if (opening.atMm !== undefined) {
    const mouth = mouthOn(chain, { atMm: opening.atMm, diameterMm: opening.diameterMm ?? PROVISIONAL_MM });
    const isOff = mouth.movedMm > OFF_SURFACE_MM;
    const normal = squared(mouth.normal);
    return good({
      atMm: mouth.atMm,
      normal,
      usualUp: normal,
      placedBy: 'given',
      findings: isOff
        ? [
            finding(
              'OPENING_OFF_SURFACE',
              offStatus(mouth.movedMm),
              { movedMm: mouth.movedMm },
              placeAt(mouth.atMm),
            ),
          ]
        : [],
    });
  }
  if (sculpt.boardMm !== undefined && hasBase(sculpt)) return onBase(chain, sculpt.boardMm);
  return atSummit(chain);
}

/** Depths under the highest point at which room for the opening is looked for, mm. Chosen here. */
const DEPTHS_MM = [1, 2, 3, 5, 8, 12, 16, 20, 25, 30] as const;

/** The highest place with room for what is fine by its share of the largest section, else the roomiest: the sculpt is poured as it stands. */
function atSummit(chain: TriangleMesh): Outcome<OpeningPlace> {
  const up: Vector = [0, 0, 1];
  const topMm = highestOf(chain);
  const share = RULES.openingShare.low;
  const wishMm = diameterOfShareMm({ share, areaCm2: largestSection(chain, up).areaMm2 / 100 });
  let best: WidestCircle | undefined;
  for (const depthMm of DEPTHS_MM) {
    const circle = widestCircle(sectionOf(chain, { point: [0, 0, topMm - depthMm], normal: up }));
    if (circle !== undefined && circle.diameterMm > (best?.diameterMm ?? 0)) best = circle;
    if (best !== undefined && best.diameterMm >= wishMm) break;
  }
  if (best === undefined) return bad('OPENING_NONE_FOUND');
  const [x, y] = best.atMm;
  const { atMm } = mouthOn(chain, { atMm: [x, y, topMm], diameterMm: 1, normal: up });
  return good({ atMm, normal: up, usualUp: up, placedBy: 'summit', roomMm: best.diameterMm, findings: [] });
}

/** So far off, mm, it is another place: a wrong unit or zero. Chosen here. */
const ELSEWHERE_MM = 20;

export const offStatus = (movedMm: number): 'look' | 'stop' => (movedMm > ELSEWHERE_MM ? 'stop' : 'look');

/** A hole whose width is not known yet faces as the surface does around it. Chosen here. */
const PROVISIONAL_MM = 20;

const hasBase = ({ findings }: Sculpt): boolean => !findings.some(({ code }) => code === 'STANDS_ON_POINT');

function onBase(chain: TriangleMesh, boardMm: number): Outcome<OpeningPlace> {
  const section = sectionOf(chain, { point: [0, 0, boardMm + ABOVE_BOARD_MM], normal: [0, 0, 1] });
  const circle = widestCircle(section);
  if (circle === undefined) return bad('OPENING_NONE_FOUND');
  return good({
    atMm: [circle.atMm[0], circle.atMm[1], boardMm],
    normal: [0, 0, -1],
    usualUp: [0, 0, -1],
    placedBy: 'base',
    roomMm: circle.diameterMm,
    findings: [],
  });
}

function highestOf({ positions: p, triangles }: TriangleMesh): number {
  let best = -Infinity;
  for (let c = 0; c < triangles.length; c++) best = Math.max(best, p[3 * triangles[c]! + 2]!);
  return best;
}

/** Nearer to an axis than this is meant to lie along it: cos 5 degrees. Chosen here. */
const SQUARE_COSINE = 0.9962;

/** A surface that faces along an axis but for its roughness does face along it. */
const squared = (normal: Vector): Vector => {
  const axis = normal.findIndex((c) => Math.abs(c) > SQUARE_COSINE);
  return axis < 0
    ? normal
    : ([0, 1, 2].map((k) => (k === axis ? Math.sign(normal[k]!) : 0)) as unknown as Vector);
};

/** The hole itself, once its width is known. */
export const mouthAt = (chain: TriangleMesh, { atMm, normal }: OpeningPlace, diameterMm: number): Mouth =>
  mouthOn(chain, { atMm, diameterMm, normal });

export const placeAt = ([xMm, yMm, zMm]: Vector): NonNullable<Problem['at']> => ({ xMm, yMm, zMm });
