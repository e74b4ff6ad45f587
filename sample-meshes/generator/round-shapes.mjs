import { cross, dot, minus } from './measure.mjs';

/**
 * Sphere about 0 from an icosahedron, each face cut into frequency^2 triangles and its points pushed out to
 * radiusMm: 20 frequency^2 triangles, all vertices on the true sphere, no poles.
 */
export function sphere({ radiusMm, frequency }) {
  const mesh = { points: [], triangles: [] };
  const index = new Map();
  for (const [a, b, c] of icosahedronFaces()) {
    const at = (i, j) => {
      const k = frequency - i - j;
      return vertex(
        mesh,
        index,
        onSphere(
          [0, 1, 2].map((n) => a[n] * k + b[n] * i + c[n] * j),
          radiusMm,
        ),
      );
    };
    for (let i = 0; i < frequency; i += 1) {
      for (let j = 0; j < frequency - i; j += 1) {
        mesh.triangles.push(at(i, j), at(i + 1, j), at(i, j + 1));
        if (i + j + 1 < frequency) mesh.triangles.push(at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
      }
    }
  }
  return mesh;
}

/** Capsule about 0 along z: a cylinder part of the given length and two half spheres. */
export function capsule({ radiusMm, cylinderMm, segments, capRings, cylinderRings }) {
  const profile = [];
  for (let n = 0; n <= capRings; n += 1) {
    const angle = ((n / capRings - 1) * Math.PI) / 2;
    profile.push([n === 0 ? 0 : radiusMm * Math.cos(angle), radiusMm * Math.sin(angle) - cylinderMm / 2]);
  }
  for (let n = 1; n < cylinderRings; n += 1) profile.push([radiusMm, (n / cylinderRings - 0.5) * cylinderMm]);
  for (let n = capRings; n >= 0; n -= 1) profile.push([profile[n][0], -profile[n][1]]);
  return revolve({ profile, segments });
}

/** Torus about 0 round the z axis. */
export function torus({ ringMm, tubeMm, segments, tubeSegments }) {
  const profile = [];
  for (let n = 0; n <= tubeSegments; n += 1) {
    const angle = (2 * Math.PI * (n % tubeSegments)) / tubeSegments;
    profile.push([ringMm + tubeMm * Math.cos(angle), tubeMm * Math.sin(angle)]);
  }
  return revolve({ profile, segments });
}

// Profile of [radius, z] turned about z; outward when the solid lies to the left of the profile's way.
function revolve({ profile, segments }) {
  const mesh = { points: [], triangles: [] };
  const index = new Map();
  const at = ([r, z], n) => {
    const angle = (2 * Math.PI * (n % segments)) / segments;
    return vertex(mesh, index, [r * Math.cos(angle), r * Math.sin(angle), z]);
  };
  for (let m = 0; m + 1 < profile.length; m += 1) {
    for (let n = 0; n < segments; n += 1) {
      const [low, high] = [profile[m], profile[m + 1]];
      const [a, b, c, d] = [at(low, n), at(low, n + 1), at(high, n + 1), at(high, n)];
      if (low[0] > 0) mesh.triangles.push(a, b, c);
      if (high[0] > 0) mesh.triangles.push(a, c, d);
    }
  }
  return mesh;
}

// The index of a point; points closer than about 1e-5 mm are one.
function vertex(mesh, index, p) {
  const key = p.map((c) => Math.round(c * 1e5) + 0).join();
  if (!index.has(key)) {
    index.set(key, mesh.points.length / 3);
    mesh.points.push(...p);
  }
  return index.get(key);
}

// Corners (0, +-1, +-g) and their cyclic shifts, g the golden ratio; faces are the triples 2 apart.
function icosahedronFaces() {
  const g = (1 + Math.sqrt(5)) / 2;
  const corners = [-1, 1].flatMap((s) =>
    [-g, g].flatMap((t) => [
      [0, s, t],
      [t, 0, s],
      [s, t, 0],
    ]),
  );
  const near = (p, q) => Math.abs(dot(minus(p, q), minus(p, q)) - 4) < 1e-9;
  return corners.flatMap((a, i) =>
    corners.slice(i + 1).flatMap((b, j) =>
      corners.slice(i + j + 2).flatMap((c) => {
        if (!near(a, b) || !near(b, c) || !near(c, a)) return [];
        return [dot(a, cross(b, c)) > 0 ? [a, b, c] : [a, c, b]];
      }),
    ),
  );
}

function onSphere(p, radiusMm) {
  const size = Math.sqrt(dot(p, p));
  return p.map((c) => (c / size) * radiusMm);
}
