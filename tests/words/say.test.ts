import { describe, expect, it } from 'vitest';
import {
  CALL_CODES,
  CHECK_CODES,
  finding,
  MESH_CODES,
  MOLD_CODES,
  OPENING_CODES,
  PLAN_CODES,
  POUR_CODES,
  SILICONE_CODES,
  WARMTH_CODES,
  YIELD_CODES,
  type Code,
  type Problem,
} from '../../src/problem';
import { hasWords, say } from '../../src/words/say';

/** Codes of the contract that no reader or measure gives yet: checks of a later stage. */
const NOT_EMITTED_YET: readonly Code[] = [
  'NORMAL_MISMATCH',
  'REPAIRED',
  'SLIVERS',
  'T_JUNCTION',
  'WINDING_CONFLICT',
];

const EMITTED = MESH_CODES.filter((code) => !NOT_EMITTED_YET.includes(code));

describe('every code that can come up has its sentence', () => {
  it.each([
    ...EMITTED,
    ...YIELD_CODES,
    ...PLAN_CODES,
    ...MOLD_CODES,
    ...SILICONE_CODES,
    ...CHECK_CODES,
    ...WARMTH_CODES,
    ...POUR_CODES,
    ...OPENING_CODES,
    ...CALL_CODES,
  ])('%s', (code) => {
    expect(hasWords(code)).toBe(true);
  });

  it('the codes that have none are those no part of the program gives: the source names them in codes.ts only', () => {
    const sources = import.meta.glob<string>('../../src/**/*.ts', {
      query: '?raw',
      import: 'default',
      eager: true,
    });
    const emitting = Object.entries(sources).filter(
      ([path]) =>
        !path.includes('/words/') && !/\/(codes|meshCodes)\.ts$/.test(path) && !path.endsWith('/exit.ts'),
    );
    expect(emitting.length).toBeGreaterThan(40);
    for (const code of NOT_EMITTED_YET) {
      const where = emitting.filter(([, text]) => text.includes(`'${code}'`)).map(([path]) => path);
      expect(where, code).toEqual([]);
    }
  });

  it('an emitted code without a sentence would be found: every code in quotes in the source has words', () => {
    const sources = import.meta.glob<string>(
      '../../src/{geometry,plan,yield,checks,cli,job,worker}/**/*.ts',
      {
        query: '?raw',
        import: 'default',
        eager: true,
      },
    );
    const all = new Set<string>([
      ...MESH_CODES,
      ...YIELD_CODES,
      ...PLAN_CODES,
      ...MOLD_CODES,
      ...SILICONE_CODES,
      ...CHECK_CODES,
      ...WARMTH_CODES,
      ...POUR_CODES,
      ...OPENING_CODES,
      ...CALL_CODES,
    ]);
    for (const [path, text] of Object.entries(sources)) {
      for (const [, code] of text.matchAll(/'([A-Z][A-Z_]{3,})'/g))
        if (all.has(code!)) expect(hasWords(code!), `${code} in ${path}`).toBe(true);
    }
  });
});

/** Values as the program gives them; more keys than one code needs do no harm. */
const VALUES: Problem['values'] = {
  count: 2,
  part: 'holes',
  pieces: 3,
  openEdges: 12,
  oneSidedEdges: 4,
  collapsed: 5,
  cancelled: 0,
  doubledCm3: 1.5,
  negativeCm3: 0,
  effectCm3: 2.5,
  envelopeCm3: 400,
  hollowCm3: 200,
  doubtShare: 0.05,
  distanceMm: 250_000,
  longestMm: 12,
  thinnestMm: 0.4,
  outsideMm: 2,
  stopMm: 6,
  lookMm: 10,
  fieldCm3: 4430,
  differenceCm3: -6,
  voxelMm: 1,
  voxels: 8.5e12,
  smallestMm: 0.28,
  largestMm: 2.6,
  unit: 'mm',
  by: 'tall',
  scaleBy: 'file unit',
  share: 0.03,
  holdsCm3: 45,
  wideMm: 30,
  deepMm: 20,
  tallMm: 10,
  areaCm2: 98.8,
  largestLengthMm: 353,
  flatnessMm: 0.4,
  format: 'step',
  known: 'STL, OBJ',
  encoding: 'UTF-16',
  what: 'a zip archive',
  said: 'OBJ',
  is: 'STL',
  expected: 'facet',
  text: 'here',
  limit: 1e8,
  index: 9,
  vertices: 8,
  corners: 5,
  bytes: 90,
  expectedBytes: 134,
  facetsSaid: 1,
  facetsPresent: 0,
  tallUnits: 11.45,
  wideUnits: 10.4,
  deepUnits: 9,
  topMm: 10,
  topUnits: 10,
  keptCm3: 300,
  perMmCm3: 12,
  volumeCm3: 50,
  doubtCm3: 20,
  longestLoopMm: 300,
  longestLoopShare: 0.4,
  triedMm: 0.2,
  cornersMoved: 12,
  meanMoveMm: 0.01,
  toleranceMm: 0.1,
  hint: 'See --help.',
  file: 'a.stl',
  why: 'it is not there',
  how: 'encrypted',
  ratio: 900,
  name: 'Foam',
};

describe('a sentence and a hint, whole and free of holes', () => {
  it.each([...EMITTED, ...PLAN_CODES, ...CALL_CODES])('%s', (code) => {
    for (const part of [
      'triangles',
      'copies',
      'depth',
      'bytes',
      'entries',
      'ratio',
      'twice',
      'plain',
      'unnamed',
      'model',
      'support',
      'packed',
      'xml',
      'strips',
      'extension',
      'count',
      'from zero',
      'work',
      'holes',
      'seams',
      'sheets',
      'loose',
      'turned',
      'one-sided',
      'islands',
      'pieces',
      'void',
      'solid',
      'disagree',
      'unreached',
      'size',
      'specks',
      'filled',
      'hollowed',
    ]) {
      const { text, hint } = say(finding(code, 'look', { ...VALUES, part }));
      for (const words of [text, hint]) {
        expect(words.length, `${code} ${part}`).toBeGreaterThan(2);
        expect(words, `${code} ${part}`).not.toMatch(/undefined|NaN|null|\[object|an unknown amount/);
      }
    }
  });

  it('the place goes first: a line for text, a byte for binary, nothing for a point of the mesh', () => {
    expect(say(finding('BAD_NUMBER', 'stop', VALUES, { line: 7, byte: 90 })).text).toMatch(/^Line 7: /);
    expect(say(finding('BAD_NUMBER', 'stop', VALUES, { byte: 90 })).text).toMatch(/^Byte 90: /);
    expect(say(finding('NOT_CLOSED', 'look', VALUES, { xMm: 1, yMm: 2, zMm: 3 })).text).not.toMatch(
      /^(Line|Byte)/,
    );
  });

  it('a code nobody knows is a mistake of ours and throws', () => {
    expect(() => say({ code: 'UNHEARD_OF' as Code, status: 'stop', values: {} })).toThrow(/expected words/);
  });
});
