import { describe, expect, it } from 'vitest';
import { weldPoints, weldSoup } from '../../../src/geometry';
import { between, lcg } from '../../support/lcg';
import { icosphere, sphere } from '../../support/shapes';

const SEED = 31;

describe('corners with the same bits become one vertex', () => {
  it('-0 and +0 are the same place', () => {
    for (const list of [
      Float32Array.of(0, -0, 1, -0, 0, 1, 0, 0, 1),
      Float64Array.of(0, -0, 1, -0, 0, 1, 0, 0, 1),
    ]) {
      const { positions, index } = weldPoints(list);
      expect([...index]).toEqual([0, 0, 0]);
      expect([...positions]).toEqual([0, 0, 1]);
    }
  });

  it('neighbors in the last bit stay apart', () => {
    expect(weldPoints(Float64Array.of(1, 2, 3, 1 + Number.EPSILON, 2, 3)).positions.length).toBe(6);
    expect(weldPoints(Float32Array.of(1, 2, 3, Math.fround(1 + 2 ** -23), 2, 3)).positions.length).toBe(6);
  });

  it.each([
    ['float32', Float32Array],
    ['float64', Float64Array],
  ] as const)(
    `50 000 corners of 9 000 places in %s, seed ${SEED}: the same partition as a Map of strings`,
    (_, List) => {
      const random = lcg(SEED);
      const places = Array.from({ length: 9000 }, () => [0, 1, 2].map(() => between(random, -100, 100)));
      const soup = new List(3 * 50_000);
      for (let i = 0; i < soup.length; i += 3) soup.set(places[Math.floor(between(random, 0, 9000))]!, i);
      const { positions, index } = weldPoints(soup);
      const byText = new Map<string, number>();
      for (let c = 0; c < index.length; c++) {
        const key = [...soup.subarray(3 * c, 3 * c + 3)].join(' ');
        const known = byText.get(key);
        if (known === undefined) byText.set(key, index[c]!);
        else expect(index[c]).toBe(known);
        for (let k = 0; k < 3; k++)
          if (positions[3 * index[c]! + k] !== soup[3 * c + k]) throw new Error(`corner ${c} moved`);
      }
      expect(positions.length / 3).toBe(byText.size);
    },
  );

  it.each([
    ['ball of poles and rings', sphere(50, 40)],
    ['icosphere', icosphere(50, 4)],
  ])('%s: Euler counts V - E + F = 2 after taking it apart and welding it', (_, mesh) => {
    const soup = new Float64Array(3 * mesh.triangles.length);
    mesh.triangles.forEach((v, c) => soup.set(mesh.positions.subarray(3 * v, 3 * v + 3), 3 * c));
    const welded = weldSoup(soup);
    const faces = welded.triangles.length / 3;
    expect(welded.positions.length / 3 - (3 * faces) / 2 + faces).toBe(2);
  });
});
