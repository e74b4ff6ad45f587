import type { TriangleMesh } from '../../src/geometry';
import { direction, upTo, type Random } from './draws';
import { between } from './lcg';
import {
  damaged,
  joined,
  moved,
  scaled,
  trianglesOf,
  withTriangles,
  type Triple,
  quartered,
} from './meshTools';
import { box } from './shapes';

/** What happens to a body on its way to a scan. */

export const DAMAGES = ['none', 'deleted', 'flipped', 'doubled', 'all three', 'open base', 'specks'] as const;
export type Damage = (typeof DAMAGES)[number];

/** Nothing of the body is lost by these: its range is to be as narrow as an undamaged one's. */
export const HARMLESS: readonly Damage[] = ['none', 'flipped', 'doubled', 'specks'];

/** Triangles are quartered up to this many, in flat faces; round bodies have their own. */
const MOST_TRIANGLES = 20_000;

/** Cut finer by chance, then damaged. */
export function hurtAtRandom(body: TriangleMesh, damage: Damage, random: Random): TriangleMesh {
  const mesh = quarteredAtRandom(body, random);
  if (damage === 'none') return mesh;
  if (damage === 'open base') return openBelow(mesh, between(random, 0.005, 0.04));
  if (damage === 'specks') return withSpecks(mesh, random);
  return damaged(mesh, damage, between(random, 0.01, 0.1), random);
}

/** Every triangle in four, none to as often as MOST_TRIANGLES allows: the same body. */
function quarteredAtRandom(mesh: TriangleMesh, random: Random): TriangleMesh {
  const most = Math.floor(Math.log2(MOST_TRIANGLES / trianglesOf(mesh).length) / 2);
  let result = mesh;
  for (let times = upTo(random, 0, Math.max(0, most)); times > 0; times--) result = quartered(result);
  return result;
}

/** Without its flat base; without what lies wholly in the lowest `share` of its height where there is none. */
function openBelow(mesh: TriangleMesh, share: number): TriangleMesh {
  const zOf = (v: number): number => mesh.positions[3 * v + 2]!;
  const heights = Array.from(mesh.triangles, zOf);
  const [low, high] = [heights.reduce((a, b) => Math.min(a, b)), heights.reduce((a, b) => Math.max(a, b))];
  const keptAbove = (z: number): Triple[] => trianglesOf(mesh).filter((t) => t.some((v) => zOf(v) > z));
  const open = keptAbove(low + 1e-9 * (high - low));
  return withTriangles(
    mesh,
    open.length < mesh.triangles.length / 3 ? open : keptAbove(low + share * (high - low)),
  );
}

/** One to eight small cubes in the air around it. */
function withSpecks(mesh: TriangleMesh, random: Random): TriangleMesh {
  const size = 2 * mesh.positions.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const specks = Array.from({ length: upTo(random, 1, 8) }, () => {
    const u = direction(random);
    const away = size * between(random, 1.2, 1.5);
    return moved(scaled(box([1, 1, 1]), between(random, 0.2, 0.01 * size)), [
      away * u[0],
      away * u[1],
      away * u[2],
    ]);
  });
  return joined(mesh, ...specks);
}
