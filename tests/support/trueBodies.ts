import type { TriangleMesh } from '../../src/geometry';
import { joined, moved, reversed } from './meshTools';
import type { Vec3 } from './shapes';
import { convexBody, smoothBody, type TrueBody } from './trueOffsets';

/** Bodies with creases and voids whose offsets have closed forms of their own (derived here, elementary geometry). */

/** A ball with a ball-shaped void in it, both convex polyhedra about their middles; the void's at `at`. */
export function hollowBody(outer: TriangleMesh, inner: TriangleMesh, wallMm: number, at: Vec3): TrueBody {
  const [body, hole] = [convexBody(outer), convexBody(inner)];
  return {
    mesh: joined(outer, reversed(moved(inner, at))),
    volumeMm3: (level) => body.volumeMm3(level) - hole.volumeMm3(-level),
    outMm: Infinity,
    inMm: wallMm / 2,
  };
}

/**
 * Two finely faceted balls about [0, 0, 0] and [apart, 0, 0] that overlap: of each only the radius counts that a ball of its volume
 * has, at every level. Outward the union of the grown balls; inward a solid of revolution: the shrunk balls, with a bite of the level's radius about
 * the crease.
 */
export function ballPair(one: TriangleMesh, two: TriangleMesh, apart: number): TrueBody {
  const [a, b] = [smoothBody(one, 2), smoothBody(two, 2)];
  const radius = (of: TrueBody, level: number): number =>
    Math.cbrt((3 * of.volumeMm3(level)) / (4 * Math.PI));
  const [ra, rb] = [radius(a, 0), radius(b, 0)];
  const x = (apart ** 2 + ra ** 2 - rb ** 2) / (2 * apart);
  const crease = Math.sqrt(ra ** 2 - x ** 2);
  const [alpha, beta] = [Math.atan2(crease, x), Math.atan2(crease, x - apart)];
  return {
    mesh: joined(one, moved(two, [apart, 0, 0])),
    volumeMm3: (level) =>
      level >= 0
        ? a.volumeMm3(level) + b.volumeMm3(level) - lens(radius(a, level), radius(b, level), apart)
        : turnedArc({ radius: radius(a, level), y: 0, from: Math.PI, to: alpha }) +
          turnedArc({ radius: -level, y: crease, from: alpha + Math.PI, to: beta + Math.PI }) +
          turnedArc({ radius: radius(b, level), y: 0, from: beta, to: 0 }),
    outMm: Infinity,
    inMm: Math.min(crease, ra, rb),
  };
}

/** Common volume of two balls (two caps). */
const lens = (r: number, s: number, d: number): number =>
  (Math.PI * (r + s - d) ** 2 * (d ** 2 + 2 * d * (r + s) - 3 * (r - s) ** 2)) / (12 * d);

/** pi y^2 dx along an arc about (any x, y), by Simpson's rule. */
function turnedArc(arc: { radius: number; y: number; from: number; to: number }): number {
  const STEPS = 4000;
  const step = (arc.to - arc.from) / STEPS;
  let sum = 0;
  for (let i = 0; i <= STEPS; i++) {
    const angle = arc.from + i * step;
    const y = arc.y + arc.radius * Math.sin(angle);
    sum += (i === 0 || i === STEPS ? 1 : i % 2 === 0 ? 2 : 4) * y * y * -arc.radius * Math.sin(angle);
  }
  return (Math.PI * sum * step) / 3;
}

/**
 * An angle: a `wide` x `deep` outline less its far corner, arms `armX` and `armY` wide, `tall` high. In the plane an outline of area S,
 * perimeter P, five corners and one reflex grows to S + P s + (5 pi/4 - 1) s^2 and shrinks to S - P s + (5 - pi/4) s^2; beyond
 * its flat ends the grown solid goes on with s^2 = L^2 - t^2 at a height t.
 */
export function angleBody(sides: { wide: number; deep: number; tall: number; arm: number }): TrueBody {
  const { wide, deep, tall, arm } = sides;
  const plan = wide * arm + (deep - arm) * arm;
  const around = 2 * (wide + deep);
  const grow = (5 * Math.PI) / 4 - 1;
  return {
    mesh: prism(
      [
        [arm, arm],
        [arm, deep],
        [0, deep],
        [0, 0],
        [wide, 0],
        [wide, arm],
      ],
      tall,
    ),
    volumeMm3: (s) =>
      s >= 0
        ? tall * (plan + around * s + grow * s * s) +
          2 * (plan * s + (around * Math.PI * s * s) / 4 + (grow * 2 * s ** 3) / 3)
        : (tall + 2 * s) * (plan + around * s + (5 - Math.PI / 4) * s * s),
    outMm: Math.min(wide, deep) - arm,
    inMm: Math.min(arm, tall) / 2,
  };
}

/** A straight prism over an outline that its first corner sees all of; counter-clockwise from above. */
function prism(outline: readonly (readonly [number, number])[], tall: number): TriangleMesh {
  const count = outline.length;
  const triangles: number[] = [];
  for (let i = 0; i < count; i++) {
    const j = (i + 1) % count;
    triangles.push(i, j, count + j, i, count + j, count + i);
    if (i > 0 && j > 0) triangles.push(0, j, i, count, count + i, count + j);
  }
  return {
    positions: Float64Array.from([0, tall].flatMap((z) => outline.flatMap(([x, y]) => [x, y, z]))),
    triangles: Int32Array.from(triangles),
  };
}
