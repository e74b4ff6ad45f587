import { afterAll, describe, expect, it } from 'vitest';
import {
  boundsOf,
  buildField,
  divergenceVolume,
  moldShells,
  moldType,
  moldWork,
  settleMold,
  type BaseChoice,
  type Field,
  type MoldKey,
  type MoldShell,
  type MoldWish,
  type PullChoice,
  type Sculpt,
  type TriangleMesh,
} from '../../../src/geometry';
import { expectClose } from '../../support/close';
import { forgetMolds, moldOf, stood } from '../../support/moldOf';
import { BALL, DOME, MUSHROOM } from '../../support/moldSamples';
import { annulusMm2, ballMm3, boxSkinMm3, cylinderOn, mushroomFilledMm3 } from '../../support/moldShapes';
import { openSides } from '../../support/openSides';
import { valueOf } from '../../support/outcome';
import { box } from '../../support/shapes';

afterAll(forgetMolds);

const VOXEL_MM = 1.5;
const STEP_MM = 2 * VOXEL_MM;
/** For boxes, whose edges are round at a tighter radius. */
const FINE_VOXEL_MM = 1;
const FINE_MM = 2 * FINE_VOXEL_MM;

function shellsOf(mesh: TriangleMesh, key: MoldKey, wish: MoldWish, voxelMm = VOXEL_MM): MoldShell[] {
  const base: BaseChoice = wish.base === 'closed' ? 'closed' : 'open';
  const sculpt = stood(mesh, base);
  const settings = valueOf(settleMold(moldType(key), wish));
  if (key === 'block') return valueOf(moldShells(key, { sculpt }, settings));
  return valueOf(moldShells(key, { sculpt, field: fieldAround(sculpt, voxelMm) }, settings));
}

const fields = new WeakMap<Sculpt, Field>();

function fieldAround(sculpt: Sculpt, voxelMm = VOXEL_MM): Field {
  const { chain, bounds, boardMm } = sculpt;
  const options = { voxelMm, levelsMm: [20] };
  const field =
    fields.get(sculpt) ??
    valueOf(buildField(chain!, bounds, boardMm === undefined ? options : { ...options, baseMm: boardMm }));
  fields.set(sculpt, field);
  return field;
}

type Distance = (x: number, y: number, z: number) => number;

/** The least and the largest distance over the vertices above a height. */
function range(
  { chain: { positions: p } }: MoldShell,
  distance: Distance,
  overMm = -Infinity,
): [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (let v = 0; v < p.length; v += 3) {
    if (p[v + 2]! <= overMm) continue;
    const far = distance(p[v]!, p[v + 1]!, p[v + 2]!);
    [low, high] = [Math.min(low, far), Math.max(high, far)];
  }
  return [low, high];
}

const beyond = (x: number, half: number): number => Math.max(0, Math.abs(x) - half);

/**
 * Between points of a lattice linear distances would be off by up to step^2 / 4 R, both curvatures at mid cell: 0.0375 mm on 60 mm at 3 mm. Squares are exact around a
 * point, and a ball of 256 sides, whose flats are 0.004 mm off, is nearly one.
 */
const ballTolerance = (radiusMm: number): number => STEP_MM ** 2 / (4 * radiusMm);

describe('outer faces of a skin and its jacket around a ball of radius 50, free, 10 + 5 mm', () => {
  it.each(['+x', '+z', '1,0.4,0.3'])('pulled along %s: on balls of 60 and 65', (pull) => {
    const shells = shellsOf(BALL, 'skin', { base: 'closed', skinMm: 10, jacketMm: 5, pull });
    expect(shells.map(({ part }) => part)).toEqual(['skin', 'jacket']);
    for (const [shell, radius] of [
      [shells[0]!, 60],
      [shells[1]!, 65],
    ] as const) {
      const [low, high] = range(shell, (x, y, z) => Math.hypot(x, y, z - 50));
      expect(low).toBeGreaterThan(radius - ballTolerance(radius));
      expect(high).toBeLessThan(radius + ballTolerance(radius));
      expect(openSides(shell.chain)).toBe(0);
      // Facets of up to 1.4 steps on it: k L2 / 8 of the radius, three times that of the volume.
      expectClose(
        divergenceVolume(shell.chain),
        ballMm3(radius),
        (3 * (1.4 * STEP_MM) ** 2) / 8 / radius ** 2,
      );
    }
  });
});

