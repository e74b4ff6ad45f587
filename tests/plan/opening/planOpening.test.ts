import { expect, onTestFinished, test, vi } from 'vitest';
import type { TriangleMesh } from '../../../src/geometry';
import {
  openMoldBench,
  planOpening,
  type MoldBench,
  type OpeningAsk,
  type OpeningPlan,
} from '../../../src/plan';
import { everyNumber } from '../../support/everyNumber';
import { joined, moved, scaled } from '../../support/meshTools';
import { ballOn, cylinderOn, mushroomOn } from '../../support/moldShapes';
import { benchOf, scanOf } from '../../support/moldBench';
import { problemOf, valueOf } from '../../support/outcome';
import { sampleScan } from '../../support/samples';
import { box, icosphere } from '../../support/shapes';

const planOn = (bench: MoldBench, ask: OpeningAsk = {}): OpeningPlan => valueOf(planOpening(bench, ask));
const planOf = (mesh: TriangleMesh, ask: OpeningAsk = {}): OpeningPlan => planOn(benchOf(mesh), ask);

const codesOf = ({ findings }: OpeningPlan): string[] => findings.map(({ code }) => code);

const SCANS = [
  ['quay-troll-scan.stl', { fileUnit: 'in', up: '+y' }],
  ['lighthouse-hand-scan.stl', { fileUnit: 'mm' }],
  ['lamp-eel-scan.stl', { fileUnit: 'mm' }],
  ['twin-spheres-r40-d50.stl', { fileUnit: 'mm' }],
  ['torus-r50-r12.stl', { fileUnit: 'mm' }],
  ['box-40x30x20-ascii.stl', { fileUnit: 'mm' }],
] as const;

for (const [file, options] of SCANS)
  test(`${file}: all numbers are numbers, places are counted from 1, and asked again it says the same`, () => {
    const scan = sampleScan(file);
    const plan = (): OpeningPlan =>
      valueOf(
        planOpening(valueOf(openMoldBench(scan, { ...options, voxelMm: 3 })).bench, {
          pour: { freeRiseKgM3: 96, withinS: 25, mixPaS: 1 },
        }),
      );
    const one = plan();
    for (const [path, value] of everyNumber(one))
      expect(Number.isFinite(value), `${path} is ${value}`).toBe(true);
    expect(one.places.map(({ n }) => n)).toEqual(one.places.map((_, i) => i + 1));
    expect(one.places[0]!.kind).toBe('opening');
    for (const { normal } of one.places) expect(Math.hypot(...normal)).toBeCloseTo(1, 9);
    expect(one.filling.trappedCm3.low).toBeLessThanOrEqual(one.filling.trappedCm3.value);
    expect(one.filling.trappedCm3.high).toBeGreaterThanOrEqual(one.filling.trappedCm3.value);
    expect(one.filling.leftCm3).toBeLessThanOrEqual(one.filling.trappedCm3.value * 1.02 + 0.1);
    expect(plan()).toEqual(one);
  });

test('A file in inches and the same in millimeters give the same plan', () => {
  const mesh = mushroomOn(64);
  const ask = { pour: { freeRiseKgM3: 96, withinS: 25, mixPaS: 1 } };
  const bench = valueOf(openMoldBench(scanOf(scaled(mesh, 1 / 25.4)), { fileUnit: 'in', voxelMm: 2 })).bench;
  const [inches, mm] = [valueOf(planOpening(bench, ask)), planOf(mesh, ask)];
  expect(inches.opening.diameterMm).toBe(mm.opening.diameterMm);
  expect(inches.filling.trappedCm3.value).toBeCloseTo(mm.filling.trappedCm3.value, 6);
  expect(inches.filling.holdCm3).toBeCloseTo(mm.filling.holdCm3, 6);
  expect(inches.places.length).toBe(mm.places.length);
  inches.places.forEach(({ atMm }, i) =>
    atMm.forEach((x, k) => expect(x).toBeCloseTo(mm.places[i]!.atMm[k]!, 4)),
  );
});

