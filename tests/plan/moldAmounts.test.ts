import { describe, expect, it } from 'vitest';
import type { Mold, MoldAsk } from '../../src/plan';
import { JACKET_MATERIALS } from '../../src/yield';
import { expectClose } from '../support/close';
import { everyNumber } from '../support/everyNumber';
import { benchOf, moldOn } from '../support/moldBench';
import {
  annulusMm2,
  ballMm3,
  cylinderMm3,
  cylinderOn,
  cylinderWithinMm3,
  draftedMm3,
  mushroomFilledMm3,
  mushroomMm3,
} from '../support/moldShapes';
import { BALL, BOX, MUSHROOM } from '../support/moldSamples';

const ball = benchOf(BALL, { voxelMm: 1.5 });
const mushroom = benchOf(MUSHROOM, { voxelMm: 1.5 });
const box = benchOf(BOX);
const UP = { parts: '1', pull: '+z' };
const PLAIN = { ...UP, flangeMm: 0, keyRadiusMm: 0 };
const FREE = { base: 'closed', parts: '2', pull: '+z' };
const TEN_TO_ONE = { base: 10, catalyst: 1, by: 'mass' } as const;

/** Nothing lost in cups or on the way. */
const LOSSLESS = { wasteShare: 0, cupLossG: 0, scaleStepG: 0.001 };

describe('coats of 1.5 mm on a ball of radius 50, silicone of 1.10 g/mL (elementary geometry)', () => {
  const settings = { ...FREE, firstCoatMm: 1.5, coatMm: 1.5 };
  const { silicone } = moldOn(ball, {
    type: 'skin',
    settings,
    silicone: { densityKgM3: 1100 },
    work: LOSSLESS,
  });

  it('weigh 53.4, 56.6, 59.9 and 63.3 g: later ones take more', () => {
    const coats = silicone.pours.map(({ coat }) => coat!);
    expect(coats.map(({ outerMm }) => outerMm)).toEqual([1.5, 3, 4.5, 6]);
    // Coats between are counted by voxels alone: within 0.2 % of their shell.
    [53.4, 56.6, 59.9, 63.3].forEach((grams, n) =>
      expectClose(coats[n]!.massG, grams, 2e-3, `coat ${n + 1}`),
    );
    coats.forEach(({ massG, outerMm }) =>
      expectClose(massG, (1.1 * (ballMm3(50 + outerMm) - ballMm3(50 + outerMm - 1.5))) / 1000, 2e-3),
    );
  });

  it('and that is what is mixed, coat by coat', () => {
    for (const { coat, order } of silicone.pours) expectClose(order.totalG, coat!.massG, 1e-4);
  });
});

describe('grams', () => {
  const asks: readonly (readonly [string, MoldAsk])[] = [
    ['block in two', { type: 'block', settings: { parts: '2' } }],
    ['brushed skin', { type: 'skin', settings: { ...UP, skinMm: 8 } }],
    ['poured skin', { type: 'blanket', settings: { ...UP, skinMm: 8 } }],
  ];

  it.each(asks)(
    '%s: base and catalyst make the total, ten to one, and no less than the volume weighs',
    (_, ask) => {
      const { silicone, siliconeCm3 } = moldOn(mushroom, {
        ...ask,
        silicone: { ratio: TEN_TO_ONE, densityKgM3: 1180 },
      });
      expectClose(silicone.baseG + silicone.catalystG, silicone.totalG, 1e-9);
      // Rounded to steps of 1 g of catalyst a cup.
      expectClose(silicone.baseG / silicone.catalystG, 10, 0.06);
      const poured = silicone.pours.reduce((sum, { volumeCm3 }) => sum + volumeCm3, 0);
      expectClose(poured, siliconeCm3.value, 1e-9, 'volume of all pours');
      expect(silicone.totalG).toBeGreaterThanOrEqual(1.18 * siliconeCm3.value);
      for (const { order } of silicone.pours) {
        const cups = order.mixes.reduce((sum, mix) => sum + mix.totalG, 0);
        expectClose(cups, order.totalG, 1e-9, 'cups');
      }
      expect(silicone.rangeG[0]).toBeLessThanOrEqual(silicone.totalG);
      expect(silicone.rangeG[1]).toBeGreaterThanOrEqual(silicone.totalG);
    },
  );

  it.each(asks)('%s: waste, what a cup keeps and the density each change the answer', (_, ask) => {
    const totalG = (more: Partial<MoldAsk>): number => moldOn(mushroom, { ...ask, ...more }).silicone.totalG;
    const plain = totalG({ work: LOSSLESS });
    expect(totalG({ work: { ...LOSSLESS, wasteShare: 0.2 } })).toBeGreaterThan(1.19 * plain);
    expect(totalG({ work: { ...LOSSLESS, cupLossG: 25 } })).toBeGreaterThan(plain + 24);
    expectClose(totalG({ work: LOSSLESS, silicone: { densityKgM3: 1320 } }), 1.2 * plain, 1e-4);
  });

  it('of every wall from 3 to 40 mm there is an order, and rounding of a range that is no range does not stop it', () => {
    const exact = benchOf(MUSHROOM);
    for (let wallMm = 3; wallMm <= 40; wallMm += 0.5)
      for (const parts of ['1', '2'])
        expect(
          () => moldOn(exact, { type: 'block', settings: { wallMm, parts } }),
          `${wallMm} mm`,
        ).not.toThrow();
  });

  it('a short pot life takes more cups, a small container too', () => {
    const cups = (more: Partial<MoldAsk>): number =>
      moldOn(ball, { type: 'block', ...more }).silicone.pours.reduce((n, p) => n + p.order.mixes.length, 0);
    expect(cups({ silicone: { potLifeMin: 5 } })).toBeGreaterThan(cups({ silicone: { potLifeMin: 60 } }));
    expect(cups({ work: { containerCm3: 200 } })).toBeGreaterThan(cups({ work: { containerCm3: 5000 } }));
  });
});