describe('the same over a dome on the board', () => {
  const [skin] = shellsOf(DOME, 'blanket', { skinMm: 10, jacketMm: 5, pull: '+z', parts: '1', flangeMm: 0 });

  it('ends flat on the board, closed, with an upright rim of radius 60', () => {
    const { positions: p } = skin!.chain;
    expect(openSides(skin!.chain)).toBe(0);
    expect(boundsOf(skin!.chain).min[2]).toBeCloseTo(0, 6);
    let rim = 0;
    for (let v = 0; v < p.length; v += 3)
      if (p[v + 2]! < 1e-6) rim = Math.max(rim, Math.hypot(p[v]!, p[v + 1]!));
    expect(Math.abs(rim - 60)).toBeLessThan(ballTolerance(60));
    expectClose(divergenceVolume(skin!.chain), ballMm3(60) / 2, 2e-3);
  });

  it('has normals of length 1 that point away from the middle, and down under it', () => {
    const { positions: p, normals: n } = skin!;
    let least = 1;
    for (let v = 0; v < p.length; v += 3) {
      const isUnder = p[v + 2]! < 1e-4 && Math.hypot(p[v]!, p[v + 1]!) < 59.9;
      const out = isUnder ? [0, 0, -1] : [p[v]! / 60, p[v + 1]! / 60, p[v + 2]! / 60];
      least = Math.min(least, n[v]! * out[0]! + n[v + 1]! * out[1]! + n[v + 2]! * out[2]!);
    }
    expect(least).toBeGreaterThan(0.99);
  });
});

describe('around a box of 60 x 50 x 40', () => {
  const body = box([60, 50, 40], [-30, -25, 0]);
  const [skin, jacket] = shellsOf(
    body,
    'skin',
    { skinMm: 10, jacketMm: 5, pull: '+z', parts: '1', flangeMm: 0 },
    FINE_VOXEL_MM,
  );
  const distance: Distance = (x, y, z) => Math.hypot(beyond(x, 30), beyond(y, 25), Math.max(0, z - 40));

  it.each([
    ['skin', skin!, 10],
    ['jacket', jacket!, 15],
  ] as const)('%s: on its level, flat sides exactly', (_, shell, levelMm) => {
    const [low, high] = range(shell, distance, 1e-4);
    // Where a round edge begins, the squares bend by 2 step^2 from one cell to the next: a quarter of step^2 between points, twice that at a corner.
    const tolerance = FINE_MM ** 2 / (4 * levelMm);
    expect(low).toBeGreaterThan(levelMm - tolerance);
    expect(high).toBeLessThan(levelMm + tolerance);
    const flat = range(
      shell,
      (x, y, z) => (beyond(x, 25) === 0 && beyond(y, 20) === 0 ? z - 40 : levelMm),
      45,
    );
    expect(flat[0]).toBeCloseTo(levelMm, 4);
    expect(flat[1]).toBeCloseTo(levelMm, 4);
  });

  it('encloses what the closed formula says', () => {
    const [sides, bare] = [[60, 50, 40] as const, 60 * 50 * 40];
    expectClose(divergenceVolume(skin!.chain), bare + boxSkinMm3(sides, 10, true), 2e-3);
    expectClose(divergenceVolume(jacket!.chain), bare + boxSkinMm3(sides, 15, true), 2e-3);
  });
});

describe('undercuts are filled as the jacket needs it', () => {
  it('under the cap of a mushroom lifted straight up', () => {
    const [skin] = shellsOf(MUSHROOM, 'skin', { skinMm: 6, pull: '+z', parts: '1', flangeMm: 0 }, 2);
    expectClose(divergenceVolume(skin!.chain), mushroomFilledMm3(6), 5e-3);
  });

  it('by the pull that the measure of the mold settles on: an axis that locks less than the one that was found', () => {
    const sculpt = stood(MUSHROOM);
    const field = fieldAround(sculpt, 2);
    const settings = valueOf(settleMold(moldType('skin'), { skinMm: 6, parts: '1', flangeMm: 0 }));
    const tilted: PullChoice = { pull: [0.6, 0, 0.8], isTied: false, tried: 1 };
    const body = { sculpt, field, pull: tilted };
    const { undercut, fillings } = valueOf(moldWork('skin').build(body, settings));
    expect(undercut!.pull).toEqual([0, 0, 1]);
    const [skin] = valueOf(moldShells('skin', body, settings));
    expectClose(divergenceVolume(skin!.chain), fillings[0]!.containerMm3, 5e-3);
    const wrong = valueOf(moldShells('skin', body, { ...settings, pull: '0.6,0,0.8' }));
    expect(divergenceVolume(wrong[0]!.chain)).toBeGreaterThan(1.05 * fillings[0]!.containerMm3);
  });

  it('not by one that would pass through the board', () => {
    const sculpt = stood(MUSHROOM);
    const settings = valueOf(settleMold(moldType('skin'), { parts: '1', pull: '+x' }));
    const refused = moldShells('skin', { sculpt, field: fieldAround(sculpt, 2) }, settings);
    expect(refused).toMatchObject({ ok: false, problem: { code: 'PULL_THROUGH_BOARD' } });
  });
});

