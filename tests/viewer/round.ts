import type { Drawable } from '../../src/viewer/drawable';

/** A ball around the middle of the picture; its poles are single points. */
export function roundPicture(radius: number, rows = 40): Drawable {
  const columns = 2 * rows;
  const positions: number[] = [0, 0, radius];
  for (let i = 1; i < rows; i++)
    for (let j = 0; j < columns; j++) {
      const [down, around] = [(Math.PI * i) / rows, (2 * Math.PI * j) / columns];
      positions.push(
        radius * Math.sin(down) * Math.cos(around),
        radius * Math.sin(down) * Math.sin(around),
        radius * Math.cos(down),
      );
    }
  positions.push(0, 0, -radius);
  const last = positions.length / 3 - 1;
  const at = (i: number, j: number): number =>
    i === 0 ? 0 : i === rows ? last : 1 + (i - 1) * columns + (j % columns);
  const index: number[] = [];
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < columns; j++) {
      if (i > 0) index.push(at(i, j), at(i + 1, j), at(i, j + 1));
      if (i < rows - 1) index.push(at(i, j + 1), at(i + 1, j), at(i + 1, j + 1));
    }
  return {
    positions: Float32Array.from(positions),
    normals: Float32Array.from(positions, (c) => c / radius),
    index: Uint32Array.from(index),
    rims: new Float32Array(0),
    halfUnits: [radius, radius, radius],
    triangles: index.length / 3,
    shownTriangles: index.length / 3,
  };
}
