import { describe, expect, it } from 'vitest';
import { faceTriangles, outlineEnds } from '../../src/viewer/faceTriangles';

/** A square in the plane of an axis, counter-clockwise seen from its tip, or clockwise. */
function square(
  axis: 'x' | 'y' | 'z',
  half: number,
  middle: readonly [number, number],
  isVoid = false,
): Float64Array {
  const [u, v] = { x: [1, 2], y: [2, 0], z: [0, 1] }[axis] as [number, number];
  const k = { x: 0, y: 1, z: 2 }[axis];
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ];
  const points = (isVoid ? corners.reverse() : corners).flatMap(([a, b]) => {
    const at = [0, 0, 0];
    at[u] = middle[0] + half * a!;
    at[v] = middle[1] + half * b!;
    at[k] = 7;
    return at;
  });
  return Float64Array.from(points);
}

function areaOf({ positions: p, index }: ReturnType<typeof faceTriangles>): number {
  let area = 0;
  for (let t = 0; t < index.length; t += 3) {
    const [a, b, c] = [3 * index[t]!, 3 * index[t + 1]!, 3 * index[t + 2]!];
    const u = [0, 1, 2].map((k) => p[b + k]! - p[a + k]!);
    const v = [0, 1, 2].map((k) => p[c + k]! - p[a + k]!);
    area +=
      Math.hypot(
        u[1]! * v[2]! - u[2]! * v[1]!,
        u[2]! * v[0]! - u[0]! * v[2]!,
        u[0]! * v[1]! - u[1]! * v[0]!,
      ) / 2;
  }
  return area;
}

describe('a cut face is filled as large as it is', () => {
  it.each(['x', 'y', 'z'] as const)('across %s: a square of 20 with a void of 10 leaves 300', (axis) => {
    const face = faceTriangles(axis, [square(axis, 10, [5, 5]), square(axis, 5, [6, 4], true)]);
    expect(areaOf(face)).toBeCloseTo(300, 6);
  });

  it('a solid in a void in a solid, and another beside: each void belongs to the smallest solid around it', () => {
    const face = faceTriangles('z', [
      square('z', 20, [0, 0]),
      square('z', 10, [0, 0], true),
      square('z', 5, [0, 0]),
      square('z', 2, [0, 0], true),
      square('z', 3, [40, 0]),
    ]);
    expect(areaOf(face)).toBeCloseTo(1600 - 400 + 100 - 16 + 36, 6);
  });

  it('an end that repeats the beginning shifts nothing', () => {
    const open = square('y', 10, [0, 0]);
    const closed = Float64Array.from([...open, ...open.slice(0, 3)]);
    expect(areaOf(faceTriangles('y', [closed, square('y', 5, [0, 0], true)]))).toBeCloseTo(300, 6);
  });

  it('all of it lies in the plane', () => {
    const { positions } = faceTriangles('x', [square('x', 10, [0, 0])]);
    expect([...positions].filter((_, i) => i % 3 === 0)).toEqual([7, 7, 7, 7]);
  });
});

it('an outline is as many pieces as corners, and closes', () => {
  const ends = outlineEnds([square('z', 1, [0, 0])]);
  expect(ends).toHaveLength(4 * 6);
  expect([...ends.slice(-3)]).toEqual([...ends.slice(0, 3)]);
});
