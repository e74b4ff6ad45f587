import { simplifyMesh } from '../geometry';
import { cutFacesOn, shellsOn, type MoldBench } from '../plan';
import { bad, good, type Outcome } from '../problem';
import type { CutFaces, CutFacesAsk, Shells, ShellsAsk, ShownMesh } from './protocol';
import type { Help } from './sizeWish';
import { vertexNormals } from './vertexNormals';
import { watchedBench } from './watchedBench';

/** Outer faces of the parts of a mold, to be drawn. Copies, as they are handed over: the bench keeps its own. Errors: those of `shellsOn`. */
export function shellsWish(
  { bench }: { bench: MoldBench },
  { type, settings }: ShellsAsk,
  help: Help,
): Outcome<Shells> {
  if (help.shouldStop?.() === true) return bad('STOPPED');
  const shells = shellsOn(watchedBench(bench, help), { type, settings });
  if (!shells.ok) return shells;
  return good({
    parts: shells.value.map(({ part, positions, normals, index }) => ({
      part,
      surface: shownSurface(positions, normals, index),
    })),
  });
}

/** More triangles than these are simplified to about so many: with the sculpt the picture still turns at a frame in a blink. Chosen here. */
const SHOWN_TRIANGLES = 40_000;

function shownSurface(positions: Float32Array, normals: Float32Array, index: Uint32Array): ShownMesh {
  if (index.length / 3 <= SHOWN_TRIANGLES)
    return { positions: positions.slice(), normals: normals.slice(), index: index.slice() };
  const mesh = { positions: Float64Array.from(positions), triangles: Int32Array.from(index) };
  const shown = simplifyMesh(mesh, SHOWN_TRIANGLES);
  const places = Float32Array.from(shown.positions);
  return {
    positions: places,
    normals: vertexNormals(places, shown.triangles),
    index: Uint32Array.from(shown.triangles),
  };
}

const AXES = { x: 0, y: 1, z: 2 } as const;

/** The sculpt and the parts around it where a plane cuts them. Errors: those of `cutFacesOn`. */
export function cutFacesWish(
  { bench }: { bench: MoldBench },
  { type, settings, plane }: CutFacesAsk,
  help: Help,
): Outcome<CutFaces> {
  if (help.shouldStop?.() === true) return bad('STOPPED');
  const across = { axis: AXES[plane.axis], atMm: plane.atMm };
  const faces = cutFacesOn(watchedBench(bench, help), { type, settings }, across);
  return faces.ok ? good({ plane, faces: faces.value }) : faces;
}
