import { afterAll, describe, expect, it } from 'vitest';
import {
  divergenceVolume,
  moldType,
  moldWork,
  settleMold,
  standSculpt,
  type TriangleMesh,
} from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { jittered } from '../../support/looseCorners';
import { lcg } from '../../support/lcg';
import { measured } from '../../support/measured';
import { joined, mapPoints, reversed } from '../../support/meshTools';
import { forgetMolds, moldOf, partCm3, stood } from '../../support/moldOf';
import {
  ballMm3,
  cylinderMm3,
  cylinderOn,
  cylinderWithinMm3,
  discMm2,
  domeOn,
  turnedBody,
} from '../../support/moldShapes';
import { BALL, BOX, DOME, MUSHROOM, TROLL } from '../../support/moldSamples';
import { problemOf, valueOf } from '../../support/outcome';
import { sphere } from '../../support/shapes';

afterAll(forgetMolds);

const SKIN = 5e-4;
const VOXEL = { voxelMm: 1.5 };
const PLAIN = { flangeMm: 0, keyRadiusMm: 0, parts: '1', pull: '+z' };
const codes = (mesh: TriangleMesh): string[] => stood(mesh).findings.map(({ code }) => code);

/** Every second corner of the lowest rim this much lower than the others; its middle half as much. */
const withJaggedRim = (mesh: TriangleMesh, mm: number): TriangleMesh =>
  mapPoints(mesh, ([x, y, z], vertex) => {
    if (z > 1e-9) return [x, y, z];
    if (Math.hypot(x, y) < 1e-9) return [x, y, mm / 2];
    return [x, y, vertex % 2 === 0 ? mm : 0];
  });

describe('an uneven lowest edge', () => {
  it('is trimmed level where the highest of it is, and how much went is said', () => {
    const jagged = withJaggedRim(cylinderOn(40, 100), 0.4);
    const sculpt = stood(jagged);
    const trim = sculpt.findings.find(({ code }) => code === 'BASE_TRIMMED')!;
    expectClose(Number(trim.values.trimMm), 0.4, 1e-9);
    // What is left is a cylinder 99.6 high, by elementary geometry.
    expectClose(sculpt.volumeMm3, cylinderMm3(40, 99.6), 1e-6);
    expectClose(1000 * Number(trim.values.effectCm3), cylinderMm3(40, 99.6) - divergenceVolume(jagged), 1e-3);
    expect(sculpt.boardMm).toBeCloseTo(0.4, 9);
    const skinMm3 = 1000 * partCm3(moldOf(jagged, 'skin', PLAIN, VOXEL), 'skin');
    expectClose(skinMm3, cylinderWithinMm3(40, 99.6, 6) - cylinderMm3(40, 99.6), SKIN);
  });

  it('is left as it is on a sculpt that hangs free', () => {
    const jagged = withJaggedRim(cylinderOn(40, 100), 0.4);
    const free = stood(jagged, 'closed');
    expect([free.findings, free.boardMm]).toEqual([[], undefined]);
    expectClose(free.volumeMm3, divergenceVolume(jagged), 1e-9);
  });

  it('a level one is not touched', () => {
    for (const mesh of [BOX, DOME, MUSHROOM, cylinderOn(40, 100)]) {
      expect(codes(mesh)).toEqual([]);
      expect(stood(mesh).boardMm).toBeCloseTo(0, 9);
    }
  });

  it('a drip 2 mm below a flat face does not lift it: the slit under the sculpt takes no rubber', () => {
    const dome = domeOn(100);
    const [px, py] = [100, 0];
    const dripping = mapPoints(dome, ([x, y, z]) =>
      z < 1e-9 && Math.hypot(x - px, y - py) < 1 ? [x, y, -2] : [x, y, z],
    );
    const skinMm3 = 1000 * partCm3(moldOf(dripping, 'skin', PLAIN, { voxelMm: 2 }), 'skin');
    expectClose(skinMm3, (ballMm3(106) - ballMm3(100)) / 2, 2e-3);
    expect(codes(dripping)).toEqual(['BASE_TRIMMED']);
  });

  it('a foot ring 2 mm high, less than a fifth of the face, counts as uneven: trimmed, and said', () => {
    const footed = turnedBody([
      [0, 2],
      [45, 2],
      [45, 0],
      [50, 0],
      [50, 80],
      [0, 80],
    ]);
    expect(codes(footed)).toEqual(['BASE_TRIMMED']);
    const skinMm3 = 1000 * partCm3(moldOf(footed, 'skin', PLAIN, VOXEL), 'skin');
    expectClose(skinMm3, cylinderWithinMm3(50, 78, 6) - cylinderMm3(50, 78), SKIN);
  });

  it('a cup upside down on the board takes no rubber inside, where none can get', () => {
    const cup = turnedBody([
      [0, 70],
      [40, 70],
      [40, 0],
      [50, 0],
      [50, 80],
      [0, 80],
    ]);
    const skinMm3 = 1000 * partCm3(moldOf(cup, 'skin', PLAIN, VOXEL), 'skin');
    expectClose(skinMm3, cylinderWithinMm3(50, 80, 6) - cylinderMm3(50, 80), SKIN, 'skin');
    const block = moldOf(cup, 'block', { shape: 'cylinder' });
    expectClose(block.rubberMm3, discMm2(62) * 92 - cylinderMm3(50, 80), SKIN, 'block');
  });

  it('the cut neck of a scan that was capped level stands on it', () => {
    const { boardMm, findings, bounds } = stood(TROLL);
    expect(findings.map(({ code }) => code)).not.toContain('STANDS_ON_POINT');
    expect(boardMm! - bounds.min[2]).toBeLessThan(0.02 * (bounds.max[2] - bounds.min[2]));
  });
});

