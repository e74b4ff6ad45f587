// Shapes whose volume is a closed formula, as { points, faces } with faces of three or four corners, counted from 0, seen from outside
// counterclockwise.

/** A box with one corner at `at`. Volume: the product of its sides. */
export function box([a, b, c], [x, y, z] = [0, 0, 0]) {
  const points = [];
  for (const dz of [0, c])
    for (const [dx, dy] of [
      [0, 0],
      [a, 0],
      [a, b],
      [0, b],
    ])
      points.push([x + dx, y + dy, z + dz]);
  return {
    points,
    faces: [
      [0, 3, 2, 1],
      [4, 5, 6, 7],
      [0, 1, 5, 4],
      [1, 2, 6, 5],
      [2, 3, 7, 6],
      [3, 0, 4, 7],
    ],
  };
}

/** A wedge: half of the box with these sides. */
export function wedge([a, b, c]) {
  return {
    points: [
      [0, 0, 0],
      [a, 0, 0],
      [0, b, 0],
      [0, 0, c],
      [a, 0, c],
      [0, b, c],
    ],
    faces: [
      [0, 2, 1],
      [3, 4, 5],
      [0, 1, 4, 3],
      [1, 2, 5, 4],
      [2, 0, 3, 5],
    ],
  };
}

/** A prism over an L of arms 50 x 10 and 10 x 30 mm, its ends one face each. Volume: 800 times its height. */
export function bracket(height) {
  const plan = [
    [0, 0],
    [50, 0],
    [50, 10],
    [10, 10],
    [10, 40],
    [0, 40],
  ];
  const n = plan.length;
  return {
    points: [0, height].flatMap((z) => plan.map(([x, y]) => [x, y, z])),
    faces: [
      plan.map((_, i) => n - 1 - i),
      plan.map((_, i) => n + i),
      ...plan.map((_, i) => [i, (i + 1) % n, n + ((i + 1) % n), n + i]),
    ],
  };
}

/** Several shapes in one list. */
export function joined(...shapes) {
  const points = [];
  const faces = [];
  for (const shape of shapes) {
    faces.push(...shape.faces.map((face) => face.map((v) => v + points.length)));
    points.push(...shape.points);
  }
  return { points, faces };
}

export const turnedOver = ({ points, faces }) => ({ points, faces: faces.map((face) => face.toReversed()) });

/** Convex faces cut into a fan. */
export const triangles = ({ faces }) =>
  faces.flatMap((face) => face.slice(2).map((_, i) => [face[0], face[i + 1], face[i + 2]]));

/** Three points a triangle. */
export const soup = (shape) => triangles(shape).map((face) => face.map((v) => shape.points[v]));
