import {
  moldShells,
  moldType,
  sectionOutlines,
  settleMold,
  type BaseChoice,
  type MoldKey,
  type MoldShell,
  type MoldWish,
  type Vector,
} from '../../geometry';
import { bad, good, type Outcome } from '../../problem';
import { bodyFor, sculptOn, type MoldBench } from './moldBench';

/** A mold by its settings alone: all that its shape hangs on. */
export interface ShellsWish {
  type: MoldKey;
  settings: MoldWish;
}

/** Across an axis (0 x, 1 y, 2 z) of the placed piece, mm. */
export interface PlaneAcross {
  axis: 0 | 1 | 2;
  atMm: number;
}

/** What lies within the outer face of one part, at a plane: closed outlines, x, y, z a point. */
export interface CutFace {
  part: 'sculpt' | MoldShell['part'];
  outlines: Float64Array[];
}

/**
 * Outer faces of the parts of a mold; those of the last settings of a type stay on the bench. Errors: those of `settleMold`, `bodyFor` and
 * `moldShells`.
 */
export function shellsOn(bench: MoldBench, { type, settings: wish }: ShellsWish): Outcome<MoldShell[]> {
  const settled = settleMold(moldType(type), wish);
  if (!settled.ok) return settled;
  const key = JSON.stringify(settled.value);
  const known = bench.shells.get(type);
  if (known?.key === key) return good(known.shells);
  const body = bodyFor(bench, type, settled.value);
  if (!body.ok) return body;
  const shells = moldShells(type, body.value, settled.value);
  if (shells.ok) bench.shells.set(type, { key, shells: shells.value });
  return shells;
}

/** The sculpt as rubber meets it and each part around it, at a plane. Errors: those of `shellsOn`; MOLD_NEEDS_SURFACE. */
export function cutFacesOn(bench: MoldBench, wish: ShellsWish, plane: PlaneAcross): Outcome<CutFace[]> {
  const shells = shellsOn(bench, wish);
  if (!shells.ok) return shells;
  const base: BaseChoice = wish.settings.base === 'closed' ? 'closed' : 'open';
  const sculpt = sculptOn(bench, base);
  if (!sculpt.ok) return sculpt;
  const { chain } = sculpt.value;
  if (chain === undefined) return bad('MOLD_NEEDS_SURFACE', { what: 'a cut' });
  const across = {
    point: along(plane.axis, plane.atMm),
    normal: along(plane.axis, 1),
  };
  return good([
    { part: 'sculpt', outlines: sectionOutlines(chain, across) },
    ...shells.value.map(({ part, chain: face }) => ({ part, outlines: sectionOutlines(face, across) })),
  ]);
}

const along = (axis: 0 | 1 | 2, length: number): Vector => [
  axis === 0 ? length : 0,
  axis === 1 ? length : 0,
  axis === 2 ? length : 0,
];
