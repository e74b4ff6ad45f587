import { boxQuads, triangulated } from './box-shape.mjs';
import { area, pointAt, volume } from './measure.mjs';
import { asFloat32, closedTruth, flipped, joined, mapped, quantised, to } from './mesh-ops.mjs';
import { capsule, sphere, torus } from './round-shapes.mjs';
import { asciiStl, binaryStl, obj } from './write-mesh.mjs';

const { PI } = Math;

/** Sphere, radius 50 mm. Volume 4/3 pi r^3. */
export function sphere50() {
  return binary('sphere-r50.stl', sphere({ radiusMm: 50, frequency: 16 }), ballVolume(50));
}

/** Capsule, radius 20 mm, cylinder part 60 mm. Volume pi r^2 L + 4/3 pi r^3. */
export function capsule20() {
  const mesh = capsule({ radiusMm: 20, cylinderMm: 60, segments: 64, capRings: 16, cylinderRings: 12 });
  return binary('capsule-r20-l60.stl', mesh, PI * 20 ** 2 * 60 + ballVolume(20));
}

/** Torus, ring radius 50 mm, tube radius 12 mm. Volume 2 pi^2 R r^2. */
export function torus50() {
  const mesh = torus({ ringMm: 50, tubeMm: 12, segments: 96, tubeSegments: 28 });
  return binary('torus-r50-r12.stl', mesh, 2 * PI ** 2 * 50 * 12 ** 2);
}

/** Hollow sphere, 50 mm outside, 44 mm inside, the inner shell facing into the hollow. */
export function hollow50() {
  const inner = flipped(sphere({ radiusMm: 44, frequency: 12 }));
  const mesh = joined([sphere({ radiusMm: 50, frequency: 12 }), inner]);
  return binary('hollow-sphere-50-44.stl', mesh, ballVolume(50) - ballVolume(44));
}

/**
 * Two spheres, radius 40 mm, centres 50 mm apart, each a whole closed shell. The truth is the union.
 * Analytic: 2 balls less the lens pi (4 r + d)(2 r - d)^2 / 12. Faceted: the second sphere is the mirror
 * image of the first in x = 0 and both are convex and symmetric, so the union is twice the part of one at
 * x < 0.
 */
export function twin40() {
  const left = mapped(quantised(sphere({ radiusMm: 40, frequency: 12 })), ([x, y, z]) => [x - 25, y, z]);
  const right = mapped(flipped(left), ([x, y, z]) => [-x + 0, y, z]);
  const lens = (PI * (4 * 40 + 50) * (2 * 40 - 50) ** 2) / 12;
  const [sample] = binary('twin-spheres-r40-d50.stl', joined([left, right]), 2 * ballVolume(40) - lens);
  const half = leftOfZero(asFloat32(quantised(left)));
  const union = { clean_volume_mm3: to(2 * volume(half), 3), area_mm2: to(2 * area(half), 3) };
  const shells_volume_mm3 = sample.truth.clean_volume_mm3;
  return [{ ...sample, truth: { ...sample.truth, ...union, shells_volume_mm3 } }];
}

/** Box 60 x 50 x 40 mm with a closed void 30 x 20 x 10 mm, off centre. Exact. */
export function boxWithVoid() {
  const outer = triangulated(boxQuads({ cornerMm: [0, 0, 0], sizeMm: [60, 50, 40] }));
  const hollow = triangulated(boxQuads({ cornerMm: [20, 10, 25], sizeMm: [30, 20, 10] }));
  return binary('box-with-void.stl', joined([outer, flipped(hollow)]), 60 * 50 * 40 - 30 * 20 * 10);
}

/** Box 40 x 30 x 20 mm as ASCII STL and, in six quads, as OBJ. Exact. */
export function boxInText() {
  const quads = boxQuads({ cornerMm: [0, 0, 0], sizeMm: [40, 30, 20] });
  const mesh = triangulated(quads);
  const entry = (file, bytes) => {
    const truth = { file, unit: 'mm', up: 'z', ...closedTruth(mesh), analytic_volume_mm3: 40 * 30 * 20 };
    return { file, bytes, truth };
  };
  return [
    entry('box-40x30x20-ascii.stl', asciiStl('box 40 x 30 x 20 mm', mesh)),
    entry('box-40x30x20-quads.obj', obj('box 40 x 30 x 20 mm, six quads, z up', quads)),
  ];
}

function binary(file, rawMesh, analyticMm3) {
  const mesh = quantised(rawMesh);
  const figures = { ...closedTruth(asFloat32(mesh)), analytic_volume_mm3: to(analyticMm3, 3) };
  const truth = { file, unit: 'mm', up: 'z', ...figures };
  return [{ file, bytes: binaryStl(`${file}, mm, z up`, mesh), truth }];
}

function ballVolume(radiusMm) {
  return (4 / 3) * PI * radiusMm ** 3;
}

// The part of a mesh at x <= 0, left open at x = 0: a cap there would add nothing to a volume about 0.
function leftOfZero({ points, triangles }) {
  const out = { points: [], triangles: [] };
  for (let t = 0; t < triangles.length; t += 3) {
    const polygon = clipped(triangles.slice(t, t + 3).map((v) => pointAt(points, v)));
    const first = out.points.length / 3;
    out.points.push(...polygon.flat());
    for (let n = 1; n + 1 < polygon.length; n += 1) out.triangles.push(first, first + n, first + n + 1);
  }
  return out;
}

function clipped(polygon) {
  return polygon.flatMap((p, n) => {
    const q = polygon[(n + 1) % polygon.length];
    const t = p[0] / (p[0] - q[0]);
    const cut = p[0] < 0 !== q[0] < 0 ? [p.map((c, a) => c + t * (q[a] - c))] : [];
    return p[0] < 0 ? [p, ...cut] : cut;
  });
}
