import { gapBetween, speck, withHole, withNoise, withoutBase } from './damage.mjs';
import { area, boundaryLoops, extents, loopAcross, loopArea, pointAt, volume } from './measure.mjs';
import { meshField } from './mesh-field.mjs';
import { asFloat32, closedTruth, joined, mapped, quantised, to } from './mesh-ops.mjs';
import { TROLL_REACH, trollField } from './quay-troll-field.mjs';
import { seeded } from './seeded.mjs';
import { binaryStl } from './write-mesh.mjs';

const GRID_MM = 3.5;
const KEPT_GRID_MM = 5; // of the clean file that is kept: half as many triangles
const MM_PER_INCH = 25.4;
const NOISE = { seed: 20_250_611, amplitudeMm: 0.25 };
const HOLES = [
  { nearMm: [60, 8, 220], radiusMm: 2.9 }, // outside the root of each horn
  { nearMm: [-60, 8, 220], radiusMm: 2.9 },
  { nearMm: [0, 86, 86], radiusMm: 2.6 }, // back wall of the mouth
];
const SPECKS = [
  { nearMm: [78, 0, 205], gapMm: 12, halfAxesMm: [5, 4, 3], kind: 'octahedron' },
  { nearMm: [-62, 70, 120], gapMm: 7, halfAxesMm: [3, 3, 3], kind: 'tetrahedron' },
  { nearMm: [12, 80, 210], gapMm: 16, halfAxesMm: [6, 5, 5], kind: 'octahedron' },
  { nearMm: [-50, -62, 200], gapMm: 9, halfAxesMm: [4, 6, 3], kind: 'octahedron' },
  { nearMm: [42, -40, 40], gapMm: 14, halfAxesMm: [7, 6, 7], kind: 'tetrahedron' },
  { nearMm: [34, 100, 135], gapMm: 6, halfAxesMm: [3, 4, 3], kind: 'octahedron' },
];

/** The Quay Troll's head: a clean closed mesh, and the scan, made from a finer one. */
export function quayTroll() {
  return [cleanFile('quay-troll-clean.stl', KEPT_GRID_MM), scanFile(cleanTroll(GRID_MM))];
}

/** The very mesh the scan was made from: too large to keep, made on demand. */
export function fineTroll() {
  return [cleanFile('quay-troll-fine.stl', GRID_MM)];
}

/** Closed mesh of the head on a grid of hMm; z up, mm. Finer grids show how far off the volume is. */
export function cleanTroll(hMm) {
  const clean = quantised(meshField({ field: trollField, hMm, reach: TROLL_REACH }));
  if (boundaryLoops(clean).length > 0) throw new Error('cleanTroll: expected a closed mesh, got open edges');
  return clean;
}

function cleanFile(file, gridMm) {
  const clean = cleanTroll(gridMm);
  const written = asFloat32(clean);
  const rim_area_mm2 = to(rimArea(withoutBase(written)), 3);
  const truth = { file, unit: 'mm', up: 'z', ...closedTruth(written), rim_area_mm2 };
  return { file, bytes: binaryStl('Quay Troll head, clean, mm, z up', clean), truth };
}

function scanFile(clean) {
  const noisy = quantised(withNoise({ mesh: clean, random: seeded(NOISE.seed), ...NOISE }));
  const body = HOLES.reduce((mesh, hole) => withHole({ mesh, ...hole }), withoutBase(noisy));
  const lumps = SPECKS.map((one) => quantised(speck({ mesh: body, ...one })));
  const file = 'quay-troll-scan.stl';
  const scan = toInchesYUp(joined([body, ...lumps]));
  const truth = {
    ...{ file, unit: 'inch', up: 'y' },
    ...cleanFigures(clean, scan),
    noisy_closed_volume_mm3: to(volume(noisy), 3),
    ...openings(body),
    ...speckFigures(lumps, body),
  };
  return { file, bytes: binaryStl('Quay Troll head, scan; unit not stated', scan), truth };
}

// Volume and area of the clean mesh the scan stands for; triangles and extents of the file itself, in mm.
function cleanFigures(clean, scan) {
  const inMm = mapped(asFloat32(scan), (p) => p.map((c) => c * MM_PER_INCH));
  return {
    ...closedTruth(asFloat32(clean)),
    triangles: scan.triangles.length / 3,
    extents_mm: extents(inMm).map((e) => to(e, 4)),
    file_area_mm2: to(area(inMm), 3),
  };
}

// A quarter turn about x, (x, y, z) -> (x, z, -y): a rotation, not a mirror. The + 0 keeps -0 out.
function toInchesYUp(mesh) {
  return mapped(mesh, ([x, y, z]) => [x, z, -y].map((c) => c / MM_PER_INCH + 0));
}

function openings(body) {
  const loops = boundaryLoops(body);
  if (loops.length !== HOLES.length + 1) throw new Error(`openings: expected 4 loops, got ${loops.length}`);
  const holes = loops
    .filter((loop) => !isRim(body, loop))
    .map((loop) => ({
      at_mm: centreOf(loop.map((v) => pointAt(body.points, v))),
      across_mm: to(loopAcross(body.points, loop), 2),
      area_mm2: to(loopArea(body.points, loop), 2),
      edges: loop.length,
    }));
  return { rim_area_mm2: to(rimArea(body), 3), holes };
}

function speckFigures(lumps, body) {
  const plain = extents(body);
  if (extents(joined([body, ...lumps])).some((e, a) => e !== plain[a])) {
    throw new Error('speckFigures: expected the specks inside the extents of the head');
  }
  const specks = lumps.map((lump) => ({
    at_mm: centreOf(Array.from({ length: lump.points.length / 3 }, (_, v) => pointAt(lump.points, v))),
    gap_mm: to(gapBetween(lump, body), 2),
    volume_mm3: to(volume(lump), 3),
  }));
  const outOfReach = specks.find(({ gap_mm }) => gap_mm < 5 || gap_mm > 20);
  if (outOfReach) throw new Error(`speckFigures: expected gaps of 5-20 mm, got ${outOfReach.gap_mm}`);
  return {
    specks,
    speck_volume_mm3: to(
      lumps.reduce((sum, lump) => sum + volume(lump), 0),
      3,
    ),
  };
}

function rimArea(open) {
  return loopArea(
    open.points,
    boundaryLoops(open).find((loop) => isRim(open, loop)),
  );
}

function isRim(mesh, loop) {
  return loop.every((v) => mesh.points[3 * v + 2] === 0);
}

function centreOf(corners) {
  return [0, 1, 2].map((a) => to(corners.reduce((sum, p) => sum + p[a], 0) / corners.length, 2));
}
