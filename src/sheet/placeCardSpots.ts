import {
  inView,
  towardEye,
  VIEW_AXES,
  VIEW_NAMES,
  type CardDot,
  type PlaceCard,
  type Vector,
  type ViewName,
} from '../plan/placeCard';

/** A dot with the view that shows it, and whether it lies on the side seen there. */
export interface Spot {
  dot: CardDot;
  view: ViewName;
  face: 'near' | 'far' | 'unknown';
  /** On the axes of the view, mm of the piece. */
  at: readonly [number, number];
}

/** Cosine: up to 60 degrees off the line of sight a spot is well seen. Chosen here. */
const WELL_SEEN = 0.5;

/**
 * Each dot in one view: the one it faces best; where it faces none well, the one that looks squarest through the piece at it. Without a
 * normal it stands in the first view. In order of their numbers.
 */
export function spotsOf({ dots, views }: PlaceCard): Spot[] {
  const drawn = VIEW_NAMES.filter((name) => views.some((view) => view.name === name));
  return [...dots]
    .sort((one, other) => one.n - other.n)
    .map((dot) => {
      const seen = seenIn(dot.normal, drawn);
      return { dot, ...seen, at: inView(VIEW_AXES[seen.view], dot.atMm) };
    });
}

function seenIn(normal: Vector | undefined, drawn: readonly ViewName[]): Pick<Spot, 'view' | 'face'> {
  const length = normal === undefined ? 0 : Math.hypot(...normal);
  if (normal === undefined || !(length > 0)) return { view: drawn[0]!, face: 'unknown' };
  const facing = drawn.map((view) => {
    const [right, up] = [towardEye(VIEW_AXES[view]), normal];
    return { view, cosine: (right[0] * up[0] + right[1] * up[1] + right[2] * up[2]) / length };
  });
  const best = facing.reduce((one, other) => (other.cosine > one.cosine ? other : one));
  if (best.cosine >= WELL_SEEN) return { view: best.view, face: 'near' };
  const { view, cosine } = facing.reduce((one, other) =>
    Math.abs(other.cosine) > Math.abs(one.cosine) ? other : one,
  );
  return { view, face: cosine > 0 ? 'near' : 'far' };
}