describe('the flange on the board, 25 mm wide, around a cylinder of radius 40', () => {
  const wish = { skinMm: 6, jacketMm: 5, pull: '+z', parts: '1' };
  const cylinder = cylinderOn(40, 30);
  const bare = shellsOf(cylinder, 'skin', { ...wish, flangeMm: 0 });

  // The lattice ends 20 mm and a few steps beyond the sculpt: a flange of 60 mm goes beyond it.
  it.each([25, 60])('adds a ring %d mm wide to the rubber and its cover to the jacket', (flangeMm) => {
    const shells = shellsOf(cylinder, 'skin', { ...wish, flangeMm });
    for (const [n, thickMm] of [6, 11].entries()) {
      const { chain } = shells[n]!;
      const outerMm = 46 + flangeMm;
      const { min, max } = boundsOf(chain);
      for (const a of [0, 1] as const) {
        expect(Math.abs(max[a] - outerMm)).toBeLessThan(0.1);
        expect(Math.abs(min[a] + outerMm)).toBeLessThan(0.1);
      }
      expect(openSides(chain)).toBe(0);
      const added = divergenceVolume(chain) - divergenceVolume(bare[n]!.chain);
      const ringMm3 = annulusMm2(outerMm, n === 0 ? 46 : 51) * thickMm;
      // Its upper edge loses, and where it meets the side it gains, a triangle of a cell at most.
      expect(Math.abs(added - ringMm3)).toBeLessThan(Math.PI * outerMm * STEP_MM ** 2);
      const { positions: p } = chain;
      const tops: number[] = [];
      for (let v = 0; v < p.length; v += 3) {
        const r = Math.hypot(p[v]!, p[v + 1]!);
        // Two cells and a half from where it meets the side, and from its edge.
        if (r > 51 + 2.5 * STEP_MM && r < outerMm - 2.5 * STEP_MM && p[v + 2]! > 1e-4) tops.push(p[v + 2]!);
      }
      expect(tops.length).toBeGreaterThan(50);
      for (const z of tops) expect(z).toBeCloseTo(thickMm, 3);
    }
  });

  it('is not there around a free sculpt', () => {
    const [skin] = shellsOf(BALL, 'skin', {
      base: 'closed',
      skinMm: 10,
      jacketMm: 5,
      pull: '+z',
      flangeMm: 25,
    });
    expectClose(divergenceVolume(skin!.chain), ballMm3(60), 2e-3);
  });
});

describe('a poured block', () => {
  const body = box([60, 40, 50], [5, 7, 0]);

  it.each([
    ['on the board', 'open', 0, 62],
    ['free', 'closed', -12, 62],
  ] as const)('%s: a box with its wall all round', (_, base, low, high) => {
    const [block] = shellsOf(body, 'block', { base, shape: 'straight' });
    const { min, max } = boundsOf(block!.chain);
    expect([...min, ...max].map((x) => Number(x.toFixed(9)))).toEqual([-7, -5, low, 77, 59, high]);
    expectClose(divergenceVolume(block!.chain), 84 * 64 * (high - low), 1e-12);
    expect(openSides(block!.chain)).toBe(0);
  });

  it.each(['turned', 'cylinder', 'least'])(
    '%s: holds what the mold says it holds, with the wall around the sculpt',
    (shape) => {
      const [c, s] = [Math.cos(0.5), Math.sin(0.5)];
      const turned: TriangleMesh = {
        ...body,
        positions: body.positions.map((x, i, p) =>
          i % 3 === 0 ? c * x - s * p[i + 1]! : i % 3 === 1 ? s * p[i - 1]! + c * x : x,
        ),
      };
      const [block] = shellsOf(turned, 'block', { shape });
      const mold = moldOf(turned, 'block', { shape });
      // 256 flats take a thousandth and a tenth of one off a cylinder.
      expectClose(divergenceVolume(block!.chain), mold.box!.volumeMm3, shape === 'cylinder' ? 1.1e-4 : 1e-9);
      const inner = boundsOf(turned);
      const outer = boundsOf(block!.chain);
      for (const a of [0, 1] as const) {
        expect(outer.min[a]).toBeLessThan(inner.min[a] - 11.9);
        expect(outer.max[a]).toBeGreaterThan(inner.max[a] + 11.9);
      }
    },
  );

  it('is drawn with sharp edges: four corners a face', () => {
    const [block] = shellsOf(body, 'block', { shape: 'straight' });
    expect(block!.positions.length / 3).toBe(24);
    const lengths = Array.from({ length: 24 }, (_, v) =>
      Math.hypot(...block!.normals.slice(3 * v, 3 * v + 3)),
    );
    for (const length of lengths) expect(length).toBeCloseTo(1, 6);
  });
});
