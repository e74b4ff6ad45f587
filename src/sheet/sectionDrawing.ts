import { inView, VIEW_AXES, type Vector, type ViewName } from '../plan/placeCard';
import { formatLength } from '../units';
import { SECTION_WORDS } from '../words/sectionWords';
import { escaped } from './html';

/** A mold cut open: outlines at one plane of what lies within each face, the sculpt first, each next one containing the one before; mm. */
export interface SectionFaces {
  plane: { axis: 'x' | 'y' | 'z'; atMm: number };
  faces: readonly { part: SectionPart; outlines: readonly Float64Array[] }[];
}

export type SectionPart = 'sculpt' | 'skin' | 'jacket' | 'block';

/** From where a cut is looked at, so that left and right are as on the place card. */
const VIEW_OF_CUT: Readonly<Record<SectionFaces['plane']['axis'], ViewName>> = {
  x: 'side',
  y: 'front',
  z: 'top',
};

/* Outlines turn one way round solid and the other round voids, so where two parts overlap the fill of both holds (nonzero). */

/** Room for the drawing on paper, mm: what the rest of the sheet leaves. */
const ROOM = { widthMm: 118, heightMm: 92 };

/** Millimeters on the piece for one on paper. Chosen here. */
const SCALES = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50];

/** Length of the bar on paper at most, mm. */
const LONGEST_BAR_MM = 60;

/**
 * The section to scale as SVG, a unit of it a millimeter on paper: outermost first, each part over the one around it, so that every wall shows in
 * its true thickness. Hatched in lines, since print has no gray. Empty where nothing lies at the plane.
 */
export function sectionDrawing({ plane, faces }: SectionFaces): string {
  const axes = VIEW_AXES[VIEW_OF_CUT[plane.axis]];
  const seen = faces.map(({ part, outlines }) => ({
    part,
    rings: outlines.map((outline) => ringOf(outline, (at) => inView(axes, at))),
  }));
  const all = seen.flatMap(({ rings }) => rings.flat());
  if (all.length === 0) return '';
  const [left, right] = [Math.min(...xs(all)), Math.max(...xs(all))];
  const [low, high] = [Math.min(...ys(all)), Math.max(...ys(all))];
  const scale = scaleFor(right - left, high - low);
  const widthMm = (right - left) / scale + 2;
  const heightMm = (high - low) / scale + 2;
  const onPaper = ([u, v]: Point): string =>
    `${((u - left) / scale + 1).toFixed(2)} ${((high - v) / scale + 1).toFixed(2)}`;
  const paths = [...seen].reverse().map(({ part, rings }) => {
    const d = rings.map((ring) => `M${ring.map(onPaper).join('L')}Z`).join('');
    // Hatching lets through what lies under it: white first.
    return `<path class="sculpt" d="${d}"/>${part === 'sculpt' ? '' : `<path class="${part}" data-part="${part}" d="${d}"/>`}`;
  });
  return `<svg class="section" width="${widthMm.toFixed(2)}mm" height="${heightMm.toFixed(2)}mm" viewBox="0 0 ${widthMm.toFixed(2)} ${heightMm.toFixed(2)}" data-scale="${scale}" role="img" aria-label="${escaped(SECTION_WORDS[plane.axis])}">${HATCHES}${paths.join('')}</svg>
${barOf(scale)}`;
}

type Point = readonly [number, number];
const xs = (points: readonly Point[]): number[] => points.map(([x]) => x);
const ys = (points: readonly Point[]): number[] => points.map(([, y]) => y);

function ringOf(outline: Float64Array, seen: (at: Vector) => Point): Point[] {
  const points: Point[] = [];
  for (let i = 0; i < outline.length; i += 3)
    points.push(seen([outline[i]!, outline[i + 1]!, outline[i + 2]!]));
  return points;
}

function scaleFor(wideMm: number, tallMm: number): number {
  const least = Math.max(wideMm / (ROOM.widthMm - 2), tallMm / (ROOM.heightMm - 2));
  return SCALES.find((scale) => scale >= least) ?? Math.ceil(least);
}

/** A round length on the piece, in both systems, and the scale in words. */
function barOf(scale: number): string {
  const most = LONGEST_BAR_MM * scale;
  const lengthMm = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000].filter((mm) => mm <= most).at(-1) ?? most;
  const onPaperMm = (lengthMm / scale).toFixed(2);
  return `<p class="bar"><svg width="${onPaperMm}mm" height="3mm" viewBox="0 0 ${onPaperMm} 3"><path d="M0.15 0.5V2.7H${(lengthMm / scale - 0.15).toFixed(2)}V0.5"/></svg> ${escaped(formatLength(lengthMm))}, scale 1:${scale}</p>`;
}

/** Ids of its own, as there is one section a sheet. */
const HATCHES = `<defs><pattern id="hatch-rubber" width="1.6" height="1.6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V1.6"/></pattern><pattern id="hatch-jacket" width="3" height="3" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path d="M0 0V3"/></pattern></defs>`;
