import { blockBox } from '../molds/block';
import type { BoxShape, MoldSettings } from '../molds/moldType';
import type { Sculpt } from '../molds/sculpt';
import { smallestCircle } from '../plane/smallestCircle';
import { tightestRectangle } from '../plane/tightestRectangle';
import type { MoldShell } from './moldShell';
import { prismShell } from './prismShell';

/** Sides of a cylinder: on 400 mm across, flats within 0.02 mm of the arc. Chosen here. */
const SIDES = 256;

/** The block as it stands: the inside of its box or cylinder, where `molds/block.ts` has it. */
export function blockShell(sculpt: Sculpt, settings: MoldSettings): MoldShell {
  const { box, wallMm, fromMm } = blockBox(sculpt, settings);
  const toMm = fromMm + box.innerMm[2];
  return {
    part: 'block',
    ...prismShell(outlineOf(box, sculpt, wallMm), [fromMm, toMm], box.kind === 'cylinder'),
  };
}

/** Counter-clockwise, x and y in turn. */
function outlineOf(
  { kind, innerMm, turnDegrees }: BoxShape,
  { bounds, hull }: Sculpt,
  wallMm: number,
): number[] {
  const { us, vs } = hull;
  if (kind === 'cylinder') {
    const { u, v, radius } = smallestCircle(us, vs);
    return Array.from({ length: SIDES }, (_, n) => (2 * Math.PI * n) / SIDES).flatMap((turn) => [
      u + (radius + wallMm) * Math.cos(turn),
      v + (radius + wallMm) * Math.sin(turn),
    ]);
  }
  const [x, y] =
    turnDegrees === 0
      ? [0, 1].map((a) => (bounds.min[a]! + bounds.max[a]!) / 2)
      : tightestRectangle(us, vs, wallMm).center;
  const [cos, sin] = [Math.cos((turnDegrees * Math.PI) / 180), Math.sin((turnDegrees * Math.PI) / 180)];
  return CORNERS.flatMap(([along, across]) => {
    const [u, v] = [(along * innerMm[0]) / 2, (across * innerMm[1]) / 2];
    return [x! + cos * u - sin * v, y! + sin * u + cos * v];
  });
}

const CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;