test('Progress never falls, begins low and ends by 1', () => {
  const told: number[] = [];
  const bench = benchOf(mushroomOn(64), { onProgress: (share) => told.push(share) });
  const from = told.length;
  valueOf(planOpening(bench, { searchUp: true }));
  const shares = told.slice(from);
  expect(shares.length).toBeGreaterThan(3);
  shares.forEach((share, i) => expect(share).toBeGreaterThanOrEqual(i === 0 ? 0 : shares[i - 1]!));
  expect(shares[0]).toBeLessThan(0.3);
  expect(shares.at(-1)).toBeLessThanOrEqual(1);
});

test('Stopped, it gives up at once, wherever in the work that falls', () => {
  const mesh = mushroomOn(48);
  // A clock on which each step takes as long as may pass between two questions: all of them are asked, on any machine.
  let clockMs = 0;
  vi.spyOn(Date, 'now').mockImplementation(() => (clockMs += 100));
  onTestFinished(() => void vi.restoreAllMocks());
  let asked = 0;
  let stopAt = Infinity;
  const shouldStop = (): boolean => ++asked >= stopAt;
  const bench = benchOf(mesh, { shouldStop });
  asked = 0;
  valueOf(planOpening(bench, { searchUp: true }));
  const whole = asked;
  expect(whole).toBeGreaterThan(100);
  for (const share of [0, 0.1, 0.5, 0.9]) {
    const fresh = benchOf(mesh, { shouldStop });
    asked = 0;
    stopAt = 1 + Math.floor(share * whole);
    expect(problemOf(planOpening(fresh, { searchUp: true })).code, `at ${share} of the work`).toBe('STOPPED');
    expect(asked, `asked again at ${share} of the work`).toBe(stopAt);
    stopAt = Infinity;
  }
});

test('A cylinder on its base is opened there, poured upside down, and keeps nothing', () => {
  const plan = planOf(cylinderOn(30, 100));
  expect(plan.opening.placedBy).toBe('base');
  expect(plan.opening.atMm[2]).toBe(0);
  expect(plan.opening.normal).toEqual([0, 0, -1]);
  expect(Math.abs(plan.opening.roomMm! - 60)).toBeLessThan(0.1);
  expect(plan.opening.atMm[0]).toBeCloseTo(0, 0);
  expect(plan.filling.trappedCm3.value).toBeLessThan(0.05);
  expect(plan.filling.tiltDegrees).toBe(0);
  expect(Math.abs(plan.filling.holdCm3 - (Math.PI * 900 * 100) / 1000)).toBeLessThan(2);
});

test('A sculpt that is molded all round is opened at its highest point', () => {
  const plan = planOf(moved(icosphere(40, 5), [5, 6, 70]), { base: 'closed' });
  expect(plan.opening.placedBy).toBe('summit');
  expect(plan.opening.normal[2]).toBeGreaterThan(0.99);
  expect(plan.filling.trappedCm3.value).toBeLessThan(0.2);
  expect(plan.underSilicone).toBeUndefined();
});

test('An opening given in the side faces that way, and what is over it stays full of air', () => {
  const plan = planOf(box([60, 60, 120]), {
    opening: { atMm: [60, 30, 60], diameterMm: 20 },
    pourUp: [0, 0, 1],
  });
  const [x, y, z] = plan.opening.normal;
  expect([Math.abs(x) + Math.abs(y), z]).toEqual([1, 0]);
  expect(plan.filling.tiltDegrees).toBeCloseTo(90, 6);
  expect(codesOf(plan)).toContain('OPENING_UNDERSIDE');
  expect(Math.abs(plan.filling.trappedCm3.value - (60 * 60 * 50) / 1000)).toBeLessThan(4);
});

test('An opening that looks down is a stop', () => {
  const plan = planOf(box([60, 60, 120]), { pourUp: [0, 0, 1] });
  const found = plan.findings.find(({ code }) => code === 'OPENING_UNDERSIDE');
  expect(found?.status).toBe('stop');
  expect(found?.values['tiltDegrees']).toBeCloseTo(180, 6);
});

test('A point beside the surface is moved onto it, and that is said', () => {
  const plan = planOf(box([60, 60, 120]), { opening: { atMm: [0, 0, 175], diameterMm: 20 } });
  const found = plan.findings.find(({ code }) => code === 'OPENING_OFF_SURFACE');
  expect(found?.values['movedMm']).toBeCloseTo(55, 0);
  expect(plan.opening.atMm[2]).toBeCloseTo(120, 4);
});

