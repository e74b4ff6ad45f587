import { describe, expect, it } from 'vitest';
import { MOLD_TYPES } from '../../src/geometry';
import { openMoldBench, planMold, type MoldAsk } from '../../src/plan';
import type { Problem } from '../../src/problem';
import { say } from '../../src/words/say';
import { everyNumber } from '../support/everyNumber';
import { benchOf, scanOf } from '../support/moldBench';
import { BALL, BOX } from '../support/moldSamples';
import { problemOf } from '../support/outcome';
import { jittered } from '../support/looseCorners';
import { lcg } from '../support/lcg';
import { sphere } from '../support/shapes';

const bench = benchOf(BOX);
const SKIN = { type: 'skin', settings: { parts: '1', pull: '+z' } } as const;

/** What a form or a command could hand on by mistake, past the types. */
const refused = (ask: unknown, on = bench): Problem => {
  const problem = problemOf(planMold(on, ask as MoldAsk));
  const { text, hint } = say(problem);
  expect(`${text} ${hint}`, problem.code).not.toMatch(/undefined|\[object|an unknown amount/);
  expect(problem.status).toBe('stop');
  return problem;
};

describe('a skin thicker than the wall of its box', () => {
  it('is refused, with both thicknesses', () => {
    const problem = refused({ type: 'block', settings: { skinMm: 20, wallMm: 15 } });
    expect(problem).toMatchObject({ code: 'SKIN_OVER_WALL', values: { skinMm: 20, wallMm: 15 } });
    expect(refused({ type: 'block', settings: { skinMm: 12.5 } }).values).toMatchObject({ wallMm: 12 });
  });

  it('a thinner one is refused as a choice that a block does not have', () => {
    expect(refused({ type: 'block', settings: { skinMm: 6 } }).code).toBe('MOLD_PARAMETER_FOREIGN');
    expect(refused({ type: 'block', settings: { skinMm: NaN } }).code).toBe('MOLD_PARAMETER_FOREIGN');
    expect(refused({ type: 'block', settings: { skinMm: 20, wallMm: NaN } }).code).toMatch(/^MOLD_PARAMETER/);
  });
});

describe('parameters of the mold', () => {
  it.each([NaN, Infinity, -Infinity, -5, '6', 'thick', ''])('a thickness of %s', (value) => {
    for (const { key, parameters } of MOLD_TYPES) {
      const thickness =
        parameters.find((p) => p.key === 'skinMm') ?? parameters.find((p) => p.key === 'wallMm')!;
      const problem = refused({ type: key, settings: { [thickness.key]: value } });
      expect(problem).toMatchObject({ code: 'MOLD_PARAMETER', values: { key: thickness.key } });
    }
  });

  it('a parting plane over the top, a parameter of another type, a skin thinner than its first coat', () => {
    expect(refused({ type: 'block', settings: { parts: '2', partingMm: 60 } }).code).toBe('PARTING_OUTSIDE');
    expect(refused({ type: 'skin', settings: { wallMm: 12 } }).code).toBe('MOLD_PARAMETER_FOREIGN');
    expect(refused({ type: 'skin', settings: { skinMm: 1, firstCoatMm: 2 } }).code).toBe('COATS_DO_NOT_FIT');
  });
});

describe('silicone and work: what no cup can hold', () => {
  const wrong: readonly (readonly [what: string, ask: object, input: string])[] = [
    ['pot life of 0', { silicone: { potLifeMin: 0 } }, 'potLifeMin'],
    ['negative pot life', { silicone: { potLifeMin: -3 } }, 'potLifeMin'],
    ['pot life that is no number', { silicone: { potLifeMin: NaN } }, 'potLifeMin'],
    ['endless pot life', { silicone: { potLifeMin: Infinity } }, 'potLifeMin'],
    ['pot life in words', { silicone: { potLifeMin: '30' } }, 'potLifeMin'],
    ['density of 0', { silicone: { densityKgM3: 0 } }, 'densityKgM3'],
    ['density in g/mL', { silicone: { densityKgM3: 1.1 } }, 'densityKgM3'],
    ['density that is no number', { silicone: { densityKgM3: NaN } }, 'densityKgM3'],
    ['no base', { silicone: { ratio: { base: 0, catalyst: 1, by: 'mass' } } }, 'ratioPart'],
    ['no catalyst', { silicone: { ratio: { base: 10, catalyst: 0, by: 'mass' } } }, 'ratioPart'],
    ['negative catalyst', { silicone: { ratio: { base: 10, catalyst: -1, by: 'mass' } } }, 'ratioPart'],
    ['ratio that is no number', { silicone: { ratio: { base: NaN, catalyst: 1, by: 'mass' } } }, 'ratioPart'],
    ['kit of 0 kg', { silicone: { kits: [{ massKg: 0, price: 10 }] } }, 'kitKg'],
    ['kit of negative weight', { silicone: { kits: [{ massKg: -1 }] } }, 'kitKg'],
    ['kit that is no number', { silicone: { kits: [{ massKg: NaN }] } }, 'kitKg'],
    ['endless kit', { silicone: { kits: [{ massKg: Infinity }] } }, 'kitKg'],
    ['kit at a negative price', { silicone: { kits: [{ massKg: 1, price: -1 }] } }, 'kitPrice'],
    ['stock of less than nothing', { silicone: { stock: [{ baseKg: -1, catalystKg: 0 }] } }, 'stockKg'],
    ['stock that is no number', { silicone: { stock: [{ baseKg: NaN, catalystKg: 0 }] } }, 'stockKg'],
    ['negative waste', { work: { wasteShare: -0.1 } }, 'wasteShare'],
    ['waste in percent', { work: { wasteShare: 10 } }, 'wasteShare'],
    ['waste that is no number', { work: { wasteShare: NaN } }, 'wasteShare'],
    ['negative loss in the cup', { work: { cupLossG: -1 } }, 'cupLossG'],
    ['endless loss in the cup', { work: { cupLossG: Infinity } }, 'cupLossG'],
    ['scale with steps of 0', { work: { scaleStepG: 0 } }, 'scaleStepG'],
    ['room that is no number', { work: { roomC: NaN } }, 'roomC'],
    ['room as hot as an oven', { work: { roomC: 180 } }, 'roomC'],
    ['container of 0', { work: { containerCm3: 0 } }, 'containerCm3'],
    ['endless container', { work: { containerCm3: Infinity } }, 'containerCm3'],
    ['sculpt of negative weight', { sculptMassG: -1 }, 'sculptMassG'],
    ['weight of the sculpt that is no number', { sculptMassG: NaN }, 'sculptMassG'],
    ['walls of 0 mm', { box: { wallMm: 0 } }, 'wallMm'],
    ['walls that are no number', { box: { wallMm: NaN } }, 'wallMm'],
    ['casting temperature that is no number', { castingTempC: NaN }, 'castingTempC'],
    ['casting temperature of a furnace', { castingTempC: 900 }, 'castingTempC'],
    ['shrink that is no number', { measuredShrink: { share: NaN } }, 'moldShrinkShare'],
    ['shrink of a half', { measuredShrink: { share: 0.5 } }, 'moldShrinkShare'],
    ['no coverage', { finish: { paint: { coverageM2: 0, coats: 1 } } }, 'coverageM2'],
    ['coats of paint below none', { finish: { paint: { coverageM2: 8, coats: -1 } } }, 'coats'],
    [
      'texture that is no number',
      { finish: { textureFactor: NaN, paint: { coverageM2: 8, coats: 1 } } },
      'textureFactor',
    ],
    ['open share of two', { finish: { openShare: 2 } }, 'openShare'],
    ['bonded face of less than nothing', { finish: { bond: { faceCm2: -4 } } }, 'surfaceCm2'],
    ['negative water in the plaster', { jacketSettings: { waterPerPlaster: -1 } }, 'waterPerPlaster'],
    [
      'water in the plaster that is no number',
      { jacketSettings: { waterPerPlaster: NaN } },
      'waterPerPlaster',
    ],
  ];

  it.each(wrong)('%s', (what, ask) => {
    // A box asks for its walls and for what floats in it, a skin for the rest.
    const base = what.startsWith('walls') || what.includes('sculpt') ? { type: 'block' } : SKIN;
    const problem = refused({ ...base, ...ask });
    expect(problem.code).toMatch(/^(INPUT_|RATIO_|SILICONE_|MIX|POT_LIFE|KITS)/);
  });

  it.each(wrong)('%s: the answer names it', (what, ask, input) => {
    const base = what.startsWith('walls') || what.includes('sculpt') ? { type: 'block' } : SKIN;
    expect(refused({ ...base, ...ask }).values.input).toBe(input);
  });

  it('a pot life that mixing alone uses up', () => {
    expect(refused({ ...SKIN, silicone: { potLifeMin: 3 } }).code).toBe('POT_LIFE_TOO_SHORT');
  });

  it('one cup that loses as much as it holds', () => {
    expect(refused({ ...SKIN, work: { containerCm3: 100, cupLossG: 200 } }).code).toBe('MIXES_TOO_MANY');
  });
});

describe('the scan', () => {
  it('that has no surface takes a block and no skin', () => {
    const strewn = benchOf(jittered(sphere(50, 24, 48), 1, lcg(3)));
    for (const type of ['skin', 'blanket'] as const)
      expect(refused({ type }, strewn).code).toBe('MOLD_NEEDS_SURFACE');
    expect(refused({ type: 'block', settings: { parts: '2' } }, strewn).code).toBe('MOLD_NEEDS_SURFACE');
    const block = planMold(strewn, { type: 'block' });
    expect(block.ok).toBe(true);
    for (const [path, value] of everyNumber(block)) expect(Number.isFinite(value), path).toBe(true);
  });

  it('voxels that are too large or too small for it', () => {
    expect(refused(SKIN, benchOf(BALL, { voxelMm: 30 })).code).toBe('VOXEL_TOO_LARGE');
    expect(refused(SKIN, benchOf(BALL, { voxelMm: 0.02 })).code).toBe('VOXEL_TOO_SMALL');
  });

  it('without a unit there is no mold', () => {
    expect(problemOf(openMoldBench(scanOf(BALL))).code).toBe('SCALE_UNKNOWN');
  });

  it('a stop while the field is built ends it, and the next asking works', () => {
    let stop = true;
    const bench = benchOf(BALL, { shouldStop: () => stop });
    expect(refused(SKIN, bench).code).toBe('STOPPED');
    stop = false;
    expect(planMold(bench, SKIN).ok).toBe(true);
  });
});
