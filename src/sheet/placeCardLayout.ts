import { inView, VIEW_AXES, type Bounds, type PlaceCard, type ViewName } from '../plan/placeCard';
import { ringMargins, ringPlaces, ringRadiusMm, type PaperBox, type RingRows } from './placeCardRings';
import type { Spot } from './placeCardSpots';

/** Where everything of the drawing stands, mm on paper. */
export interface Layout {
  /** One on paper is so many on the piece. */
  scale: number;
  widthMm: number;
  heightMm: number;
  rings: RingRows;
  views: readonly { name: ViewName; box: PaperBox; cell: PaperBox }[];
}

/** Room for the drawing, mm: the width of the page, and what leaves half of it to the words. Chosen here. */
export const DRAWING = { widthMm: 190, mostMm: 128 };

/** Two lines of words under each view, mm, and the width they need. */
export const CAPTION = { heightMm: 12.5, widthMm: 50 };

/** Side and top stand next to the front as if the piece were folded open (third angle, ISO 5456-2), or all in one line. */
const GRIDS: readonly Grid[] = [
  [['side', 'front', 'top']],
  [
    [undefined, 'top'],
    ['side', 'front'],
  ],
];

/** More rings than these are a thicket; and a drawing goes down by one scale for them at the most (2 to 5 is 2.5). Chosen here. */
const MOST_RINGS = 48;
const ONE_STEP = 2.5;

/** The drawing at its largest scale, with as many of the first spots as have room around it. */
export function layOutCard(
  card: PlaceCard,
  spots: readonly Spot[],
): { layout: Layout; drawn: readonly Spot[] } {
  const bare = largestLayout(card, []);
  if (bare === undefined) throw new Error('placeCard: expected bounds below 10 km, got larger ones');
  for (let count = Math.min(MOST_RINGS, spots.length); count > 0; count--) {
    const drawn = spots.slice(0, count);
    const layout = largestLayout(card, drawn);
    if (layout !== undefined && layout.scale <= ONE_STEP * bare.scale) return { layout, drawn };
  }
  return { layout: bare, drawn: [] };
}

/** Scales: 1:1, 1:2, 1:5, 1:10, 1:20 and, for what is larger still, on in these steps. */
function largestLayout(card: PlaceCard, spots: readonly Spot[]): Layout | undefined {
  for (let ten = 1; ten <= 1e6; ten *= 10)
    for (const step of [1, 2, 5]) {
      const layout = lowestAt(card, spots, step * ten);
      if (layout !== undefined) return layout;
    }
  return undefined;
}

/** At one scale: the lowest grid with rings at the sides, else without. */
function lowestAt(card: PlaceCard, spots: readonly Spot[], scale: number): Layout | undefined {
  for (const atSides of [true, false]) {
    const fitting = GRIDS.map((grid) => layOut(card, spots, grid, { scale, atSides })).filter(
      ({ widthMm, heightMm }) => widthMm <= DRAWING.widthMm && heightMm <= DRAWING.mostMm,
    );
    if (fitting.length > 0)
      return fitting.reduce((one, other) => (other.heightMm < one.heightMm ? other : one));
  }
  return undefined;
}

/** Extent of the bounds on the axes of a view, mm of the piece. */
export function viewExtent(
  bounds: Bounds,
  name: ViewName,
): { low: [number, number]; high: [number, number] } {
  const [one, other] = [inView(VIEW_AXES[name], bounds.min), inView(VIEW_AXES[name], bounds.max)];
  return {
    low: [Math.min(one[0], other[0]), Math.min(one[1], other[1])],
    high: [Math.max(one[0], other[0]), Math.max(one[1], other[1])],
  };
}

type Grid = readonly (readonly (ViewName | undefined)[])[];

function layOut(
  card: PlaceCard,
  spots: readonly Spot[],
  fullGrid: Grid,
  { scale, atSides }: { scale: number; atSides: boolean },
): Layout {
  const has = (name: ViewName | undefined): name is ViewName =>
    name !== undefined && card.views.some((view) => view.name === name);
  const grid = fullGrid.filter((line) => line.some(has));
  const sizeOf = (name: ViewName): Size => sizeAt(card.boundsMm, name, scale);
  const rings = ringsFor(grid.flat().filter(has), sizeOf, spots, atSides);
  const { besideMm, aboveMm } = ringMargins(rings);
  const columns = grid[0]!.map((_, c) => {
    const widths = grid
      .map((line) => line[c])
      .filter(has)
      .map((name) => sizeOf(name).width + 2 * besideMm);
    return widths.length === 0 ? 0 : Math.max(CAPTION.widthMm, ...widths);
  });
  const heights = grid.map(
    (line) =>
      Math.max(...line.filter(has).map((name) => sizeOf(name).height)) + 2 * aboveMm + CAPTION.heightMm,
  );
  const viewAt = (name: ViewName, c: number, l: number): Layout['views'][number] => {
    const { width, height } = sizeOf(name);
    const cell = { x: sum(columns, c), y: sum(heights, l), width: columns[c]!, height: heights[l]! };
    const x = cell.x + (cell.width - width) / 2;
    const y = cell.y + cell.height - CAPTION.heightMm - aboveMm - height;
    return { name, cell, box: { x, y, width, height } };
  };
  const views = grid.flatMap((line, l) => line.flatMap((name, c) => (has(name) ? [viewAt(name, c, l)] : [])));
  return {
    scale,
    rings,
    views,
    widthMm: sum(columns, columns.length),
    heightMm: sum(heights, heights.length),
  };
}

interface Size {
  width: number;
  height: number;
}

function sizeAt(bounds: Bounds, name: ViewName, scale: number): Size {
  const { low, high } = viewExtent(bounds, name);
  return { width: (high[0] - low[0]) / scale, height: (high[1] - low[1]) / scale };
}

const sum = (all: readonly number[], count: number): number =>
  all.slice(0, count).reduce((total, one) => total + one, 0);

/** As many rows as the fullest view needs, with a quarter more places than rings, so that leaders can stay short. Chosen here. */
function ringsFor(
  names: readonly ViewName[],
  sizeOf: (name: ViewName) => Size,
  spots: readonly Spot[],
  atSides: boolean,
): RingRows {
  const radiusMm = ringRadiusMm(Math.max(0, ...spots.map(({ dot }) => dot.n)));
  const isShort = (rows: number): boolean =>
    names.some((name) => {
      const places = ringPlaces({ x: 0, y: 0, ...sizeOf(name) }, { radiusMm, rows, atSides });
      return places.length < 1.25 * spots.filter(({ view }) => view === name).length;
    });
  let rows = 1;
  while (isShort(rows)) rows++;
  return { radiusMm, rows, atSides };
}
