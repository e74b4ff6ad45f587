import { describe, expect, it } from 'vitest';
import {
  ladderBench,
  measureLadders,
  openMoldBench,
  planMold,
  rubberAt,
  siliconeAt,
  type KnownRungs,
  type LadderOfType,
  type LadderWishes,
  type MoldBench,
  type SizeOptions,
} from '../../src/plan';
import { expectClose } from '../support/close';
import { benchOf } from '../support/moldBench';
import { BALL } from '../support/moldSamples';
import { ballMm3 } from '../support/moldShapes';
import { problemOf, valueOf } from '../support/outcome';
import { sampleScan } from '../support/samples';

const laddersOn = (bench: MoldBench, wishes: LadderWishes): LadderOfType[] =>
  valueOf(measureLadders(ladderBench(bench), wishes));
const ladderOn = (bench: MoldBench, wishes: LadderWishes): LadderOfType => laddersOn(bench, wishes)[0]!;

describe('a skin on a free ball of radius 50: closed form', () => {
  const FREE = { base: 'closed', parts: '2', pull: '+z' };
  const ladder = ladderOn(benchOf(BALL), { skin: FREE });

  it('has rungs from the least to the most thickness, the usual one among them', () => {
    const mms = ladder.rungs.map(({ thicknessMm }) => thicknessMm);
    expect([mms[0], mms.at(-1)]).toEqual([1, 40]);
    expect(mms).toContain(6);
    expect(mms.length).toBeGreaterThanOrEqual(8);
  });

  it.each([1, 1.5, 2, 4.5, 8, 12.5, 18, 26, 35])('tells %d mm to a thousandth, within its range', (mm) => {
    const { rubberCm3 } = rubberAt(ladder, mm)!;
    const exact = (ballMm3(50 + mm) - ballMm3(50)) / 1000;
    expectClose(rubberCm3.value, exact, 1e-3, 'rubber');
    expect(rubberCm3.low).toBeLessThanOrEqual(exact);
    expect(rubberCm3.high).toBeGreaterThanOrEqual(exact);
  });

  it('weighs it as the mold itself does, coat by coat', () => {
    const silicone = { densityKgM3: 1100, kits: [{ massKg: 1.1, price: 30 }] };
    const told = valueOf(siliconeAt(ladder, 5, { silicone, work: { scaleStepG: 0.1 } }));
    const ask = {
      type: 'skin',
      settings: { ...FREE, skinMm: 5 },
      silicone,
      work: { scaleStepG: 0.1 },
    } as const;
    const mold = valueOf(planMold(benchOf(BALL), ask));
    expect(told.pours.map(({ name }) => name)).toEqual(mold.silicone.pours.map(({ name }) => name));
    expectClose(told.totalG, mold.silicone.totalG, 3e-3, 'grams in all');
    expect(told.purchase?.kits).toEqual(mold.silicone.purchase?.kits);
  });

  it('tells nothing beyond its ends', () => {
    expect(rubberAt(ladder, 40.5)).toBeUndefined();
    const problem = problemOf(siliconeAt(ladder, 0.5, { silicone: {}, work: {} }));
    expect(problem).toMatchObject({ code: 'INPUT_OUT_OF_BOUNDS', values: { low: 1, high: 40 } });
  });
});

const SAMPLES: readonly [string, SizeOptions][] = [
  ['quay-troll-scan.stl', { taped: [{ along: 'tall', lengthMm: 290.85 }], up: '+y' }],
  ['lighthouse-hand-scan.stl', { fileUnit: 'mm', up: '+z' }],
];

describe.each(SAMPLES)('%s between the rungs, against molds measured there', (file, options) => {
  const { bench } = valueOf(openMoldBench(sampleScan(file), options));
  const fields = [...bench.fields];
  const ladders = laddersOn(bench, { block: {}, skin: {}, blanket: {} });

  it('leaves the fields of the molds as they were', () => expect([...bench.fields]).toEqual(fields));

  it.each([
    ['block', 14],
    ['block', 65],
    ['skin', 1.5],
    ['skin', 8],
    ['skin', 18],
    ['blanket', 12],
    ['blanket', 35],
  ] as const)('%s of %d mm: to two thousandths, within its range', (type, mm) => {
    const ladder = ladders.find((one) => one.type === type)!;
    const { rubberCm3 } = rubberAt(ladder, mm)!;
    const exact = valueOf(planMold(bench, { type, settings: { [ladder.of]: mm } })).siliconeCm3.value;
    expectClose(rubberCm3.value, exact, 2e-3, 'rubber');
    expect(rubberCm3.low).toBeLessThanOrEqual(exact);
    expect(rubberCm3.high).toBeGreaterThanOrEqual(exact);
  });

  it('takes more the thicker it is, at every half millimeter', () => {
    for (const ladder of ladders) {
      const [low, high] = [ladder.rungs[0]!.thicknessMm, ladder.rungs.at(-1)!.thicknessMm];
      let before = 0;
      for (let mm = low; mm <= high; mm += 0.5) {
        const { value } = rubberAt(ladder, mm)!.rubberCm3;
        expect(value).toBeGreaterThan(before);
        before = value;
      }
    }
  });
});

describe('a ladder that stands aside', () => {
  it('goes on where it was: what was measured is not measured again', () => {
    const own = ladderBench(benchOf(BALL));
    const known: KnownRungs = new Map();
    let asked = 0;
    const stopping = { ...own, options: { ...own.options, shouldStop: () => ++asked > 5 } };
    expect(problemOf(measureLadders(stopping, { block: {} }, known)).code).toBe('STOPPED');
    expect(known.size).toBe(5);
    const before = [...known];
    valueOf(measureLadders(own, { block: {} }, known));
    expect([...known].slice(0, 5)).toEqual(before);
    expect(known.size).toBeGreaterThan(8);
  });

  it('leaves out a type that does not fit', () => {
    const wishes = { block: { shape: 'round' }, skin: { skinMm: 3, pull: 'down' } };
    expect(laddersOn(benchOf(BALL), wishes)).toEqual([]);
  });
});
