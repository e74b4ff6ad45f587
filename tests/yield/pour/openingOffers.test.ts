import { describe, expect, it } from 'vitest';
import {
  OPENING_VERDICTS,
  openingBand,
  openingOffers,
  openingVerdict,
  ventAir,
  ventsNeeded,
  type HeldFoam,
  type OpeningOffers,
  type OpeningVerdict,
  type TimedPour,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

const HEAD = { sectionCm2: (Math.PI * 20 * 15.5) / 4, castingCm2: 1650 };
const POUR: TimedPour = {
  liquidCm3: 1000,
  withinS: 15,
  mixPaS: 1,
  liquidKgM3: 1070,
  sprueLengthMm: 50,
  headMm: 30,
  vented: true,
};
const hold = (wantedKPa: number): HeldFoam => ({
  sprueLengthMm: 50,
  packFactor: 1.3,
  cavityCm3: 5200,
  riseS: 120,
  foamPaS: 50,
  idealKPa: 37.743,
  wantedKPa,
});

function offers(pour: TimedPour, held?: HeldFoam, head = HEAD): OpeningOffers {
  const band = valueOf(openingBand({ ...head, pour, hold: held }));
  expect(band.isEmpty).toBe(true);
  return valueOf(openingOffers(band, pour, { gaugeKPa: 37.743, hold: held }));
}

/** Series losses of T41, mL/s, by the root as the reference writes it. */
function flowMlS(sprueMm: number): number {
  const area = (Math.PI * (sprueMm / 1000) ** 2) / 4;
  const a = (128 * 0.05) / (Math.PI * (sprueMm / 1000) ** 4);
  const b = (1070 * 1.5) / (2 * area ** 2);
  return (1e6 * (-a + Math.sqrt(a * a + 4 * b * 1070 * 9.80665 * 0.08))) / (2 * b);
}

describe('one word on a chosen opening', () => {
  const judge = (openingMm: number, leastMm?: number): OpeningVerdict =>
    openingVerdict({ openingMm, share: openingMm ** 2 / (200 * 155), mostMm: 39.37, leastMm });

  it('between 20.3 and 39.4 mm it fits, below it is too narrow, above it is too wide, over 10 % of the section far too wide', () => {
    expect([20.2, 20.3, 39.3, 39.4, 55.6, 55.7].map((mm) => judge(mm, 20.3))).toEqual([
      'too narrow to pour in time',
      'fits',
      'fits',
      'wider than advised',
      'wider than advised',
      'far too wide',
    ]);
  });

  it('while the time is not known only the upper side is judged', () => {
    expect([5, 39.3, 39.4, 60].map((mm) => judge(mm))).toEqual([
      'time not checked',
      'time not checked',
      'wider than advised',
      'far too wide',
    ]);
  });

  it('the widths of the band itself fit, in doubles too, and every verdict of the list comes up', () => {
    const { leastMm, mostMm, limits } = valueOf(openingBand({ ...HEAD, pour: POUR }));
    const share = (mm: number): number => mm ** 2 / (200 * 155);
    for (const openingMm of [leastMm!, mostMm])
      expect(openingVerdict({ openingMm, share: share(openingMm), mostMm, leastMm })).toBe('fits');
    const warn = { openingMm: limits.warnMm, share: share(limits.warnMm), mostMm, leastMm };
    expect(openingVerdict(warn)).toBe('wider than advised');
    const all = [judge(10, 20), judge(25, 20), judge(40, 20), judge(80, 20), judge(25)];
    expect([...new Set(all)].sort()).toEqual([...OPENING_VERDICTS].sort());
  });
});

describe('ways out where no single opening suits', () => {
  it('a large mouth with a plug: 37.743 kPa on the 3.227 cm2 of 20.27 mm push with 12.2 N', () => {
    const { plug } = offers(POUR, hold(8.28));
    expectPrinted(plug!.mouthMm, '20.27');
    expectClose(plug!.mouthCm2, (Math.PI * 2.027 ** 2) / 4, 5e-4, 'a width printed to 0.005 of 20');
    expectClose(plug!.forceN, 37.743e3 * plug!.mouthCm2 * 1e-4, 1e-12);
    expectPrinted(plug!.forceN, '12.2');
    expectClose(plug!.likeKg, plug!.forceN / 9.80665, 1e-12);
  });

  it('T41, T45: at the 20.00 mm that hold 8.28 kPa back a liter takes 15.78 s, 0.78 s more than there are', () => {
    const { slower } = offers(POUR, hold(8.28));
    expectPrinted(slower!.neededS, '15.8');
    expectClose(slower!.longerS, slower!.neededS - 15, 1e-12);
    expectClose(slower!.neededS, 1000 / flowMlS(slower!.atMm), 1e-9);
  });

  it.each([8.28, 8, 7.95, 7.9, 30])(
    'under %d kPa of back pressure: as many openings as trying 2, 3 and 4 by hand gives',
    (wantedKPa) => {
      const { openings } = offers(POUR, hold(wantedKPa));
      const flow = (0.3 * 5.2e-3) / 120;
      const oneMm = 1000 * ((128 * 50 * 0.05 * flow) / (Math.PI * 1000 * wantedKPa)) ** 0.25;
      const byHand = [2, 3, 4].find((count) => {
        const mostMm = Math.min(Math.sqrt(1550 / count), oneMm / count ** 0.25);
        return count * flowMlS(mostMm) * 15 >= 1000;
      });
      if (byHand === undefined) expect(openings).toBe('none');
      else expect(openings).toMatchObject({ count: byHand, pouring: byHand });
    },
  );

  it('the two answers both come up: several openings at 7.9 kPa, none at 30 kPa', () => {
    expect(offers(POUR, hold(7.9)).openings).not.toBe('none');
    expect(offers(POUR, hold(30)).openings).toBe('none');
  });

  it('vented and held by area alone, more openings never pour faster (flow grows faster than area): none', () => {
    expect(offers(POUR, undefined, { ...HEAD, sectionCm2: 60 }).openings).toBe('none');
  });

  it('without vents the second opening is left to the air: one of the two pours, and freely', () => {
    // 0.05 Pa s, a head of 400 mm: only the air that comes up holds it back.
    const pour = { ...POUR, mixPaS: 0.05, headMm: 400, vented: false };
    const found = offers(pour, undefined, { ...HEAD, sectionCm2: 70 });
    expect(found.openings).toMatchObject({ count: 2, pouring: 1 });
    if (found.openings === 'none') return;
    expectClose(found.openings.mostMm, Math.sqrt((0.05 * 7000 * 4) / Math.PI / 2), 1e-12);
    expect(found.openings.leastMm).toBeLessThan(found.openings.mostMm);
  });

  it('where the pressure is not known no force is given; where nothing may be open no mix is slow enough', () => {
    const band = valueOf(openingBand({ ...HEAD, pour: POUR, hold: { ...hold(5), sprueLengthMm: 0 } }));
    const found = valueOf(openingOffers(band, POUR));
    expect(found.plug).toBeUndefined();
    expect(found.slower).toBeUndefined();
    const pond = { ...POUR, liquidCm3: 1e7, withinS: 0.1 };
    expect(offers(pond)).toMatchObject({ openings: 'none' });
    expect(offers(pond).plug).toBeUndefined();
  });

  it('refused: a pressure below nothing', () => {
    const band = valueOf(openingBand({ ...HEAD, pour: POUR }));
    expect(problemOf(openingOffers(band, POUR, { gaugeKPa: -1 })).values.input).toBe('gaugeKPa');
  });
});

describe('how many vents the air needs', () => {
  const RISE = { gasCm3: 5200, riseS: 60, peakFlow: 1 };

  it('T46: 7.91 mm2 at 200 Pa are 2.5 holes of 2 mm, so three; two are not enough', () => {
    const two = valueOf(ventsNeeded({ ...RISE, ventMm: 2, ventsPlaced: 2 }));
    expectPrinted(two.areaMm2, '7.91');
    expect(two).toMatchObject({ needed: 3, placed: 2, isEnough: false, ventPressurePa: 200 });
    expect(valueOf(ventsNeeded({ ...RISE, ventMm: 2, ventsPlaced: 3 })).isEnough).toBe(true);
  });

  it('5 L in 60 s at three times the mean flow: 22.8 mm2 is one hole of 5.4 mm or eight of 2 mm (peak: common practice, no source)', () => {
    const needed = (ventMm: number): number =>
      valueOf(ventsNeeded({ gasCm3: 5000, riseS: 60, ventMm, ventsPlaced: 0 })).needed;
    expect([5.4, 2].map(needed)).toEqual([1, 8]);
  });

  it.each([1, 2, 3, 4, 7, 12])('at the pressure that %d vents give, just that many are needed', (vents) => {
    const { pressurePa } = valueOf(ventAir({ ...RISE, vents, ventMm: 2 }));
    const again = ventsNeeded({ ...RISE, ventMm: 2, ventPressurePa: pressurePa, ventsPlaced: vents });
    expect(valueOf(again)).toMatchObject({ needed: vents, isEnough: true });
  });

  it('no air to drive out needs no vent; half a vent, no time and no width are refused', () => {
    expect(valueOf(ventsNeeded({ ...RISE, gasCm3: 0, ventsPlaced: 0 })).needed).toBe(0);
    expect(problemOf(ventsNeeded({ ...RISE, ventsPlaced: 1.5 })).code).toBe('INPUT_NOT_WHOLE');
    expect(problemOf(ventsNeeded({ ...RISE, riseS: 0, ventsPlaced: 1 })).values.input).toBe('riseS');
    expect(problemOf(ventsNeeded({ ...RISE, ventMm: 0, ventsPlaced: 1 })).values.input).toBe('ventMm');
  });
});