describe('the sum by hand beside it', () => {
  it('area times thickness: 188.50 cm3 on the ball that takes 212.02', () => {
    const mold = moldOn(ball, { type: 'skin', settings: FREE });
    expectClose(mold.areaTimesSkinCm3!, 188.5, 5e-4);
    expectClose(mold.siliconeCm3.value, 212.02, 5e-4);
  });

  it('clay that comes out of a poured skin tells the rubber: 2040 g of clay at 1.70 are 1320 g at 1.10', () => {
    const mold = moldOn(mushroom, { type: 'blanket', settings: UP, silicone: { densityKgM3: 1100 } });
    const { massG, rubberPerClay, volumeCm3 } = mold.clay!;
    expectClose(2040 * rubberPerClay.value, 1320, 1e-9);
    expectClose(massG.value * rubberPerClay.value, 1.1 * volumeCm3, 1e-9);
    const risers = mold.shape.rubber.find(({ name }) => name === 'funnel and risers')!.volumeMm3 / 1000;
    expectClose(volumeCm3 + risers, mold.siliconeCm3.value, 1e-9);
  });
});

describe('the range holds the truth where the shape is known and nothing else is in doubt', () => {
  const holds = ({ siliconeCm3: { low, high } }: Mold, truthMm3: number): void => {
    expect(low).toBeLessThanOrEqual(truthMm3 / 1000);
    expect(high).toBeGreaterThanOrEqual(truthMm3 / 1000);
  };

  it.each([1.5, 2, 3])('mushroom of 8 mm, lifted up, voxels of %f mm', (voxelMm) => {
    const bench = benchOf(MUSHROOM, { voxelMm });
    holds(
      moldOn(bench, { type: 'skin', settings: { ...PLAIN, skinMm: 8 } }),
      mushroomFilledMm3(8) - mushroomMm3,
    );
  });

  it.each([1, 2])('cylinder with a draft of 3 degrees, voxels of %f mm', (voxelMm) => {
    const bench = benchOf(cylinderOn(40, 100), { voxelMm });
    const mold = moldOn(bench, { type: 'skin', settings: { ...PLAIN, draftDegrees: 3 } });
    holds(mold, draftedMm3(40, 100, 6, 3) - cylinderMm3(40, 100));
  });

  it.each([25, 40, 100])('cylinder with a flange of %i mm', (flangeMm) => {
    const mold = moldOn(benchOf(cylinderOn(40, 100)), {
      type: 'skin',
      settings: { ...UP, keyRadiusMm: 0, flangeMm },
    });
    holds(mold, cylinderWithinMm3(40, 100, 6) - cylinderMm3(40, 100) + 6 * annulusMm2(46 + flangeMm, 46));
  });
});

