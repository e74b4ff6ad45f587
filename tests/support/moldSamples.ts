import { boundsOf, placeMesh, type TriangleMesh } from '../../src/geometry';
import { sampleScan } from './samples';
import { ballOn, domeOn, mushroomOn, ring } from './moldShapes';
import { box } from './shapes';
import { moved, trianglesOf, turned, withTriangles } from './meshTools';

/** Sculpts in mm, up is up. Each is made once: fields are kept by mesh. */

/** The damaged head, inches and y up: holes, specks, an open neck (sample-meshes/README.md). */
export const TROLL = placeMesh(sampleScan('quay-troll-scan.stl').mesh, { up: '+y', mmPerUnit: 25.4 });
export const CLEAN_TROLL = sampleScan('quay-troll-clean.stl').mesh;
/** Fingers, overlapping shells and flipped facets. */
export const HAND = sampleScan('lighthouse-hand-scan.stl').mesh;

/** The hand as a scanner leaves it: nothing below the wrist, its edge as jagged as its facets are. */
const OPEN_HAND: TriangleMesh = withoutFoot(HAND, 40);

export const BALL = ballOn(50);
export const DOME = domeOn(50);
export const MUSHROOM = mushroomOn();
/** On edge: it stands on the board and must leave it there. */
export const RING = ring(40, 10);
export const BOX: TriangleMesh = box([60, 40, 50]);
export const TILTED_BOX = moved(turned(box([60, 40, 50]), [0.9, 0.2, 0.3, 0.25]), [5, -9, 31]);

export const SCULPTS: readonly (readonly [name: string, mesh: TriangleMesh])[] = [
  ['ball', BALL],
  ['mushroom', MUSHROOM],
  ['ring', RING],
  ['box', BOX],
  ['dome', DOME],
  ['damaged troll scan', TROLL],
  ['hand scan with overlaps', HAND],
  ['hand scan, open at the wrist', OPEN_HAND],
];

/** Without the facets that reach below `mm` over the lowest point. */
function withoutFoot(mesh: TriangleMesh, mm: number): TriangleMesh {
  const from = boundsOf(mesh).min[2] + mm;
  const isOver = (v: number): boolean => mesh.positions[3 * v + 2]! >= from;
  return withTriangles(
    mesh,
    trianglesOf(mesh).filter((corners) => corners.every(isOver)),
  );
}
