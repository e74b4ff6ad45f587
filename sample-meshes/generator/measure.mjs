/** Measures of triangle meshes {points, triangles}: float64 sums over the vertices as given. */

/** Signed volume by the divergence theorem, unit of the points cubed; positive when outward and closed. */
export function volume({ points, triangles }) {
  let six = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = corners(points, triangles, t);
    six += dot(a, cross(b, c));
  }
  return six / 6;
}

/** Sum of the triangle areas. */
export function area({ points, triangles }) {
  let twice = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = corners(points, triangles, t);
    const n = cross(minus(b, a), minus(c, a));
    twice += Math.sqrt(dot(n, n));
  }
  return twice / 2;
}

/** [dx, dy, dz] of the used vertices. */
export function extents({ points, triangles }) {
  const [low, high] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  for (const v of triangles) {
    for (let a = 0; a < 3; a += 1) {
      low[a] = Math.min(low[a], points[3 * v + a]);
      high[a] = Math.max(high[a], points[3 * v + a]);
    }
  }
  return high.map((h, a) => h - low[a]);
}

/** Boundary loops as vertex lists; throws where an edge or a boundary vertex is not simple. */
export function boundaryLoops({ triangles }) {
  const open = openEdges(triangles);
  const next = new Map();
  for (const [from, to] of open) {
    if (next.has(from)) throw new Error(`boundaryLoops: expected simple loops, got vertex ${from} twice`);
    next.set(from, to);
  }
  const loops = [];
  while (next.size > 0) {
    const loop = [];
    let v = next.keys().next().value;
    while (next.has(v)) {
      loop.push(v);
      const following = next.get(v);
      next.delete(v);
      v = following;
    }
    loops.push(loop);
  }
  return loops;
}

/** Area enclosed by a loop: half the length of the sum of cross products (exact if the loop is flat). */
export function loopArea(points, loop) {
  const sum = [0, 0, 0];
  loop.forEach((v, n) => {
    const c = cross(pointAt(points, v), pointAt(points, loop[(n + 1) % loop.length]));
    for (let a = 0; a < 3; a += 1) sum[a] += c[a];
  });
  return Math.sqrt(dot(sum, sum)) / 2;
}

/** Largest distance between two vertices of a loop. */
export function loopAcross(points, loop) {
  let most = 0;
  for (const v of loop) {
    for (const w of loop) {
      const d = minus(pointAt(points, v), pointAt(points, w));
      most = Math.max(most, Math.sqrt(dot(d, d)));
    }
  }
  return most;
}

/** Area-weighted vertex normals, flat xyz, unit length. */
export function vertexNormals({ points, triangles }) {
  const normals = new Float64Array(points.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = corners(points, triangles, t);
    const n = cross(minus(b, a), minus(c, a));
    for (let m = t; m < t + 3; m += 1) {
      for (let k = 0; k < 3; k += 1) normals[3 * triangles[m] + k] += n[k];
    }
  }
  for (let v = 0; v < normals.length; v += 3) {
    const len = Math.sqrt(dot(normals.slice(v, v + 3), normals.slice(v, v + 3)));
    for (let k = 0; k < 3; k += 1) normals[v + k] /= len || 1;
  }
  return normals;
}

export function pointAt(points, v) {
  return [points[3 * v], points[3 * v + 1], points[3 * v + 2]];
}

export function cross(a, b) {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function minus(a, b) {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function dot(a, b) {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function corners(points, triangles, t) {
  return [0, 1, 2].map((n) => pointAt(points, triangles[t + n]));
}

// Directed edges without their reverse. The same directed edge twice is not a manifold.
function openEdges(triangles) {
  const edges = new Map();
  for (let t = 0; t < triangles.length; t += 3) {
    for (let n = 0; n < 3; n += 1) {
      const [from, to] = [triangles[t + n], triangles[t + ((n + 1) % 3)]];
      const key = from * 2 ** 26 + to;
      if (edges.has(key)) throw new Error(`openEdges: expected a manifold, got edge ${from}-${to} twice`);
      edges.set(key, [from, to]);
    }
  }
  return [...edges.values()].filter(([from, to]) => !edges.has(to * 2 ** 26 + from));
}
