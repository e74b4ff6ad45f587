import { describe, expect, it } from 'vitest';
import { planPour, sizeScan, type PourInputs } from '../../src/plan';
import { expectClose } from '../support/close';
import { between, lcg } from '../support/lcg';
import { valueOf } from '../support/outcome';
import { sampleScan } from '../support/samples';

const given = (value: number): { value: number; from: 'given' } => ({ value, from: 'given' });
const BASE: PourInputs = {
  cavity: { volumeCm3: given(5000) },
  freeRiseKgM3: { value: 96, from: 'data-sheet' },
  ratio: { a: 52, b: 100, by: 'mass' },
};
const SEED = 90210;

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

describe('from a cavity to the cup', () => {
  it('a measured scan goes in with its own range', () => {
    const size = valueOf(sizeScan(sampleScan('quay-troll-scan.stl'), { up: '+y', fileUnit: 'in' }));
    const pour = valueOf(planPour({ ...BASE, cavity: { size } }));
    expect(pour.cavityCm3).toMatchObject({
      value: size.volumeCm3.value,
      low: size.volumeCm3.low,
      high: size.volumeCm3.high,
      from: 'scanned',
    });
  });

  it('a wider range of the volume makes a wider range of the mix, and the same mix', () => {
    const at = (half: number) =>
      valueOf(
        planPour({
          ...BASE,
          freeRiseKgM3: { value: 96, from: 'cup-test' },
          cavity: { volumeCm3: { value: 5000, low: 5000 - half, high: 5000 + half, from: 'scanned' } },
        }),
      ).batch;
    const [narrow, wide] = [at(10), at(800)];
    expect(wide.mixedG).toBe(narrow.mixedG);
    expect(wide.mixedRangeG[1] - wide.mixedRangeG[0]).toBeGreaterThan(
      narrow.mixedRangeG[1] - narrow.mixedRangeG[0],
    );
  });

  it('a volume without a range gets the 1.5 % of the rules, twice wide at 95 of 100 (1.96, normal distribution)', () => {
    const { cavityCm3 } = valueOf(planPour(BASE));
    expectClose(cavityCm3.high - 5000, 1.96 * 0.015 * 5000, 1e-12);
    expectClose(5000 - cavityCm3.low, 1.96 * 0.015 * 5000, 1e-12);
  });
});

describe('laws', () => {
  it(`2 000 sensible pours, seed ${SEED}: A + B is the total, and the grams are multiples of the scale's step`, () => {
    const random = lcg(SEED);
    for (let i = 0; i < 2000; i++) {
      const stepG = [0.01, 0.1, 1, 5][Math.floor(between(random, 0, 4))]!;
      const pour = planPour({
        cavity: { volumeCm3: given(between(random, 500, 50_000)) },
        freeRiseKgM3: given(between(random, 40, 400)),
        ratio: { a: between(random, 20, 200), b: 100, by: 'mass' },
        packFactor: given(between(random, 1.05, 1.9)),
        scaleStepG: given(stepG),
      });
      if (!pour.ok) throw new Error(`pour ${i}: ${JSON.stringify(pour.problem)}`);
      const { partAG, partBG, totalG } = pour.value.batch;
      expectClose(partAG + partBG, totalG, 1e-12, `pour ${i}`);
      for (const grams of [partAG, partBG])
        expect(Math.abs(grams / stepG - Math.round(grams / stepG)), `pour ${i}`).toBeLessThan(1e-6);
    }
  });

  it('more pack never means less mass, nor more chance of a short fill', () => {
    let [lastG, lastChance] = [0, 1];
    for (let pack = 1.02; pack < 2; pack += 0.02) {
      const { batch } = valueOf(planPour({ ...BASE, packFactor: given(pack) }));
      expect(batch.totalG, `pack ${pack}`).toBeGreaterThanOrEqual(lastG);
      expect(batch.mixedG, `pack ${pack}`).toBeGreaterThan(lastG === 0 ? 0 : lastG - batch.stepG);
      expect(batch.shortFillChance).toBeLessThanOrEqual(lastChance);
      [lastG, lastChance] = [batch.totalG, batch.shortFillChance];
    }
  });

  it('a larger cavity, a denser foam and a riser never mean less mass', () => {
    const massOf = (change: Partial<PourInputs>): number =>
      valueOf(planPour({ ...BASE, ...change })).batch.mixedG;
    expect(massOf({ cavity: { volumeCm3: given(5001) } })).toBeGreaterThan(massOf({}));
    expect(massOf({ freeRiseKgM3: { value: 96.1, from: 'data-sheet' } })).toBeGreaterThan(massOf({}));
    expect(massOf({ riserCm3: given(50) })).toBeGreaterThan(massOf({}));
  });
});

describe('whatever goes in, no number that is not one comes out', () => {
  const WILD = [
    NaN,
    Infinity,
    -Infinity,
    0,
    -0,
    -1,
    1e-300,
    1e300,
    Number.MAX_VALUE,
    Number.MIN_VALUE,
    1,
    0.5,
    100,
    5000,
  ];
  it(`20 000 wild calls, seed ${SEED + 1}: an answer of finite numbers, or a problem`, () => {
    const random = lcg(SEED + 1);
    const pick = (): number => WILD[Math.floor(between(random, 0, WILD.length))]!;
    const maybe = (key: string): object => (random() < 0.3 ? { [key]: given(pick()) } : {});
    let answered = 0;
    for (let i = 0; i < 20_000; i++) {
      const inputs = {
        cavity: { volumeCm3: given(random() < 0.5 ? 5000 : pick()) },
        freeRiseKgM3: given(random() < 0.5 ? 96 : pick()),
        ratio:
          random() < 0.7
            ? BASE.ratio
            : { a: pick(), b: pick(), by: random() < 0.5 ? ('mass' as const) : ('volume' as const) },
        ...maybe('packFactor'),
        ...maybe('riserCm3'),
        ...maybe('residueG'),
        ...maybe('ventsG'),
        ...maybe('gasLossShare'),
        ...maybe('scaleStepG'),
        ...maybe('liquidKgM3'),
        ...maybe('shortFillChance'),
        ...maybe('minFillKgM3'),
        ...maybe('overpackShare'),
      } as PourInputs;
      const pour = planPour(inputs);
      if (!pour.ok) continue;
      answered++;
      // The inputs are handed back as they came; everything else is ours.
      for (const x of numbersIn(pour.value))
        if (!Number.isFinite(x))
          throw new Error(`call ${i}: ${JSON.stringify(inputs)} gave ${JSON.stringify(pour.value)}`);
    }
    expect(answered).toBeGreaterThan(100);
  });
});
