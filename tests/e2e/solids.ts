/**
 * Two wavy balls of radius 80, their centers 100 apart, as a binary STL of about `triangles` facets: closed, mm. They overlap, so
 * the engine has to sum winding numbers along lines, which takes seconds for a scan as fine as this.
 */
export function twoBalls(triangles: number): Buffer {
  return binaryStl([...ball(triangles / 2, -50), ...ball(triangles / 2, 50)]);
}

function ball(triangles: number, atX: number): number[][] {
  const rows = Math.round(Math.sqrt(triangles / 4));
  const columns = 2 * rows;
  const point = (row: number, column: number): number[] => {
    const [theta, phi] = [(Math.PI * row) / rows, (2 * Math.PI * (column % columns)) / columns];
    const r = 80 + 2 * Math.sin(9 * theta) * Math.sin(theta) * Math.cos(8 * phi);
    return [
      atX + r * Math.sin(theta) * Math.cos(phi),
      r * Math.sin(theta) * Math.sin(phi),
      r * Math.cos(theta),
    ];
  };
  const facets: number[][] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const [a, b] = [point(row, column), point(row, column + 1)];
      const [c, d] = [point(row + 1, column), point(row + 1, column + 1)];
      if (row > 0) facets.push([...a, ...c, ...b]);
      if (row < rows - 1) facets.push([...b, ...c, ...d]);
    }
  }
  return facets;
}

/** A box with one corner at `at`, twelve facets that face out. */
export function boxFacets(size: readonly number[], at: readonly number[]): number[][] {
  const corner = (i: number): number[] => [0, 1, 2].map((k) => at[k]! + ((i >> k) & 1) * size[k]!);
  const quads = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ] as const;
  return quads.flatMap(([a, b, c, d]) => [
    [corner(a), corner(b), corner(c)].flat(),
    [corner(a), corner(c), corner(d)].flat(),
  ]);
}

/**
 * A block on its base, 80 mm tall, with an arm on each side whose end hangs down, as a binary STL: closed, one surface, mm. Poured with
 * its base up, each end keeps 20 x 10 x 40 mm of air. Planned in a tenth of the time that a scan takes.
 */
export function hookedBlock(): Buffer {
  const [xs, zs] = [
    [-45, -35, -20, 20, 35, 45],
    [0, 20, 40, 55, 80],
  ];
  // From below: the block alone, the ends of the arms, the arms, the block.
  const rows = ['..#..', '#.#.#', '#####', '..#..'];
  const isFilled = (i: number, k: number): boolean => rows[k]?.[i] === '#';
  const [front, back] = [-20, 20];
  const facets: number[][] = [];
  /** A face with its corners in turn, as seen from outside. */
  const face = (...[a, b, c, d]: number[][]): void => {
    facets.push([...a!, ...b!, ...c!], [...a!, ...c!, ...d!]);
  };
  for (let k = 0; k < rows.length; k++)
    for (let i = 0; i < xs.length - 1; i++) {
      if (!isFilled(i, k)) continue;
      const [x0, x1, z0, z1] = [xs[i]!, xs[i + 1]!, zs[k]!, zs[k + 1]!];
      face([x0, front, z0], [x1, front, z0], [x1, front, z1], [x0, front, z1]);
      face([x1, back, z0], [x0, back, z0], [x0, back, z1], [x1, back, z1]);
      if (!isFilled(i - 1, k)) face([x0, back, z0], [x0, front, z0], [x0, front, z1], [x0, back, z1]);
      if (!isFilled(i + 1, k)) face([x1, front, z0], [x1, back, z0], [x1, back, z1], [x1, front, z1]);
      if (!isFilled(i, k - 1)) face([x0, back, z0], [x1, back, z0], [x1, front, z0], [x0, front, z0]);
      if (!isFilled(i, k + 1)) face([x0, front, z1], [x1, front, z1], [x1, back, z1], [x0, back, z1]);
    }
  return binaryStl(facets);
}

/** Nine coordinates a facet; the poles must be written alike, which -0 and rounding could spoil: both are evened out. */
export function binaryStl(facets: readonly (readonly number[])[]): Buffer {
  const bytes = Buffer.alloc(84 + 50 * facets.length);
  bytes.writeUInt32LE(facets.length, 80);
  facets.forEach((facet, i) => {
    facet.forEach((x, k) => bytes.writeFloatLE(Math.round(x * 1e4) / 1e4 + 0, 84 + 50 * i + 12 + 4 * k));
  });
  return bytes;
}
