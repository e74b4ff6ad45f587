import type { TriangleMesh } from '../../src/geometry';
import { direction, upTo, type Random } from './draws';
import { between } from './lcg';
import { mapPoints } from './meshTools';
import { box, capsuleOutline, icosphere, revolve, torus, type Vec3 } from './shapes';
import { angleBody, ballPair, hollowBody } from './trueBodies';
import { convexBody, hullMesh, smoothBody, type TrueBody } from './trueOffsets';

/** Random bodies whose offsets are known. */

type Maker = (size: number, random: Random) => TrueBody;

/** By name: a body `size` mm across or a little less. */
const MAKERS = {
  box: (size, random) =>
    convexBody(box([size, size * between(random, 0.3, 1), size * between(random, 0.3, 1)])),
  ball: (size, random) => convexBody(icosphere(size / 2, upTo(random, 1, 4))),
  cylinder: (size, random) => {
    const r = size * between(random, 0.2, 0.5);
    return convexBody(
      revolve(
        [
          [0, 0],
          [r, 0],
          [r, size],
          [0, size],
        ],
        upTo(random, 8, 120),
      ),
    );
  },
  cone: (size, random) => {
    const [r, top] = [size / 2, random() < 0.5 ? 0 : between(random, 0.05, 0.4) * size];
    const sides = upTo(random, 8, 96);
    return convexBody(
      revolve(
        top === 0
          ? [
              [0, 0],
              [r, 0],
              [0, size],
            ]
          : [
              [0, 0],
              [r, 0],
              [top, size],
              [0, size],
            ],
        sides,
      ),
    );
  },
  capsule: (size, random) => {
    const r = size * between(random, 0.15, 0.35);
    const rings = 2 * upTo(random, 6, 24);
    return convexBody(revolve(capsuleOutline(r, size - 2 * r, rings), 2 * rings));
  },
  hull: (size, random) => convexBody(hullMesh(pointsInBall(size / 2, upTo(random, 12, 80), random))),
  torus: (size, random) => {
    const tube = size * between(random, 0.08, 0.18);
    const sides = 240;
    return smoothBody(torus(size / 2 - tube, tube, sides, sides / 2), 0);
  },
  'two balls': (size, random) => {
    const [a, b] = [0.32 * size, 0.32 * size * between(random, 0.7, 1)];
    const apart = between(random, 0.55, 0.85) * (a + b);
    return ballPair(icosphere(a, 5), icosphere(b, 5), apart);
  },
  'hollow ball': (size, random) => {
    const [outer, inner] = [size / 2, (size / 2) * between(random, 0.3, 0.8)];
    const off = between(random, 0, 0.4) * (outer - inner);
    // The corners of the void stand nearer to the faces of the ball than its radius says.
    return hollowBody(icosphere(outer, 4), icosphere(inner, 3), 0.98 * (outer - inner - off), [off, 0, 0]);
  },
  angle: (size, random) => {
    const deep = size * between(random, 0.5, 1);
    return angleBody({
      wide: size,
      deep,
      tall: size * between(random, 0.3, 1),
      arm: deep * between(random, 0.25, 0.6),
    });
  },
  bumpy: (size, random) => smoothBody(bumpy(size / 2, random), 2),
} satisfies Record<string, Maker>;
export type Shape = keyof typeof MAKERS;
export const SHAPES = Object.keys(MAKERS) as Shape[];

export const bodyAtRandom = (shape: Shape, size: number, random: Random): TrueBody =>
  MAKERS[shape](size, random);

function pointsInBall(radius: number, count: number, random: Random): Vec3[] {
  return Array.from({ length: count }, (): Vec3 => {
    const u = direction(random);
    const r = radius * between(random, 0.7, 1);
    return [r * u[0], r * u[1], r * u[2]];
  });
}

/** A ball with three smooth waves over it, 20 480 triangles. */
function bumpy(radius: number, random: Random): TriangleMesh {
  const waves = [0, 1, 2].map(() => {
    const u = direction(random);
    const turns = between(random, 2, 4);
    return {
      at: u.map((x) => x * turns),
      phase: between(random, 0, 2 * Math.PI),
      high: between(random, 0.03, 0.08),
    };
  });
  return mapPoints(icosphere(radius, 5), (p) => {
    const along = (at: readonly number[]): number => (at[0]! * p[0] + at[1]! * p[1] + at[2]! * p[2]) / radius;
    const r = waves.reduce((sum, { at, phase, high }) => sum + high * Math.sin(along(at) + phase), 0.85);
    return [r * p[0], r * p[1], r * p[2]];
  });
}
