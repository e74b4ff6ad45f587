import { rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it, onTestFinished, vi } from 'vitest';
import {
  boundsOf,
  buildField,
  measureLevels,
  type FieldOptions,
  type TriangleMesh,
} from '../../../src/geometry';
import type { Crew } from '../../../src/geometry';
import { startCrew } from '../../../src/cli/nodeCrew';
import { between, lcg } from '../../support/lcg';
import { joined, moved, turned } from '../../support/meshTools';
import { problemOf, valueOf } from '../../support/outcome';
import { box, icosphere, torus } from '../../support/shapes';
import { bundledHelper } from './bundledHelper';
import { fieldOf, levelsOf } from './levelsOf';
import { fullBall } from './truths';

const SEED = 66;
const LEVELS = [0, 7, -6, 0.7];

let helper: URL;
/** Crews of one and of two helpers. */
let crews: ReturnType<typeof startCrew>[];

beforeAll(async () => {
  helper = await bundledHelper();
  crews = [startCrew(2, helper), startCrew(3, helper)];
}, 30_000);

afterAll(() => {
  for (const crew of crews) crew.end();
  rmSync(dirname(fileURLToPath(helper)), { recursive: true, force: true });
});

const noisy = (mesh: TriangleMesh, mm: number): TriangleMesh => {
  const random = lcg(SEED);
  return { ...mesh, positions: mesh.positions.map((x) => x + between(random, -mm, mm)) };
};

describe(`one, two and three threads give the same numbers to the last bit, seed ${SEED}`, () => {
  it.each<[string, TriangleMesh]>([
    ['box of 12 triangles', box([44, 40, 30])],
    ['box, turned', turned(box([44, 40, 30]), [1, 0.2, 0.3, 0.4])],
    ['ball with noise', noisy(icosphere(22, 4), 0.2)],
    ['torus', torus(26, 11, 90, 45)],
    ['two balls that overlap', joined(fullBall(16, 24), moved(fullBall(16, 24), [18, 3, 1]))],
  ])('%s', (_name, mesh) => {
    const alone = levelsOf(mesh, LEVELS);
    for (const crew of crews) expect(levelsOf(mesh, LEVELS, { crew }), `${crew.helpers}`).toEqual(alone);
  });

  it('a base plane and a standing field too', () => {
    const mesh = fullBall(22, 40);
    const alone = fieldOf(mesh, [7], { baseMm: -3 });
    for (const crew of crews) {
      const field = fieldOf(mesh, [7], { baseMm: -3, crew });
      for (const level of [7, 3, -2])
        expect(valueOf(measureLevels(field, [level]))).toEqual(valueOf(measureLevels(alone, [level])));
    }
  });
});

/** Long enough that it is asked many times whether to stop. */
const LONG: FieldOptions = { voxelMm: 0.6, levelsMm: [10, -8] };
const ball = icosphere(50, 5);

/** Builds and measures the ball; how often it was asked whether to stop, which it is told to from the `stopAt`-th time on. */
function askedUntil(stopAt: number, crew?: Crew): { asked: number; code: string | undefined } {
  let asked = 0;
  const shouldStop = (): boolean => ++asked >= stopAt;
  const field = buildField(ball, boundsOf(ball), { ...LONG, shouldStop, ...(crew ? { crew } : {}) });
  const levels = field.ok ? measureLevels(field.value, LONG.levelsMm) : field;
  return { asked, code: levels.ok ? undefined : levels.problem.code };
}

describe('a stop is heard', () => {
  it('at the first question, and nothing is asked after it, while it builds and while it measures', () => {
    // A clock on which each step is long enough for a question.
    let clockMs = 0;
    vi.spyOn(Date, 'now').mockImplementation(() => (clockMs += 100));
    onTestFinished(() => void vi.restoreAllMocks());
    const { asked: whole, code } = askedUntil(Infinity);
    expect(code).toBeUndefined();
    expect(whole).toBeGreaterThan(100);
    for (const share of [0, 0.1, 0.25, 0.5, 0.6, 0.99]) {
      const stopAt = 1 + Math.floor(share * whole);
      expect(askedUntil(stopAt), `after ${share} of it`).toEqual({ asked: stopAt, code: 'STOPPED' });
    }
  });

  it('with a crew, which then does its next task', () => {
    for (const crew of crews) {
      expect(askedUntil(3, crew)).toEqual({ asked: 3, code: 'STOPPED' });
      expect(levelsOf(fullBall(16, 24), [3], { crew })).toEqual(levelsOf(fullBall(16, 24), [3]));
    }
  });

  it('a field whose levels were stopped can be asked again', () => {
    for (const crew of [undefined, ...crews]) {
      let isStopping = false;
      const options = { shouldStop: () => isStopping, ...(crew ? { crew } : {}) };
      const field = fieldOf(fullBall(22, 40), [5, -5], options);
      isStopping = true;
      expect(problemOf(measureLevels(field, [5, -5])).code).toBe('STOPPED');
      isStopping = false;
      expect(valueOf(measureLevels(field, [5, -5]))).toEqual(levelsOf(fullBall(22, 40), [5, -5]));
    }
  });
});

it('progress never falls back, alone and with a crew', () => {
  for (const crew of [undefined, ...crews]) {
    const told: number[] = [];
    levelsOf(fullBall(40, 60), [8, -8], {
      voxelMm: 0.6,
      onProgress: (share) => told.push(share),
      ...(crew ? { crew } : {}),
    });
    expect(told.length).toBeGreaterThan(5);
    expect(told[0]).toBeGreaterThanOrEqual(0);
    expect(told.at(-1)).toBeLessThanOrEqual(1);
    told.forEach((share, i) => expect(share).toBeGreaterThanOrEqual(told[i - 1] ?? 0));
  }
});

it('times of the stages: one row a thread, none negative', () => {
  const rows: number[][] = [];
  levelsOf(fullBall(16, 24), [3], { crew: crews[1]!, onTimings: (_kind, times) => rows.push([...times]) });
  expect(rows.length).toBeGreaterThanOrEqual(2);
  for (const row of rows) {
    expect(row.length % 3).toBe(0);
    expect(row.every((ms) => ms >= 0)).toBe(true);
    expect(row.some((ms) => ms > 0)).toBe(true);
  }
});

it('helpers that cannot start are done without', () => {
  const crew = startCrew(3, pathToFileURL('/no/such/helper.js'));
  expect(crew.helpers).toBe(0);
  const ball = fullBall(20, 24);
  expect(levelsOf(ball, [4], { crew })).toEqual(levelsOf(ball, [4]));
  crew.end();
});

it('a chain that is not closed is told, not measured', () => {
  const { positions, triangles } = box([44, 40, 30]);
  const open = { positions, triangles: triangles.slice(6) };
  const field = buildField(open, boundsOf(open), { voxelMm: 1, levelsMm: [4] });
  expect(field.ok).toBe(false);
  if (!field.ok) expect(field.problem).toMatchObject({ code: 'SELF_INTERSECT', values: { part: 'layers' } });
});