test('A second piece that nothing poured here reaches is a stop', () => {
  const plan = planOf(joined(box([60, 60, 60]), box([40, 40, 40], [100, 0, 0])));
  const found = plan.findings.find(({ code }) => code === 'PIECE_CUT_OFF');
  expect(found?.status).toBe('stop');
  expect(Math.abs(plan.filling.apart.volumeCm3 - 64)).toBeLessThan(2);
});

test('A vent that is planned where the air is leaves nothing to advise there', () => {
  const twin = joined(moved(icosphere(40, 5), [0, 0, 40]), moved(icosphere(39.5, 5), [50, 0, 40]));
  const ask: OpeningAsk = { base: 'closed', opening: { atMm: [0, 0, 80], diameterMm: 16 } };
  const bench = benchOf(twin);
  const bare = planOn(bench, ask);
  expect(bare.filling.vents).toHaveLength(1);
  const vented = planOn(bench, { ...ask, vents: [bare.filling.vents[0]!.atMm] });
  expect(vented.filling.vents).toEqual([]);
  expect(vented.filling.trappedCm3.value).toBeLessThan(0.05);
  expect(vented.places.filter(({ kind }) => kind === 'vent planned')).toHaveLength(1);
});

test('An opening wider than the sculpt is not passed over in silence', () => {
  const { findings, checks } = planOf(box([60, 60, 120]), { opening: { diameterMm: 200 } });
  const told = [...findings, ...checks].filter(
    ({ code, status }) => code.startsWith('OPENING') && status !== 'unknown',
  );
  expect(told.some(({ status }) => status !== 'fine')).toBe(true);
});

test('What cannot be an answer to anything is refused, not thrown and not answered', () => {
  const bench = benchOf(box([60, 60, 120]));
  for (const ask of [
    { pourUp: [0, 0, 0] },
    { pourUp: [NaN, 0, 1] },
    { opening: { atMm: [NaN, 0, 1] } },
    { opening: { diameterMm: 0 } },
    { opening: { diameterMm: -5 } },
    { opening: { diameterMm: NaN } },
    { vents: [[NaN, 0, 0]] },
  ] as const) {
    const outcome = planOpening(bench, ask);
    expect(outcome.ok, JSON.stringify(ask)).toBe(false);
  }
});

test('Blocks that stand on each other face to face are poured as one', () => {
  const [low, high] = [box([60, 60, 60]), box([60, 60, 60], [0, 0, 60])];
  for (const bench of [joined(low, high), joined(high, low)].map((mesh) => benchOf(mesh)))
    for (const ask of [{}, { pourUp: [0.3, 0.2, -1] as const }]) {
      const plan = planOn(bench, ask);
      expect(codesOf(plan)).not.toContain('PIECE_CUT_OFF');
      expect(plan.filling.apart.count).toBe(0);
    }
});

test('Where shells overlap at the base, the opening has the room they have together', () => {
  const plan = planOf(joined(box([60, 40, 60]), box([60, 40, 60], [30, 0, 0])));
  expect(Math.abs(plan.opening.roomMm! - 40)).toBeLessThan(0.05);
});

for (const [name, mm] of [
  ['A charm of 10 mm', 10],
  ['A giant of 3 m', 3000],
] as const)
  test(`${name} is planned in seconds, its air in proportion`, () => {
    const k = mm / 100;
    const before = process.cpuUsage();
    const plan = valueOf(
      planOpening(valueOf(openMoldBench(scanOf(scaled(ballOn(50), k)), { fileUnit: 'mm' })).bench, {
        opening: { atMm: [0, 0, mm], diameterMm: Math.min(300, 20 * k) },
        base: 'closed',
      }),
    );
    // Of the processor: what else runs on this machine does not count.
    const { user, system } = process.cpuUsage(before);
    expect((user + system) / 1e6).toBeLessThan(15);
    for (const [path, value] of everyNumber(plan))
      expect(Number.isFinite(value), `${path} is ${value}`).toBe(true);
    expect(plan.filling.trappedCm3.value).toBeLessThan(1e-4 * plan.filling.holdCm3);
    const full = (Math.PI / 6) * mm ** 3 * 1e-3;
    expect(Math.abs(plan.filling.holdCm3 / full - 1)).toBeLessThan(0.01);
  }, 60_000);
