import { onBoard } from './board.mjs';
import { withoutBase } from './damage.mjs';
import { area, boundaryLoops, extents, loopArea, volume } from './measure.mjs';
import { meshField } from './mesh-field.mjs';
import { closedTruth, flipped, mapped, quantised, to } from './mesh-ops.mjs';
import { sphere } from './round-shapes.mjs';
import { seeded } from './seeded.mjs';
import { CORE, ROCK_REACH, rockField } from './singing-rock-field.mjs';
import { thinnestWall } from './wall.mjs';
import { obj } from './write-mesh.mjs';

const GRID_MM = 9;
const FINE_GRID_MM = 3;
const MM_PER_INCH = 25.4;
const BOARD = { sizeMm: [640, 500, 18], noiseMm: 0.2, seed: 20_250_714 };
const CORE_SHIFT_MM = [30, 0, 0];

/** The Singing Rock on its board, and the core that makes it hollow. */
export function singingRock() {
  const clean = cleanRock(GRID_MM);
  return [rockFile('singing-rock-scan.obj', clean), coreFile('singing-rock-core.obj', clean)];
}

/** The same scan on a finer grid: too large to keep, made on demand. */
export function fineRock() {
  return [rockFile('singing-rock-fine.obj', cleanRock(FINE_GRID_MM))];
}

/** Closed mesh of the rock on a grid of hMm; z up, mm. */
export function cleanRock(hMm) {
  const clean = meshField({ field: rockField, hMm, reach: ROCK_REACH });
  if (boundaryLoops(clean).length > 0) throw new Error('cleanRock: expected a closed mesh, got open edges');
  return clean;
}

// The board's surface joins the rock's in one sheet; all of it is then turned inside out and written in inches.
function rockFile(file, clean) {
  const scan = inInches(flipped(onBoard({ mesh: withoutBase(clean), ...BOARD, random: seeded(BOARD.seed) })));
  if (boundaryLoops(scan).length > 0) throw new Error('rockFile: expected a closed scan, got open edges');
  const [whole, written] = [inMm(scan), inMm(inInches(clean))];
  const side = withoutBase(written);
  const truth = {
    ...{ file, unit: 'inch', up: 'z' },
    ...closedTruth(written),
    triangles: whole.triangles.length / 3,
    extents_mm: extents(whole).map((e) => to(e, 4)),
    clean_extents_mm: extents(written).map((e) => to(e, 4)),
    rim_area_mm2: to(loopArea(side.points, boundaryLoops(side)[0]), 3),
    file_area_mm2: to(area(whole), 3),
    file_volume_mm3: to(volume(whole), 3),
    board: { top_mm: 0, noise_mm: BOARD.noiseMm, size_mm: BOARD.sizeMm },
  };
  return { file, bytes: text(`${file}, z up`, scan), truth };
}

function coreFile(file, clean) {
  const core = coreMesh();
  const rock = inMm(inInches(clean));
  const shifted = inInches(moved(core, CORE_SHIFT_MM));
  const analytic_volume_mm3 = to(
    (4 / 3) * Math.PI * CORE.semiAxesMm.reduce((product, r) => product * r, 1),
    3,
  );
  const truth = {
    ...{ file, unit: 'inch', up: 'z', ...closedTruth(inMm(shifted)) },
    ...{ analytic_volume_mm3, shift_mm: CORE_SHIFT_MM },
    cavity_mm3: to(volume(rock) - volume(inMm(shifted)), 3),
    side_wall: wallFigures(core, withoutBase(rock)),
  };
  return { file, bytes: text(`${file}, z up`, shifted), truth };
}

// A ball of small triangles drawn out to the core's half-axes.
function coreMesh() {
  const { centreMm, semiAxesMm } = CORE;
  const ball = sphere({ radiusMm: 100, frequency: 14 });
  return mapped(ball, (p) => p.map((c, a) => centreMm[a] + (c / 100) * semiAxesMm[a]));
}

// Least wall beside the core, where it belongs and where its file puts it.
function wallFigures(core, side) {
  const figures = (mesh) => {
    const outside = mesh.points.findIndex(
      (x, n) => n % 3 === 0 && rockField(x, ...mesh.points.slice(n + 1, n + 3)) >= 0,
    );
    if (outside >= 0)
      throw new Error(`wallFigures: expected the core inside the rock, got coordinate ${outside} out`);
    const { mm, at } = thinnestWall(mesh, side);
    return { mm: to(mm, 2), at_mm: at.map((c) => to(c, 1)) };
  };
  return { in_place: figures(core), shifted: figures(moved(core, CORE_SHIFT_MM)) };
}

const moved = (mesh, by) => mapped(mesh, (p) => p.map((c, a) => c + by[a]));
const inInches = (mesh) => quantised(mapped(mesh, (p) => p.map((c) => c / MM_PER_INCH)));
const inMm = (mesh) => mapped(mesh, (p) => p.map((c) => c * MM_PER_INCH));

function text(comment, { points, triangles }) {
  const faces = Array.from({ length: triangles.length / 3 }, (_, t) => triangles.slice(3 * t, 3 * t + 3));
  return obj(comment, { points, faces });
}
