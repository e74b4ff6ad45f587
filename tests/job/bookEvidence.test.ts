import { describe, expect, it } from 'vitest';
import { checkedPours, learnBook, type BookRow, type CheckedPour, type PourRow } from '../../src/job/book';
import { cupsOf, fillPours, freeRisePours, residueRows, triedPours } from '../../src/job/book/evidence';
import { waterGPerCm3 } from '../../src/yield';
import { expectClose } from '../support/close';

const NO_SHOP = { foams: [] };
const pour = (more: Partial<PourRow>): PourRow => ({ kind: 'pour', id: 'p', ...more });
const checked = (...rows: BookRow[]): CheckedPour[] => checkedPours(rows, NO_SHOP);

describe('what a row teaches, and what it does not where something was left out', () => {
  it('residue: the mix as weighed, else A and B with the color; nothing where one of them is missing', () => {
    const taught = (more: Partial<PourRow>): unknown =>
      residueRows(checked(pour({ residueG: 20, ...more })))[0]?.is;
    expect(taught({ mixedG: 500 })).toEqual({ mixedG: 500, residueG: 20 });
    expect(taught({ aG: 300, bG: 150 })).toEqual({ mixedG: 450, residueG: 20 });
    expect(taught({ aG: 300, bG: 150, colorG: 5 })).toEqual({ mixedG: 455, residueG: 20 });
    expect(taught({ aG: 300 })).toBeUndefined();
    expect(taught({ bG: 150 })).toBeUndefined();
    expect(residueRows(checked(pour({ mixedG: 500 })))).toEqual([]);
  });

  it('how it was tried: only what is known', () => {
    expect(triedPours(checked(pour({ no: 4 })))).toEqual([{ no: 4 }]);
    const known = pour({
      ...{ no: 5, foam: 'f', piece: 'q', pack: 1.3, moldC: 30, roomC: 20, opening: 'plug', skin: 4 },
      filled: 'short',
    });
    expect(triedPours(checked(known))).toEqual([
      {
        no: 5,
        foam: 'f',
        piece: 'q',
        packFactor: 1.3,
        moldC: 30,
        roomC: 20,
        opening: 'plug',
        skin: 4,
        short: true,
      },
    ]);
    expect(triedPours(checked({ ...known, filled: 'full' }))[0]!.short).toBe(false);
  });

  it('free rise of cups: 50 g in a cup of 1 kg of water; under 100 g it is known to 4 %; without water nothing', () => {
    const literCm3 = 1000 / waterGPerCm3(20);
    const [small, large] = cupsOf({ kind: 'cup', id: 'c', waterG: 1000, waterTempC: 20, foamsG: [50, 100] });
    expect(small).toEqual({ freeRiseKgM3: 50_000 / literCm3, uFreeRiseShare: 0.04 });
    expect(large).toEqual({ freeRiseKgM3: 100_000 / literCm3 });
    const told = cupsOf({ kind: 'cup', id: 'c', waterG: 1000, foamsG: [120], foam: 'f', roomC: 21 });
    expect(told).toMatchObject([{ foam: 'f', roomC: 21 }]);
    expect(cupsOf({ kind: 'cup', id: 'c', foamsG: [50] })).toEqual([]);
    expect(cupsOf({ kind: 'cup', id: 'c', waterG: -1, foamsG: [50] })).toEqual([]);
    expect(cupsOf({ kind: 'cup', id: 'c', waterG: 1000 })).toEqual([]);
  });

  it('free rise of pours: a full one by its cavity, a short one by what it filled of it', () => {
    const taught = (more: Partial<PourRow>): unknown => freeRisePours(checked(pour(more)), [])[0]?.is;
    const full = { castingG: 400, cavityCm3: 4000, filled: 'full' } as const;
    expect(taught(full)).toEqual({ outcome: 'full', castingG: 400, filledCm3: 4000 });
    expect(taught({ ...full, trimG: 20, foam: 'f', roomC: 19 })).toEqual({
      ...{ outcome: 'full', castingG: 420, filledCm3: 4000, foam: 'f', roomC: 19 },
    });
    const short = { ...full, filled: 'short' } as const;
    expect(taught({ ...short, voidCm3: 100 })).toEqual({ outcome: 'short', castingG: 400, filledCm3: 3900 });
    expect(taught(short)).toBeUndefined();
    expect(taught({ castingG: 400, cavityCm3: 4000 })).toBeUndefined();
    expect(taught({ castingG: 400, filled: 'full' })).toBeUndefined();
  });

  it('fill: short by a share, full when capped, over when open; nothing without cavity, mix or residue', () => {
    const taught = (more: Partial<PourRow>): unknown => fillPours(checked(pour(more)), [])[0]?.is;
    const full = { cavityCm3: 4000, mixedG: 520, residueG: 20, filled: 'full' } as const;
    expect(taught(full)).toEqual({ outcome: 'full', cavityCm3: 4000, pouredG: 500 });
    expect(taught({ ...full, opening: 'open', trimG: 30 })).toEqual({
      ...{ outcome: 'overflowed', cavityCm3: 4000, pouredG: 500, trimG: 30 },
    });
    expect(taught({ ...full, filled: 'short', voidCm3: 80 })).toEqual({
      ...{ outcome: 'short', cavityCm3: 4000, pouredG: 500, shortShare: 0.02 },
    });
    expect(taught({ ...full, filled: 'short' })).toBeUndefined();
    const { filled: _filled, ...untold } = full;
    expect(taught(untold)).toBeUndefined();
    for (const name of ['cavityCm3', 'mixedG', 'residueG'] as const)
      expect(taught({ ...full, [name]: undefined })).toBeUndefined();
  });
});

describe('a foam without a card', () => {
  const full = pour({ foam: 'f', mold: 'm', cavityCm3: 4000, castingG: 480, filled: 'full' });
  const cup: BookRow = { kind: 'cup', id: 'c', foam: 'f', waterG: 1000, waterTempC: 20, foamsG: [110] };

  it('full pours alone say nothing of its free rise, so nothing of what fills', () => {
    const [foam] = learnBook([full], NO_SHOP).foams;
    expect(foam).toEqual({ foam: 'f', batches: [], leftOut: [] });
  });

  it('a cup of it does: then its molds have batches, by the name that is known', () => {
    const [foam] = learnBook([cup, full], NO_SHOP, { roomC: 20 }).foams;
    expect(foam).toMatchObject({
      freeRise: { cups: 1, bounds: 1 },
      fill: { from: 'cup-test', fellBack: true },
    });
    expect(foam!.batches).toHaveLength(1);
    expect(foam!.batches[0]).toMatchObject({ mold: 'm', cavityCm3: 4000 });
    expect(foam!.batches[0]).not.toHaveProperty('piece');
    expectClose(foam!.freeRise!.freeRiseKgM3.value, 110 * waterGPerCm3(20), 0.02);
  });

  it('a cavity of a pour that names neither piece nor mold belongs to none', () => {
    const { mold: _mold, ...nameless } = full;
    expect(learnBook([cup, nameless], NO_SHOP).foams[0]!.batches).toEqual([]);
  });
});
