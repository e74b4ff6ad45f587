import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close';
import { measured } from '../support/measured';
import { box } from '../support/shapes';

describe('a fin on an edge of a box: a facet that shares the edge with the two of the box', () => {
  const whole = box([40, 30, 20]);
  const positions = Float64Array.from([...whole.positions, -10, -10, 10]);
  const fin = [0, 4, 8];

  it.each([
    ['first', 'one way', [...fin, ...whole.triangles]],
    ['first', 'the other way', [...[...fin].reverse(), ...whole.triangles]],
    ['last', 'one way', [...whole.triangles, ...fin]],
    ['last', 'the other way', [...whole.triangles, ...[...fin].reverse()]],
  ])('it comes %s, wound %s: 40 x 30 x 20, and only the fin is open', (_, __, triangles) => {
    const solid = measured({ positions, triangles: Int32Array.from(triangles) });
    expectClose(solid.volumeMm3, 24000, 1e-12, 'volume');
    expect(solid.closed).toBe(true);
  });
});