describe('around a block of rubber of 1150 kg/m3 while it is liquid (hydrostatics)', () => {
  const settings = { shape: 'straight', wallMm: 15, coverMm: 15, underMm: 15, base: 'closed' };
  const { surroundings } = moldOn(ball, {
    type: 'block',
    settings,
    silicone: { densityKgM3: 1150 },
    sculptMassG: 200,
  });

  it('the foot of a wall 130 high and wide bears rho g h = 1.466 kPa and rho g h^2 w / 2 = 12.39 N, a third up', () => {
    const { wall } = surroundings;
    expectClose(wall!.pressureKPa, (1150 * 9.80665 * 0.13) / 1000, 1e-3);
    expectClose(wall!.forceN, (1150 * 9.80665 * 0.13 ** 3) / 2, 1e-3);
    expectClose(wall!.forceHeightMm, 130 / 3, 1e-3);
  });

  it('a sculpt of 200 g in it is lifted by (rho V - m) g = 3.94 N', () => {
    expectClose(surroundings.floating!.forceN, ((1150 * ballMm3(50)) / 1e9 - 0.2) * 9.80665, 1e-3);
  });

  it('brushed rubber lifts nothing and bears on no wall', () => {
    const brushed = moldOn(ball, { type: 'skin', settings: FREE, sculptMassG: 200 }).surroundings;
    expect([brushed.floating, brushed.wall]).toEqual([undefined, undefined]);
  });
});

describe('what was asked before does not matter', () => {
  it.each([
    ['skin', { skinMm: 14 }],
    ['blanket', { skinMm: 12, jacketMm: 17 }],
    ['skin', { flangeMm: 60 }],
  ] as const)('%s %j after a thinner one is the same as asked first', (type, more) => {
    const worn = benchOf(MUSHROOM);
    moldOn(worn, { type: 'skin', settings: { ...UP, skinMm: 6 } });
    const after = moldOn(worn, { type, settings: { ...UP, ...more } });
    const first = moldOn(benchOf(MUSHROOM), { type, settings: { ...UP, ...more } });
    // Fields of another reach lie on another grid: 0.1 % of the rubber at these voxels.
    expectClose(after.siliconeCm3.value, first.siliconeCm3.value, 2e-3, 'silicone');
    expectClose(after.shape.jacket!.volumeMm3, first.shape.jacket!.volumeMm3, 2e-3, 'jacket');
  });

  it('asked twice it is the same to the last digit', () => {
    const ask = { type: 'skin', settings: { ...UP, skinMm: 7 } } as const;
    const [one, other] = [moldOn(mushroom, ask), moldOn(mushroom, ask)];
    expect(other.siliconeCm3).toEqual(one.siliconeCm3);
    expect(other.shape.jacket).toEqual(one.shape.jacket);
    expect(other.findings).toEqual(one.findings);
  });

  it('a searched pull is kept for the next thickness, and what was said of it, too', () => {
    const bench = benchOf(BALL);
    const settings = { base: 'closed', parts: '2' };
    const [one, other] = [6, 7].map((skinMm) =>
      moldOn(bench, { type: 'skin', settings: { ...settings, skinMm } }),
    );
    expect(other!.shape.undercut!.pull).toEqual(one!.shape.undercut!.pull);
    const codes = ({ findings }: Mold): string[] => findings.map(({ code }) => code);
    expect(codes(other!)).toEqual(codes(one!));
  });
});

describe('nothing in a mold is not a number', () => {
  it.each([
    ['block in one', { type: 'block' }],
    ['block in two', { type: 'block', settings: { parts: '2' } }],
    ['brushed skin', { type: 'skin', settings: UP }],
    ['brushed skin of one coat', { type: 'skin', settings: { ...UP, skinMm: 1, firstCoatMm: 1 } }],
    [
      'poured skin with drafted jacket and fillers',
      { type: 'blanket', settings: { ...UP, draftDegrees: 5, fill: 'filler' } },
    ],
    ['poured skin without flange, risers and keys', { type: 'blanket', settings: { ...PLAIN, risers: 0 } }],
    ['free skin', { type: 'skin', settings: FREE }],
  ] as const)('%s', (_, ask) => {
    for (const bench of [mushroom, box])
      for (const material of JACKET_MATERIALS.slice(bench === box ? -1 : 0)) {
        const mold = moldOn(bench, {
          ...ask,
          jacketMaterial: material.key,
          silicone: {
            kits: [{ massKg: 1.1, price: 38 }, { massKg: 5.5 }],
            stock: [{ baseKg: 0.2, catalystKg: 0.02 }],
          },
          finish: { paint: { coverageM2: 8, coats: 2 }, bond: { faceCm2: 30 }, openShare: 0.1 },
          castingTempC: 40,
          sculptMassG: 300,
        });
        let count = 0;
        for (const [path, value] of everyNumber(mold)) {
          expect(Number.isFinite(value), `${path} = ${value}`).toBe(true);
          count++;
        }
        expect(count).toBeGreaterThan(100);
        for (const { name, volumeMm3 } of [...mold.shape.rubber, ...mold.shape.clay, ...mold.shape.voids])
          expect(volumeMm3, name).toBeGreaterThanOrEqual(0);
      }
  });
});