describe('a sculpt without a face to stand on', () => {
  it('is said: a ball meets the board on next to nothing', () => {
    const { findings, boardMm } = stood(BALL);
    const [onPoint] = findings;
    expect(onPoint).toMatchObject({ code: 'STANDS_ON_POINT', status: 'look' });
    expect(Number(onPoint!.values.contactCm2)).toBeLessThan(3);
    expect(boardMm).toBeCloseTo(0, 3);
  });

  it('is not said of one that hangs free, nor of one that stands', () => {
    expect(stood(BALL, 'closed').findings).toEqual([]);
    for (const mesh of [BOX, DOME, MUSHROOM]) expect(codes(mesh)).not.toContain('STANDS_ON_POINT');
  });

  it('on its side, an open tube is told which way its rim looks', () => {
    const opened = withoutLid(
      turnedBody([
        [0, 0],
        [30, 0],
        [30, 120],
        [0, 120],
      ]),
    );
    const lying = mapPoints(opened, ([x, y, z]) => [z, y, -x + 30]);
    const onPoint = stood(lying).findings.find(({ code }) => code === 'STANDS_ON_POINT')!;
    // The rim of the open end looks along +x: it lies on the board with -x up.
    expect(onPoint.values.rimUp).toBe('-x');
  });
});

/** The facets of its top are taken out: an open wrist. */
function withoutLid(mesh: TriangleMesh): TriangleMesh {
  const kept: number[] = [];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const corners = [0, 1, 2].map((k) => mesh.triangles[t + k]!);
    if (corners.every((v) => mesh.positions[3 * v + 2]! > 119.9)) continue;
    kept.push(...corners);
  }
  return { positions: mesh.positions, triangles: Int32Array.from(kept) };
}

describe('hollow bodies', () => {
  it('a hollow ball takes the mold of a solid one: rubber never gets inside', () => {
    const hollow = joined(sphere(50, 64), reversed(sphere(40, 48)));
    const solid = sphere(50, 64);
    expect(stood(hollow, 'closed').volumeMm3).toBeGreaterThan(measured(hollow).volumeMm3 * 1.9);
    expectClose(stood(hollow, 'closed').volumeMm3, stood(solid, 'closed').volumeMm3, 1e-9);
    const wish = { ...PLAIN, base: 'closed', parts: '2' };
    for (const key of ['block', 'skin'] as const) {
      const [a, b] = [hollow, solid].map((mesh) =>
        moldOf(mesh, key, key === 'block' ? { base: 'closed' } : wish, { voxelMm: 2 }),
      ) as [ReturnType<typeof moldOf>, ReturnType<typeof moldOf>];
      expectClose(a.rubberMm3, b.rubberMm3, 1e-6, key);
    }
  });
});

describe('facets that do not join to a surface', () => {
  const strewn = measured(jittered(sphere(50, 24, 48), 1, lcg(3)));
  const sculpt = valueOf(standSculpt(strewn, 'open'));

  it('take a block in one part', () => {
    expect(strewn.soup).toBeDefined();
    const block = moldType('block');
    const settings = valueOf(settleMold(block, { wallMm: 15, coverMm: 15, shape: 'straight' }));
    const mold = valueOf(moldWork('block').build({ sculpt }, settings));
    const [x, y, z] = [0, 1, 2].map((k) => strewn.bounds.max[k]! - strewn.bounds.min[k]!) as [
      number,
      number,
      number,
    ];
    expectClose(mold.rubberMm3, (x + 30) * (y + 30) * (z + 15) - strewn.volumeMm3, 1e-9);
  });

  it.each([
    ['block', { parts: '2' }],
    ['skin', {}],
    ['blanket', {}],
  ] as const)('refuse what needs a surface: %s', (key, wish) => {
    const type = moldType(key);
    const problem = problemOf(moldWork(key).build({ sculpt }, valueOf(settleMold(type, wish))));
    expect(problem.code).toBe('MOLD_NEEDS_SURFACE');
    expect(String(problem.values.what).length).toBeGreaterThan(3);
  });
});

describe('a pipe that stands on the board', () => {
  it('gets its skin outside and inside, and none on the board within it', () => {
    const [outer, inner, tall, skin] = [40, 28, 60, 6];
    const pipe = turnedBody(
      [
        [inner, 0],
        [outer, 0],
        [outer, tall],
        [inner, tall],
      ],
      true,
    );
    const mold = moldOf(pipe, 'skin', { ...PLAIN, skinMm: skin, base: 'open' }, VOXEL);
    // Shells outside and inside, a slab on top, and quarter rings at both upper edges (Pappus; their middles 4 r / 3 pi off the edge).
    const quarter = (Math.PI * skin * skin) / 4;
    const off = (4 * skin) / (3 * Math.PI);
    const walls = Math.PI * ((outer + skin) ** 2 - outer ** 2 + inner ** 2 - (inner - skin) ** 2) * tall;
    const top = Math.PI * (outer ** 2 - inner ** 2) * skin;
    const edges = 2 * Math.PI * quarter * (outer + off + inner - off);
    expectClose(partCm3(mold, 'skin'), (walls + top + edges) / 1000, 3e-3);
  });
});
