import { describe, expect, it } from 'vitest';
import type { Confounding } from '../../../src/yield/learn/confounded';
import { emptierCorner } from '../../../src/yield/learn/emptierCorner';
import { nextPour } from '../../../src/yield/learn/nextPour';
import { tellApart } from '../../../src/yield/learn/tellApart';
import type { Factor, TriedPour } from '../../../src/yield/learn/triedPour';

/** Distances by Pythagoras in spans of what was tried: here 0.2 of pack and 10 K of mold, each worked out by hand. */
const cool: TriedPour = { no: 1, packFactor: 1.2, moldC: 30, roomC: 15, opening: 'open', skin: 4 };
const warm: TriedPour = { no: 2, packFactor: 1.4, moldC: 40, roomC: 35, opening: 'plug', skin: 4 };

const tangled = (changeNext: Factor, ...others: Factor[]): Confounding => ({
  ...{ verdict: 'cannot-tell', pours: 2, pairs: [], groups: [[...others, changeNext]], still: [] },
  ...{ changeNext, samePack: [] },
});

describe('the emptier corner', () => {
  it('of 30, 35 and 40 C at pack 1.4, 30 is a whole span from either pour, 35 half a one from the second; the room makes no corner', () => {
    const base = { ...warm, opening: 'open', roomC: 15 } as const;
    const tried = [cool, { ...warm, opening: 'open' } as const];
    expect(emptierCorner(tried, base, 'moldC', [30, 35, 40])).toEqual({ to: 30, nearestNo: 1, distance: 1 });
    expect(emptierCorner(tried, base, 'moldC', [40, 35])).toEqual({ to: 35, nearestNo: 2, distance: 0.5 });
  });

  it('what a pour does not know puts it no farther off, and what was never changed has no span', () => {
    const blank: TriedPour = { no: 3, packFactor: 1.4 };
    const tried = [cool, warm, blank];
    expect(emptierCorner(tried, warm, 'moldC', [30, 35])).toEqual({ to: 30, nearestNo: 3, distance: 0 });
    const onePack = [cool, { ...warm, packFactor: 1.2, opening: 'open' } as const];
    const denser = { ...cool, packFactor: 1.5 };
    expect(emptierCorner(onePack, denser, 'moldC', [33])).toEqual({ to: 33, nearestNo: 1, distance: 0.3 });
  });

  it('nothing offered or nothing tried: none', () => {
    expect(emptierCorner([cool], cool, 'moldC', [])).toBeUndefined();
    expect(emptierCorner([], cool, 'moldC', [30])).toBeUndefined();
  });
});

describe('telling apart what moved together', () => {
  it('an open mouth is plugged, a plugged one is not opened: then the mold, as far as it was tried', () => {
    const pours = [cool, { ...warm, packFactor: 1.2 }];
    const [open, plugged] = pours as [TriedPour, TriedPour];
    const group = tangled('opening', 'moldC');
    expect(tellApart(pours, open, group)).toMatchObject({
      ...{ factor: 'opening', from: 0, to: 1, why: 'tell-apart', basePour: 1, fromPours: [1, 2] },
      ...{ apartFrom: ['moldC'], nearest: { no: 1, distance: 1 } },
    });
    expect(tellApart(pours, plugged, group)).toMatchObject({
      ...{ factor: 'moldC', from: 40, to: 30, why: 'tell-apart', basePour: 2, fromPours: [1, 2] },
      ...{ apartFrom: ['opening'], nearest: { no: 1, distance: 1 } },
    });
  });

  it('the pack one or two steps lighter, not under 1.1', () => {
    const group = tangled('packFactor', 'moldC');
    expect(tellApart([cool, warm], cool, group)).toMatchObject({ factor: 'packFactor', from: 1.2, to: 1.1 });
    const light = { ...cool, packFactor: 1.15 };
    expect(tellApart([light, warm], light, group)).toMatchObject({ from: 1.15, to: 1.1 });
    const lightest = { ...cool, packFactor: 1.1 };
    expect(tellApart([lightest, warm], lightest, group)).toMatchObject({ factor: 'moldC', from: 30 });
  });

  it('the mold stays within 27 and 45 C and moves by 3 K or more', () => {
    const group = tangled('moldC', 'roomC');
    const span = (low: number, high: number): TriedPour[] => [
      { no: 1, moldC: low },
      { no: 2, moldC: high },
    ];
    expect(tellApart(span(20, 40), { no: 2, moldC: 40 }, group)).toMatchObject({ to: 30 });
    expect(tellApart(span(35, 60), { no: 1, moldC: 35 }, group)).toMatchObject({ to: 45 });
    expect(tellApart(span(35, 38), { no: 1, moldC: 35 }, group)).toMatchObject({ to: 38 });
    expect(tellApart(span(35, 37.9), { no: 1, moldC: 35 }, group)).toBeUndefined();
  });

  it('a room is what it is, and a setting that the pour does not know is not changed', () => {
    expect(tellApart([cool, warm], cool, tangled('roomC'))).toBeUndefined();
    expect(tellApart([cool, warm], { no: 3 }, tangled('opening', 'packFactor'))).toBeUndefined();
    expect(tellApart([cool, warm], cool, { ...tangled('moldC'), groups: [] })).toBeUndefined();
  });
});

describe('no change where none is known to help', () => {
  const told = { ventsChecked: true, cupTestedToday: true };
  const bare: TriedPour = { no: 1, packFactor: 1.6, moldC: 33, opening: 'plug', skin: 1 };

  it('a poor casting at the densest usual pack, or of a pack that nobody knows', () => {
    expect(nextPour({ pours: [{ ...bare, packFactor: 1.55 }], ...told }).change).toMatchObject({ to: 1.6 });
    expect(nextPour({ pours: [bare], ...told })).toEqual({ asks: [] });
    const { packFactor: _pack, ...unknown } = bare;
    expect(nextPour({ pours: [unknown], ...told })).toEqual({ asks: [] });
    expect(nextPour({ pours: [{ ...unknown, skin: 4 }], ...told })).toEqual({ asks: [] });
  });

  it('a piece without a good casting starts from the lightest good one of the foam', () => {
    const pours: TriedPour[] = [
      { ...bare, no: 1, piece: 'one', packFactor: 1.3, skin: 4 },
      { ...bare, no: 2, piece: 'one', packFactor: 1.25, skin: 4 },
      { no: 3, piece: 'other' },
    ];
    expect(nextPour({ pours, piece: 'other' }).change).toMatchObject({ basePour: 2, from: 1.25, to: 1.2 });
    expect(nextPour({ pours: pours.slice(2), piece: 'other' })).toEqual({ asks: [] });
  });
});
