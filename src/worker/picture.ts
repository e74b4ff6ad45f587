import { bad, good, type Outcome } from '../problem';
import {
  boundsOf,
  centerOf,
  cutMesh,
  extentsOf,
  placeMesh,
  simplifyMesh,
  type Bounds,
  type ScanFile,
  type TriangleMesh,
} from '../geometry';
import { nextCorner, OPEN, pairEdges } from '../geometry/repair/edges';
import type { Picture, PicturePlace } from './protocol';
import { vertexNormals } from './vertexNormals';

/** More triangles than these are simplified to about so many. Chosen here: a phone draws them at every turn of the piece. */
const SHOWN_TRIANGLES = 120_000;

/** Open edges that are drawn at most; of more, every so many is left out. Chosen here. */
const SHOWN_EDGES = 200_000;

/**
 * The surface to draw, turned up and centered before it is rounded to float32; simplified where it is of very many triangles. Counts and open edges are of
 * the whole. The same file and place give the same picture. Error: CUT_EMPTY.
 */
export function drawPicture(scan: ScanFile, place: PicturePlace): Outcome<Picture> {
  const surface = shownSurface(scan, place);
  if (!surface.ok) return surface;
  const { mesh, shown, positions, bounds, middle } = surface.value;
  const [wide, deep, tall] = extentsOf(bounds);
  return good({
    positions,
    normals: vertexNormals(positions, shown.triangles),
    index: Uint32Array.from(shown.triangles),
    ...openEdges(mesh, middle),
    halfUnits: [wide / 2, deep / 2, tall / 2],
    middleUnits: middle,
    place,
    triangles: mesh.triangles.length / 3,
    shownTriangles: shown.triangles.length / 3,
  });
}

/** The vertices of that picture alone, in half the time. Error: CUT_EMPTY. */
export function picturePoints(
  scan: ScanFile,
  place: PicturePlace,
): Outcome<Pick<Picture, 'positions' | 'middleUnits' | 'place'>> {
  const surface = shownSurface(scan, place);
  if (!surface.ok) return surface;
  return good({ positions: surface.value.positions, middleUnits: surface.value.middle, place });
}

interface ShownSurface {
  /** All of it. */
  mesh: TriangleMesh;
  /** What is drawn of it, and that about the middle. */
  shown: TriangleMesh;
  positions: Float32Array;
  bounds: Bounds;
  middle: [number, number, number];
}

function shownSurface(scan: ScanFile, { up, cut }: PicturePlace): Outcome<ShownSurface> {
  const turned = placeMesh(scan.mesh, { up, mmPerUnit: 1 });
  const mesh =
    cut === undefined ? turned : cutMesh(turned, [{ axis: 2, atMm: cut.atUnits, keep: cut.keep }]).mesh;
  if (mesh.triangles.length === 0) return bad('CUT_EMPTY');
  const bounds = boundsOf(mesh);
  const middle = centerOf(bounds);
  const shown = simplifyMesh(mesh, SHOWN_TRIANGLES);
  const positions = new Float32Array(shown.positions.length);
  for (let i = 0; i < positions.length; i++) positions[i] = shown.positions[i]! - middle[i % 3]!;
  return good({ mesh, shown, positions, bounds, middle });
}

/** Both ends of every edge that belongs to one triangle only, and how many there are. */
function openEdges(
  mesh: TriangleMesh,
  middle: readonly [number, number, number],
): Pick<Picture, 'rims' | 'openEdges'> {
  const { mate } = pairEdges(mesh);
  let count = 0;
  for (let h = 0; h < mate.length; h++) if (mate[h] === OPEN) count++;
  const shown = Math.min(count, SHOWN_EDGES);
  const rims = new Float32Array(6 * shown);
  for (let h = 0, seen = 0, n = 0; n < rims.length; h++) {
    if (mate[h] !== OPEN) continue;
    // Of all edges `shown` are taken, spread evenly.
    const before = Math.floor((seen * shown) / count);
    if (Math.floor((++seen * shown) / count) === before) continue;
    for (const corner of [h, nextCorner(h)])
      for (let a = 0; a < 3; a++) rims[n++] = mesh.positions[3 * mesh.triangles[corner]! + a]! - middle[a]!;
  }
  return { rims, openEdges: count };
}
