import { afterAll, describe, expect, it } from 'vitest';
import {
  MOLD_TYPES,
  moldType,
  moldWork,
  readPull,
  settleMold,
  type MoldParameter,
  type MoldWish,
} from '../../../src/geometry';
import { say } from '../../../src/words/say';
import { forgetMolds, moldOf, stood } from '../../support/moldOf';
import { BALL, BOX } from '../../support/moldSamples';
import { problemOf, valueOf } from '../../support/outcome';

afterAll(forgetMolds);

/** Wrong for the kind of parameter, whatever its range. */
const WRONG: Readonly<Record<MoldParameter['kind'], readonly (number | string)[]>> = {
  length: [NaN, Infinity, -Infinity, -1, 1e9, '6', '', 'thick'],
  height: [NaN, Infinity, -Infinity, -1, 1e9, '6', '', 'high'],
  angle: [NaN, Infinity, -Infinity, -1, 90, '2'],
  count: [NaN, Infinity, -1, 1.5, 1e9, '2'],
  choice: [NaN, Infinity, -1, 3, '', 'none of them', 'OPEN'],
  pull: [
    NaN,
    Infinity,
    -1,
    '',
    'up',
    '+w',
    '1,2',
    '1,2,3,4',
    '0,0,0',
    'NaN,0,1',
    'Infinity,0,1',
    '1,,1',
    '1e400,0,1',
    // What every object has by these names is no direction.
    'constructor',
    '__proto__',
    'toString',
  ],
};

describe.each(MOLD_TYPES.map((type) => [type.title, type] as const))('%s', (_, type) => {
  it('takes its own defaults, all of them within their own range, each with its source', () => {
    const settings = valueOf(settleMold(type, {}));
    expect(Object.keys(settings)).toEqual(type.parameters.map(({ key }) => key));
    expect(valueOf(settleMold(type, settings))).toEqual(settings);
    for (const { from, label, flag } of type.parameters) {
      expect(from.length).toBeGreaterThan(5);
      expect(label).not.toBe('');
      expect(flag).toMatch(/^[a-z-]+$/);
    }
    expect(new Set(type.parameters.map(({ flag }) => flag)).size).toBe(type.parameters.length);
  });

  it('takes both ends of every range, and nothing beyond', () => {
    for (const { key, low, high, kind } of type.parameters) {
      if (low === undefined || high === undefined) continue;
      for (const value of [low, high]) expect(valueOf(settleMold(type, { [key]: value }))[key]).toBe(value);
      const step = kind === 'count' ? 1 : 1e-9 * Math.max(1, high);
      for (const value of [low - step, high + step])
        expect(problemOf(settleMold(type, { [key]: value })).code, `${key} ${value}`).toBe('MOLD_PARAMETER');
    }
  });

  it('refuses what is no number, endless, negative, or a word, by the name of the parameter', () => {
    for (const { key, kind, label } of type.parameters)
      for (const value of WRONG[kind]) {
        const problem = problemOf(settleMold(type, { [key]: value }));
        expect(problem, `${key} = ${value}`).toMatchObject({ code: 'MOLD_PARAMETER', status: 'stop' });
        expect(problem.values).toMatchObject({ key, label });
        const { text, hint } = say(problem);
        expect(text + hint).not.toMatch(/undefined|\[object/);
        expect(hint).toMatch(/^Give .+\.$/);
      }
  });

  it('refuses a parameter of another type, or of none, and says what it has', () => {
    const foreign = MOLD_TYPES.flatMap(({ parameters }) => parameters)
      .map(({ key }) => key)
      .filter((key) => type.parameters.every((p) => p.key !== key));
    for (const key of [...foreign, 'wall', 'SkinMm', '__proto__x', '']) {
      const problem = problemOf(settleMold(type, { [key]: 5 }));
      expect(problem.code, key).toBe('MOLD_PARAMETER_FOREIGN');
      expect(say(problem).hint).toContain(type.parameters[1]!.label.toLowerCase());
    }
    expect(settleMold(type, { nothing: undefined }).ok).toBe(true);
  });
});

describe('a parting plane of a block in two', () => {
  const asked = (partingMm: number, mesh = BOX): ReturnType<typeof block> =>
    block({ parts: '2', partingMm }, mesh);
  const block = (wish: MoldWish, mesh: typeof BOX) => {
    const type = moldType('block');
    return moldWork('block').build({ sculpt: stood(mesh) }, valueOf(settleMold(type, wish)));
  };

  it('at or over the top of the sculpt is refused, and what would fit is said', () => {
    for (const partingMm of [50, 50.001, 4999]) {
      const problem = problemOf(asked(partingMm));
      expect(problem).toMatchObject({ code: 'PARTING_OUTSIDE', values: { partingMm } });
      expect(Number(problem.values.tallMm)).toBeCloseTo(50, 9);
    }
  });

  it('just under the top, or just over the board, parts it', () => {
    for (const partingMm of [0.001, 49.999]) {
      const { rubber, rubberMm3 } = valueOf(asked(partingMm));
      for (const { volumeMm3 } of rubber) expect(volumeMm3).toBeGreaterThan(0);
      expect(rubberMm3).toBeCloseTo(rubber[0]!.volumeMm3 + rubber[1]!.volumeMm3, 6);
    }
  });

  it('0 means half its height, and does not matter to a block in one', () => {
    expect(valueOf(asked(0, BALL)).partingOverMm).toBeCloseTo(50, 2);
    expect(moldOf(BOX, 'block', { parts: '1', partingMm: 4999 }).partingOverMm).toBeUndefined();
  });
});

describe('a pull in writing', () => {
  it.each([
    ['+x', [1, 0, 0]],
    ['x', [1, 0, 0]],
    ['-y', [0, -1, 0]],
    ['z', [0, 0, 1]],
    ['0,0,-7', [0, 0, -1]],
    [' 3, 4 ,0', [0.6, 0.8, 0]],
    ['1e3,0,0', [1, 0, 0]],
  ] as const)('%s', (text, vector) => {
    readPull(text)!.forEach((x, k) => expect(x).toBeCloseTo(vector[k]!, 12));
  });
});
