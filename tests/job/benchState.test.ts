import { describe, expect, it } from 'vitest';
import { NO_RUN, readBench, readRun, withBench, type BenchRun } from '../../src/job/benchState';
import { readPiece, type Piece } from '../../src/job/piece';

const PIECE: Piece = {
  id: 'p',
  name: 'Quay Troll head',
  code: 'TROLL',
  begunOn: '2026-11-01',
  sculpt: { fields: {}, choices: {} },
  molds: { m: { no: 1, fields: {}, choices: {} } },
  castings: { c: { no: 13, mold: 'm', fields: {}, choices: {} } },
  hand: { mold: 'm', casting: 'c' },
};
const RUN: BenchRun = {
  rev: 2,
  presses: [
    { what: 'mixing', wallMs: 1e12, elapsedMs: 0 },
    { what: 'poured', wallMs: 1e12 + 31_000, elapsedMs: 31_000 },
  ],
  plan: {
    partAG: 379,
    partBG: 209,
    totalG: 588,
    stepG: 1,
    packFactor: 1.25,
    colorG: 18,
    cups: 1,
    cupAG: 379,
    scaleG: 588,
    pourBy: { s: 35, from: 'data-sheet', by: 'at 23 °C' },
    open: { s: 3600, earliestS: 1200, from: 'assumed' },
    opening: 'plug',
  },
};

/** Through a file, as a backup has it. */
const filed = (piece: Piece): Piece => {
  const read = readPiece(JSON.parse(JSON.stringify(piece)));
  if (typeof read === 'string') throw new Error(read);
  return read;
};

const withRaw = (bench: unknown): Piece =>
  filed({ ...PIECE, castings: { c: Object.assign({ ...PIECE.castings.c! }, { bench }) } });

describe('what a casting keeps of the bench', () => {
  it('is nothing at first', () => {
    expect(readBench(PIECE, 'c')).toEqual({
      bench: { ticks: {}, read: {}, withoutClock: false, isSoundOff: false, run: NO_RUN },
      unread: [],
    });
  });

  it('comes back from a file as it was', () => {
    const said = {
      ticks: { gloves: true },
      read: { 'Stop.': true },
      room: { text: '72 F' },
      mold: { text: '36', unit: 'C', picked: 36 },
      withoutClock: true,
      isSoundOff: true,
      run: RUN,
    };
    const kept = filed(withBench(withBench(PIECE, 'c', { ticks: { cup: true } }), 'c', said));
    expect(readBench(kept, 'c')).toEqual({ bench: said, unread: [] });
  });

  it('keeps what a later version says, and changes nothing else', () => {
    const kept = withBench(withRaw({ ticks: { gloves: true }, later: [1, 2] }), 'c', { run: RUN });
    expect(kept.castings.c).toMatchObject({ no: 13, bench: { ticks: { gloves: true }, later: [1, 2] } });
    expect(readBench(kept, 'c').unread).toEqual([]);
    expect(withBench(PIECE, 'gone', { run: RUN })).toBe(PIECE);
  });

  it.each([
    ['a text', 'yes', ['all of it']],
    ['ticks that are no yes or no', { ticks: { gloves: 'on' }, isSoundOff: true }, ['ticks']],
    ['a box without a text', { room: { unit: 'C' } }, ['room']],
    ['a run that is no list', { run: RUN }, ['run']],
    ['presses out of order', { run: [{ rev: 1, presses: [RUN.presses[1]] }] }, ['run']],
    ['a press without a time', { run: [{ rev: 1, presses: [{ what: 'mixing', elapsedMs: 0 }] }] }, ['run']],
  ])('names what it cannot read: %s', (_, raw, unread) => {
    const read = readBench(withRaw(raw), 'c');
    expect(read.unread).toEqual(unread);
    expect(read.bench.run).toEqual(NO_RUN);
  });

  it('keeps all that a plan may say, and leaves out of it what is none', () => {
    const plan = {
      ...RUN.plan!,
      ...{ cavityCm3: 4480, coreC: { low: 80, high: 120 }, freeFirst: 'skin', opening: 'open' },
      rise: { s: 120, from: 'given', at: '23' },
    };
    const undone = { what: 'plugged', wallMs: 1e12 + 90_000, elapsedMs: 90_000 };
    const full = JSON.parse(JSON.stringify({ ...RUN, plan, undone })) as Record<string, unknown>;
    expect(readRun(full)).toEqual(full);
    for (const coreC of [5, { low: 80 }, { low: 'warm', high: 120 }])
      expect(readRun({ ...full, plan: { ...plan, coreC } })!.plan).not.toHaveProperty('coreC');
    const { colorG: _color, ...plain } = plan;
    expect(readRun({ ...full, plan: { ...plain, cavityCm3: null } })!.plan).not.toHaveProperty('cavityCm3');
  });

  it('a press that was taken back and is none makes the run none', () => {
    for (const undone of [
      5,
      { what: 'danced', wallMs: 1, elapsedMs: 1 },
      { what: 'mixing', wallMs: 1, elapsedMs: -1 },
    ])
      expect(readRun({ ...RUN, undone })).toBeUndefined();
  });

  it('leaves out of a plan what is no time, and a plan without its grams', () => {
    const plan = { ...RUN.plan!, pourBy: { s: 'soon', from: 'x' }, opening: 'ajar', freeFirst: 5 };
    const read = readRun(JSON.parse(JSON.stringify({ ...RUN, plan })))!.plan!;
    expect(read.open).toEqual(RUN.plan!.open);
    expect(read).not.toHaveProperty('pourBy');
    expect(read).not.toHaveProperty('opening');
    expect(read).not.toHaveProperty('freeFirst');
    expect(readRun({ ...RUN, plan: { totalG: 588 } })).toEqual({ rev: 2, presses: RUN.presses });
  });
});
