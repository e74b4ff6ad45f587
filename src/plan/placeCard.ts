import type { Bounds, Vector, ViewName } from '../geometry';

/** What the place card draws and lists: the sculpt as it stands on its board, Z up, its face towards +y, mm. */
export interface PlaceCard {
  boundsMm: Bounds;
  /** Closed polygons, right and up per point on the axes of the view, as `shadowOutlines` gives them. */
  views: readonly { name: ViewName; outlines: readonly Float64Array[] }[];
  /** Direction (any length above 0) that points up when foam is poured: z where the mold is poured as the sculpt stands. */
  upWhenPoured: Vector;
  dots: readonly CardDot[];
}

/** A spot to mark on the clay. */
export interface CardDot {
  /** The number in its ring; each is used once. */
  n: number;
  kind: 'opening' | 'vent' | 'trap' | 'thin' | 'web';
  atMm: Vector;
  /** Outward; it tells from which side the spot is seen. Left out, the card says that the side is not known. */
  normal?: Vector;
  /** In words, as `Vent 2 mm`. */
  text: string;
}

export { inView, tapeFrom, towardEye, VIEW_AXES, VIEW_NAMES } from '../geometry';
export type { Bounds, Side, Vector, ViewName } from '../geometry';
