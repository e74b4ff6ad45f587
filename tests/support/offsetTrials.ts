import type { TriangleMesh } from '../../src/geometry';
import { between, lcg } from './lcg';
import { moved, turned } from './meshTools';
import { DAMAGES, hurtAtRandom, type Damage } from './trialDamage';
import { bodyAtRandom, SHAPES, type Shape } from './trialShapes';

/** One random scan of a body whose offsets are known: shape, damage, pose, voxel and two levels follow from the seed. */
export interface OffsetTrial {
  seed: number;
  shape: Shape;
  damage: Damage;
  scan: TriangleMesh;
  /** Undefined: the program chooses, at the accuracy `fast`. */
  voxelMm: number | undefined;
  outMm: number;
  inMm: number;
  /** Of the undamaged body. */
  volumeMm3: (levelMm: number) => number;
}

/** Share of the truth's reach, and of the depth of a body, that is used. */
const REACH_USED = 0.7;

/** @param mostVoxels at most about so many in the box around the grown body; larger bodies get larger voxels */
export function offsetTrial(seed: number, mostVoxels: number): OffsetTrial {
  // Neighboring seeds of an lcg begin alike: spread over its range.
  const random = lcg(Math.imul(seed, 0x9e3779b1));
  const shape = SHAPES[seed % SHAPES.length]!;
  const size = 40 * 7.5 ** random();
  const body = bodyAtRandom(shape, size, random);
  const damage = random() < 0.3 ? 'none' : DAMAGES[1 + Math.floor(random() * (DAMAGES.length - 1))]!;
  const outMm = Math.min(between(random, 2, 25), REACH_USED * body.outMm);
  const inMm = -Math.min(between(random, 1, 12), REACH_USED * body.inMm);
  const hurt = hurtAtRandom(body.mesh, damage, random);
  const isUpright = random() < 0.2;
  const turn = [0, 1, 2, 3].map(() => random() - 0.5) as [number, number, number, number];
  const posed = (mesh: TriangleMesh): TriangleMesh => (isUpright ? mesh : turned(mesh, turn));
  const scan = moved(
    posed(hurt),
    [0, 1, 2].map(() => between(random, -100, 100)) as [number, number, number],
  );
  // Of the body: specks far off must not make the voxels coarse.
  const least = Math.cbrt(boxMm3(posed(body.mesh), outMm) / mostVoxels);
  const isChosen = random() < 0.25 && -inMm >= 4 * least;
  const voxelMm = Math.max(between(random, 0.5, 2), least);
  return {
    seed,
    shape,
    damage,
    scan,
    voxelMm: isChosen ? undefined : Number(voxelMm.toPrecision(3)),
    outMm,
    inMm,
    volumeMm3: body.volumeMm3,
  };
}

function boxMm3({ positions: p }: TriangleMesh, byMm: number): number {
  let product = 1;
  for (let k = 0; k < 3; k++) {
    let [low, high] = [Infinity, -Infinity];
    for (let i = k; i < p.length; i += 3) {
      low = Math.min(low, p[i]!);
      high = Math.max(high, p[i]!);
    }
    product *= high - low + 2 * byMm;
  }
  return product;
}
