import { area, extents, volume } from './measure.mjs';

/**
 * Rounds all coordinates to 1e-4 mm, alike on both sides of 0 and never to -0. This hides the last bits,
 * where sin and cos may differ between machines, and lets readers weld by equal bits.
 */
export function quantised(mesh) {
  const round = (v) => (v < 0 ? -1 : 1) * (Math.round(Math.abs(v) * 1e4) / 1e4) + 0;
  return { ...mesh, points: mesh.points.map(round) };
}

/** The mesh with its coordinates as a binary STL holds them: float32. */
export function asFloat32(mesh) {
  return { ...mesh, points: mesh.points.map(Math.fround) };
}

/** Several meshes as one triangle list, shells kept apart. */
export function joined(meshes) {
  const [points, triangles] = [[], []];
  for (const mesh of meshes) {
    const first = points.length / 3;
    for (const c of mesh.points) points.push(c);
    for (const v of mesh.triangles) triangles.push(first + v);
  }
  return { points, triangles };
}

/** The same surface facing the other way. */
export function flipped({ points, triangles }) {
  return { points, triangles: triangles.map((_, n) => triangles[n - (n % 3) + 2 - (n % 3)]) };
}

/** Every point through f([x, y, z]). */
export function mapped(mesh, f) {
  const points = [];
  for (let v = 0; v < mesh.points.length; v += 3) points.push(...f(mesh.points.slice(v, v + 3)));
  return { ...mesh, points };
}

/** The figures every truth.json entry has; mesh in mm, closed, coordinates as written. */
export function closedTruth(mesh) {
  return {
    triangles: mesh.triangles.length / 3,
    clean_volume_mm3: to(volume(mesh), 3),
    area_mm2: to(area(mesh), 3),
    extents_mm: extents(mesh).map((e) => to(e, 4)),
  };
}

/** Rounded to the given decimals, for the record only. */
export function to(v, decimals) {
  return Math.round(v * 10 ** decimals) / 10 ** decimals;
}
