import { planeFrame, type Vector } from '../measure/planeFrame';
import type { Plane } from '../measure/section';
import type { SectionOut, SectionsOut } from './demoldSection';
import { ringOf, type FlatRing } from './demoldRings';

/** Where half planes about a straight axis meet the body's outside, section by section. */
export interface Radii {
  sections: SectionOut[];
  /** Of every section, by ray: how far out the body ends, mm; 0 where the ray misses it. */
  outMm: Float64Array[];
  /** Place of the outside of a section on a ray. */
  placeAt: (section: number, ray: number) => Vector;
  /** Unit vector out of the body along a ray. */
  sideOf: (ray: number) => Vector;
}

/** Sections thinned to half of a step between them, so that closer looks weigh no more. */
function thinned(sections: readonly SectionOut[], stepMm: number): SectionOut[] {
  let lastMm = -Infinity;
  return sections.filter(({ alongMm, girthMm }) => {
    const isKept = girthMm > 0 && alongMm >= lastMm + stepMm / 2;
    if (isKept) lastMm = alongMm;
    return isKept;
  });
}

/** From the mouth to the first section at this depth or past it; the axis is the straight line nearest to their middles. */
export function radiiOf({ sections, way, stepMm }: SectionsOut, toMm: number, rays: number): Radii {
  const even = thinned(sections, stepMm);
  const past = even.findIndex(({ alongMm }) => alongMm >= toMm);
  const kept = past === -1 ? even : even.slice(0, past + 1);
  const { u, v } = planeFrame(way);
  const axis = straightThrough(kept);
  const sideOf = (ray: number): Vector => {
    const [c, s] = [Math.cos((2 * Math.PI * ray) / rays), Math.sin((2 * Math.PI * ray) / rays)];
    return [c * u[0] + s * v[0], c * u[1] + s * v[1], c * u[2] + s * v[2]];
  };
  const outMm = kept.map(({ outlines, alongMm }) => {
    const plane: Plane = { point: axis(alongMm), normal: way };
    return outermost(
      outlines.map((outline) => ringOf(outline, plane)),
      rays,
    );
  });
  const placeAt = (section: number, ray: number): Vector => {
    const [from, side, mm] = [axis(kept[section]!.alongMm), sideOf(ray), outMm[section]![ray]!];
    return [from[0] + mm * side[0], from[1] + mm * side[1], from[2] + mm * side[2]];
  };
  return { sections: kept, outMm, placeAt, sideOf };
}

/** Least squares, each coordinate over the depth. */
function straightThrough(sections: readonly SectionOut[]): (alongMm: number) => Vector {
  const mean = (of: (section: SectionOut) => number): number =>
    sections.reduce((sum, section) => sum + of(section), 0) / sections.length;
  const middle = mean(({ alongMm }) => alongMm);
  const spread = mean(({ alongMm }) => (alongMm - middle) ** 2);
  const lines = ([0, 1, 2] as const).map((k) => {
    const at = mean(({ middleMm }) => middleMm[k]);
    const lean = mean(({ alongMm, middleMm }) => (alongMm - middle) * (middleMm[k] - at));
    return { at, lean: spread > 0 ? lean / spread : 0 };
  });
  return (alongMm) => lines.map(({ at, lean }) => at + lean * (alongMm - middle)) as [number, number, number];
}

/** Each side of an outline is met by the rays between the directions of its ends. */
function outermost(rings: readonly FlatRing[], rays: number): Float64Array {
  const outMm = new Float64Array(rays);
  const perRay = (2 * Math.PI) / rays;
  for (const ring of rings)
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [pu, pv, qu, qv] = [ring[j]!, ring[j + 1]!, ring[i]!, ring[i + 1]!];
      const start = Math.atan2(pv, pu);
      const turn = Math.atan2(pu * qv - pv * qu, pu * qu + pv * qv);
      const [low, high] = turn > 0 ? [start, start + turn] : [start + turn, start];
      for (let ray = Math.ceil(low / perRay); ray <= high / perRay; ray++) {
        const [c, s] = [Math.cos(ray * perRay), Math.sin(ray * perRay)];
        const [p, q] = [c * pv - s * pu, c * qv - s * qu];
        const share = p === q ? 0 : p / (p - q);
        const mm = c * (pu + share * (qu - pu)) + s * (pv + share * (qv - pv));
        const at = ((ray % rays) + rays) % rays;
        if (mm > outMm[at]!) outMm[at] = mm;
      }
    }
  return outMm;
}
