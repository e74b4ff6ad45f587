import { describe, expect, it } from 'vitest';
import { MOLD_TYPES } from '../../src/geometry';
import { planMold, type MoldAsk, type MoldBench } from '../../src/plan';
import { CHECK_CODES, MOLD_CODES, SILICONE_CODES, type Problem } from '../../src/problem';
import { say } from '../../src/words/say';
import { benchOf } from '../support/moldBench';
import { mapPoints } from '../support/meshTools';
import { BALL, BOX, HAND, MUSHROOM, TROLL } from '../support/moldSamples';
import { cylinderOn } from '../support/moldShapes';

/** Uneven on the board by 0.4 mm. */
const JAGGED = mapPoints(cylinderOn(40, 100), ([x, y, z], vertex) => [
  x,
  y,
  z > 1e-9 ? z : 0.4 * (vertex % 2),
]);

const BENCHES = [
  ['ball', benchOf(BALL, { voxelMm: 3 })],
  ['mushroom', benchOf(MUSHROOM, { voxelMm: 3 })],
  ['cylinder on an uneven edge', benchOf(JAGGED, { voxelMm: 3 })],
  ['box', benchOf(BOX, { voxelMm: 3 })],
  ['damaged troll', benchOf(TROLL, { voxelMm: 6 })],
  ['hand', benchOf(HAND, { voxelMm: 5 })],
] as const;

/** Asked in many ways, so that much comes up: nothing known, everything known, tight, wrong. */
const ASKS: readonly Omit<MoldAsk, 'type'>[] = [
  {},
  {
    settings: { parts: '2' },
    silicone: { cure: 'condensation', openedOn: '2020-01-01' },
    facts: { today: '2026-01-01' },
  },
  { settings: { parts: '1' }, silicone: { cure: 'addition', kits: [{ massKg: 1.1, price: 38 }] } },
  { silicone: { kits: [{ massKg: 0.5 }], stock: [{ baseKg: 30, catalystKg: 3 }] }, sculptMassG: 100 },
  {
    silicone: { potLifeMin: 5, mixedViscosityPaS: 60 },
    work: { scaleStepG: 5, degassed: true, containerCm3: 300 },
  },
  { silicone: { potLifeMin: 1 } },
  { silicone: { potLifeMin: 0 } },
  { work: { scaleStepG: 100 } },
  { box: { material: 'foam-board', wallMm: 5 }, castingTempC: 45, measuredShrink: { share: 0.004 } },
  {
    jacketMaterial: 'glass-mat',
    facts: { willPaint: true, paintIsFlexible: false, pigmentShare: 0.06 },
  },
  { settings: { base: 'closed' } },
  { settings: { skinMm: 30 } },
  { settings: { parts: '2', partingMm: 4000 } },
  { settings: { wallMm: NaN } },
];

const said = new Map<string, Problem[]>();
const crashes: string[] = [];

function problemsOf(bench: MoldBench, ask: MoldAsk): readonly Problem[] {
  try {
    const mold = planMold(bench, ask);
    return mold.ok ? mold.value.findings : [mold.problem];
  } catch (error) {
    crashes.push(`${JSON.stringify(ask)}: ${String(error)}`);
    return [];
  }
}

for (const [, bench] of BENCHES)
  for (const { key } of MOLD_TYPES)
    for (const ask of ASKS) {
      // A pull that was said needs no search; one bench searches, for what a search finds to say.
      const isSearched = bench === BENCHES[0][1] && ask.settings === undefined;
      const pull = key === 'block' || isSearched ? {} : { pull: '+y' };
      const problems = problemsOf(bench, { ...ask, type: key, settings: { ...pull, ...ask.settings } });
      for (const problem of problems) said.set(problem.code, [...(said.get(problem.code) ?? []), problem]);
    }

describe('what molds of six sculpts, asked for in fourteen ways, have to say', () => {
  it.each([...said.keys()].sort())('%s is said in whole sentences, with nothing missing', (code) => {
    for (const problem of said.get(code)!) {
      const { text, hint } = say(problem);
      for (const words of [text, hint]) {
        expect(words, JSON.stringify(problem)).not.toMatch(
          /undefined|null|NaN|Infinity|\[object|an unknown amount/,
        );
        expect(words, JSON.stringify(problem)).not.toMatch(/ {2}|\(\)|\s[.,;]/);
      }
      expect(text, JSON.stringify(problem)).toMatch(/[.!?]$/);
      expect(['fine', 'look', 'stop', 'unknown']).toContain(problem.status);
    }
  });

  it('every one of them is answered', () => {
    expect(crashes).toEqual([]);
  });

  it('much of it: of the mold and of the silicone most codes come up', () => {
    const seen = (codes: readonly string[]): number => codes.filter((code) => said.has(code)).length;
    expect(seen(MOLD_CODES)).toBeGreaterThanOrEqual(7);
    expect(seen(SILICONE_CODES)).toBeGreaterThanOrEqual(9);
    expect(seen(CHECK_CODES)).toBeGreaterThanOrEqual(4);
  });
});
