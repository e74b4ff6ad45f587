import type { TriangleMesh } from '../../geometry';
import { shadowOutlines } from '../../geometry/measure/outline';
import { simplified } from '../../geometry/measure/outlineSimplify';
import { VIEW_AXES } from '../../geometry/measure/outlineViews';
import type { Outline } from '../../job/seen';

/** Length of the longer side of an outline: whole numbers up to it are finer than any row of the Shelf. */
const LONGER = 1000;

/** Points that are dropped lie no farther than this from what is drawn, of the same thousand. Chosen here. */
const AWAY = 4;

/** From above it is shown only where that shows this much more of it: an eel, a plate. Chosen here. */
const FLAT = 1.5;

/** The shadow of a placed piece from its front, or from above where it lies flat; nothing where it has none. */
export function outlineOf(mesh: TriangleMesh): Outline | undefined {
  const front = shadowFrom(mesh, 'front');
  const top = shadowFrom(mesh, 'top');
  if (front === undefined || top === undefined) return front ?? top;
  return areaOf(top) * top.unit ** 2 > FLAT * areaOf(front) * front.unit ** 2 ? bare(top) : bare(front);
}

type Shadow = Outline & { unit: number };

const areaOf = ({ wide, tall }: Outline): number => wide * tall;
const bare = ({ view, wide, tall, lines }: Shadow): Outline => ({ view, wide, tall, lines });

function shadowFrom(mesh: TriangleMesh, view: Outline['view']): Shadow | undefined {
  const outlines = shadowOutlines(mesh, VIEW_AXES[view]);
  const [u, v] = [rangeOf(outlines, 0), rangeOf(outlines, 1)];
  const size = Math.max(u.high - u.low, v.high - v.low);
  if (!(size > 0)) return undefined;
  const unit = size / LONGER;
  const whole = (length: number): number => Math.round(length / unit);
  const lines = outlines
    .map((outline) => simplified(outline, AWAY * unit))
    .filter((outline) => outline.length >= 6)
    .map((outline) => Array.from(outline, (at, i) => (i % 2 === 0 ? whole(at - u.low) : whole(v.high - at))));
  return {
    view,
    unit,
    wide: Math.max(1, whole(u.high - u.low)),
    tall: Math.max(1, whole(v.high - v.low)),
    lines,
  };
}

function rangeOf(outlines: readonly Float64Array[], side: 0 | 1): { low: number; high: number } {
  const range = { low: Infinity, high: -Infinity };
  for (const outline of outlines)
    for (let i = side; i < outline.length; i += 2) {
      range.low = Math.min(range.low, outline[i]!);
      range.high = Math.max(range.high, outline[i]!);
    }
  return range;
}
