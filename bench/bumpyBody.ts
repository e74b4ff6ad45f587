/** A bumpy body of about 155 x 153 x 252 mm as a binary STL: rings of facets, the bumps a sum of sines. */
export function bumpyBodyStl(rings: number): Uint8Array {
  const points: number[][] = [];
  for (let i = 0; i <= rings; i++) points.push(ringOf(i / rings, rings));
  const bytes = new Uint8Array(84 + 50 * 2 * rings * (rings - 1));
  const view = new DataView(bytes.buffer);
  view.setUint32(80, 2 * rings * (rings - 1), true);
  let at = 84;
  const facet = (...corners: readonly (readonly [number, number])[]): void => {
    corners.forEach(([i, j], corner) => {
      for (let k = 0; k < 3; k++)
        view.setFloat32(at + 12 + 12 * corner + 4 * k, points[i]![3 * (j % rings) + k]!, true);
    });
    at += 50;
  };
  for (let i = 0; i < rings; i++) {
    for (let j = 0; j < rings; j++) {
      if (i < rings - 1) facet([i, i === 0 ? 0 : j], [i + 1, j], [i + 1, j + 1]);
      if (i > 0) facet([i, j], i < rings - 1 ? [i + 1, j + 1] : [rings, 0], [i, j + 1]);
    }
  }
  return bytes;
}

function ringOf(share: number, sides: number): number[] {
  const ring: number[] = [];
  const polar = Math.PI * share;
  for (let j = 0; j < sides; j++) {
    const turn = (2 * Math.PI * j) / sides;
    const [x, y, z] = [Math.sin(polar) * Math.cos(turn), Math.sin(polar) * Math.sin(turn), Math.cos(polar)];
    const r =
      1 +
      0.1 * Math.sin(3 * x + 1) * Math.cos(4 * y) +
      0.06 * Math.sin(7 * z + 2 * x) +
      0.04 * Math.sin(9 * y + 3 * z) * Math.sin(8 * x) +
      0.012 * Math.sin(31 * x) * Math.sin(29 * y + 1) * Math.sin(27 * z);
    ring.push(78 * r * x, 76 * r * y, 112 * r * z);
  }
  return ring;
}
