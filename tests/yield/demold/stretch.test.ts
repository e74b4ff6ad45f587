import { describe, expect, it } from 'vitest';
import {
  allowedStretch,
  gentModulusMPa,
  lipStressMPa,
  pullForceN,
  slitLengthMm,
  stretchNeeded,
} from '../../../src/yield';
import { expectClose } from '../../support/close';
import { between, lcg } from '../../support/lcg';
import { problemOf, valueOf } from '../../support/outcome';
import { expectPrinted } from '../../support/printed';

describe('how far the rubber must stretch', () => {
  const stretch = (widestMm: number, tightestMm: number, squash?: number): number =>
    valueOf(stretchNeeded({ widestMm, tightestMm, ...(squash === undefined ? {} : { squash }) }));

  it('580 mm through 380 mm: 0.526 for a hard casting, 0.221 for foam squashed by a fifth', () => {
    expectPrinted(stretch(580, 380, 0), '0.526');
    expectPrinted(stretch(580, 380, 0.2), '0.221');
    expectPrinted(stretch(580, 380), '0.221');
  });

  it('a bulb of r 40 through a mouth of r 30: 1/3 and 1/15; through a neck of r 15: 5/3 and 17/15', () => {
    const girth = (radiusMm: number): number => 2 * Math.PI * radiusMm;
    expectPrinted(girth(40), '251.33');
    expectPrinted(girth(30), '188.50');
    expectPrinted(girth(15), '94.25');
    expectClose(stretch(girth(40), girth(30), 0), 1 / 3, 1e-12);
    expectClose(stretch(girth(40), girth(30), 0.2), 1 / 15, 1e-12);
    expectClose(stretch(girth(40), girth(15), 0), 5 / 3, 1e-12);
    expectClose(stretch(girth(40), girth(15), 0.2), 17 / 15, 1e-12);
  });

  it('what is narrower than its way out needs less than none', () => {
    expect(stretch(380, 580, 0)).toBeLessThan(0);
    expect(stretch(400, 380, 0.2)).toBeLessThan(0);
  });

  it('the rubber is let a third of what it bears: 1 when not known, 0.467 to 2.267 over the rubbers there are', () => {
    const assumed = valueOf(allowedStretch());
    expect(assumed.from).toBe('assumed');
    expectClose(assumed.value, 1, 1e-12);
    expectPrinted(assumed.low, '0.467');
    expectPrinted(assumed.high, '2.267');
    const given = valueOf(allowedStretch({ elongationAtBreak: 4.5 }));
    expect(given.from).toBe('given');
    for (const share of [given.low, given.value, given.high]) expectClose(share, 1.5, 1e-12);
  });
});

describe('how long a slit helps', () => {
  const slit = (allow: number, squash: number): number =>
    valueOf(slitLengthMm({ widestMm: 580, tightestMm: 380, allow, squash }));

  it('580 mm through 380 mm: 11.7 mm with 15 % of stretch and foam that gives a fifth, 33.1 mm with 30 % and a hard casting', () => {
    expectPrinted(slit(0.15, 0.2), '11.7');
    expectPrinted(slit(0.3, 0), '33.1');
  });

  it('no slit where the rubber stretches enough', () => {
    expect(slit(0.6, 0)).toBe(0);
    expect(slit(0.222, 0.2)).toBe(0);
  });

  it('with the slit cut, the girth and its two edges stretch by just what is allowed (random, seed 55)', () => {
    const random = lcg(55);
    let cut = 0;
    for (let round = 0; round < 200; round += 1) {
      const passage = {
        widestMm: between(random, 100, 900),
        tightestMm: between(random, 60, 600),
        squash: between(random, 0, 0.35),
      };
      const allow = between(random, 0, 1);
      const lengthMm = valueOf(slitLengthMm({ ...passage, allow }));
      const opened = { ...passage, tightestMm: passage.tightestMm + 2 * lengthMm };
      const needed = valueOf(stretchNeeded(opened));
      if (lengthMm > 0) expectClose(1 + needed, 1 + allow, 1e-12, `seed 55, round ${round}`);
      else expect(needed, `seed 55, round ${round}`).toBeLessThanOrEqual(allow);
      cut += lengthMm > 0 ? 1 : 0;
    }
    expect(cut).toBeGreaterThan(20);
    expect(cut).toBeLessThan(180);
  });
});

describe('how hard the rubber pulls', () => {
  it.each([
    [5, '0.278'],
    [10, '0.413'],
    [20, '0.732'],
    [30, '1.142'],
    [40, '1.690'],
  ])('Shore A %d is a modulus of %s MPa (Gent 1958, from memory)', (shoreA, mPa) => {
    expectPrinted(valueOf(gentModulusMPa({ shoreA })), mPa);
  });

  it('Shore A 20 stretched to 1.526 pulls with 0.268 MPa of its first section (neo-Hookean)', () => {
    const modulusMPa = valueOf(gentModulusMPa({ shoreA: 20 }));
    expectPrinted(valueOf(lipStressMPa({ modulusMPa, stretchShare: 0.526 })), '0.268');
  });

  it('stretched a little, it pulls as Hooke says: E times the stretch', () => {
    // The next term of the series is stretch itself: 1e-4 of it.
    expectClose(valueOf(lipStressMPa({ modulusMPa: 2, stretchShare: 1e-4 })), 2e-4, 1.1e-4);
  });

  it('a lip of 8 mm and 380 mm around: stress times 3040 mm2; not stretched, nothing', () => {
    const lip = { shoreA: 20, lipMm: 8, lipGirthMm: 380 };
    const e = (0.0981 * (56 + 7.62336 * 20)) / (0.137505 * (254 - 2.54 * 20));
    const expectedN = (e / 3) * (1.526 - 1.526 ** -2) * 8 * 380;
    expectClose(valueOf(pullForceN({ ...lip, stretchShare: 0.526 })), expectedN, 1e-12);
    expect(valueOf(pullForceN({ ...lip, stretchShare: 0 }))).toBe(0);
    expect(valueOf(pullForceN({ ...lip, stretchShare: -0.2 }))).toBe(0);
  });
});

describe('what is no girth, rubber or lip is refused by name', () => {
  const passage = { widestMm: 580, tightestMm: 380 };
  it.each([
    ['no girth', () => stretchNeeded({ ...passage, tightestMm: 0 }), 'tightestMm'],
    ['a girth that is no number', () => stretchNeeded({ ...passage, widestMm: Number.NaN }), 'widestMm'],
    ['squashed to nothing', () => stretchNeeded({ ...passage, squash: 1 }), 'squash'],
    ['300 for 300 %', () => allowedStretch({ elongationAtBreak: 300 }), 'elongationAtBreak'],
    ['allowed less than none', () => slitLengthMm({ ...passage, allow: -0.1 }), 'allow'],
    ['Shore A of a stone', () => gentModulusMPa({ shoreA: 100 }), 'shoreA'],
    ['no modulus', () => lipStressMPa({ modulusMPa: 0, stretchShare: 1 }), 'modulusMPa'],
    ['shrunk to nothing', () => lipStressMPa({ modulusMPa: 1, stretchShare: -2 }), 'stretchShare'],
    ['no lip', () => pullForceN({ shoreA: 20, stretchShare: 1, lipMm: 0, lipGirthMm: 380 }), 'lipMm'],
    [
      'no girth of the lip',
      () => pullForceN({ shoreA: 20, stretchShare: 1, lipMm: 8, lipGirthMm: 0 }),
      'lipGirthMm',
    ],
  ])('%s', (_, call, input) => {
    expect(problemOf<unknown>(call()).values.input).toBe(input);
  });
});
