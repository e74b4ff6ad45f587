import { describe, expect, it } from 'vitest';
import { firstHit, placeMesh, turnBack, turnUp, UP_AXES, type Vector } from '../../src/geometry';
import { expectClose } from '../support/close';
import { lcg } from '../support/lcg';
import { box, sphere } from '../support/shapes';

/** A box from (-10, -20, -30) to (10, 20, 30). */
const block = box([20, 40, 60], [-10, -20, -30]);

describe('where a ray first meets a box, by hand', () => {
  it.each<[string, Vector, Vector, Vector]>([
    ['down on its top', [3, 4, 100], [0, 0, -1], [3, 4, 30]],
    ['up at its bottom', [3, 4, -100], [0, 0, 2], [3, 4, -30]],
    ['from the front', [1, 100, 2], [0, -1, 0], [1, 20, 2]],
    ['aslant', [110, 0, 5], [-1, 0, 0], [10, 0, 5]],
    ['along the diagonal of a side, which two facets share', [0, 0, 100], [0, 0, -1], [0, 0, 30]],
    ['at a corner', [10, 20, 100], [0, 0, -1], [10, 20, 30]],
    ['from inside', [0, 0, 0], [1, 0, 0], [10, 0, 0]],
    ['from very far', [3, 4, 1e9], [0, 0, -1], [3, 4, 30]],
  ])('%s', (_, from, direction, at) => {
    const hit = firstHit(block, { from, direction });
    hit!.forEach((x, k) => expectClose(x - at[k]! + 1, 1, 1e-9, `coordinate ${k}`));
  });

  it.each<[string, Vector, Vector]>([
    ['beside it', [10.001, 0, 100], [0, 0, -1]],
    ['away from it', [0, 0, 100], [0, 0, 1]],
    ['along a side, just outside', [10.0001, 0, 100], [0, 0, -1]],
  ])('%s: none', (_, from, direction) => expect(firstHit(block, { from, direction })).toBeUndefined());

  it('past what does not count it looks on: below a plane at z = 0, the bottom from inside', () => {
    const hit = firstHit(block, { from: [3, 4, 100], direction: [0, 0, -1] }, ([, , z]) => z < 0);
    expect(hit).toEqual([3, 4, -30]);
  });
});

it('on a ball from anywhere: on the facets, between the ball and the ball within them', () => {
  const seed = 11;
  const random = lcg(seed);
  const [radius, rings] = [50, 64];
  const ball = sphere(radius, rings);
  // A facet dips below the ball by no more than 1 - cos(pi / rings) of the radius, twice over both ways (trigonometry).
  const lowest = radius * Math.cos(Math.PI / rings) ** 2;
  for (let n = 0; n < 200; n++) {
    const direction: Vector = [random() - 0.5, random() - 0.5, random() - 0.5];
    const far = 300 / Math.hypot(...direction);
    const from: Vector = [-far * direction[0], -far * direction[1], -far * direction[2]];
    const hit = firstHit(ball, { from, direction });
    const r = Math.hypot(...hit!);
    expect(r, `seed ${seed}, ray ${n}`).toBeGreaterThan(lowest - 1e-9);
    expect(r, `seed ${seed}, ray ${n}`).toBeLessThan(radius + 1e-9);
    // On the side of the eye.
    expect(hit!.reduce((sum, x, k) => sum + x * direction[k]!, 0)).toBeLessThan(0);
  }
});

it('a place turned up is where the mesh is placed, and turned back it is where it was, on every axis', () => {
  const at: Vector = [1, 2, 3];
  const mesh = { positions: Float64Array.from(at), triangles: Int32Array.from([0, 0, 0]) };
  for (const up of UP_AXES) {
    expect([...placeMesh(mesh, { up, mmPerUnit: 1 }).positions]).toEqual([...turnUp(at, up)]);
    expect(turnBack(turnUp(at, up), up)).toEqual(at);
  }
});
