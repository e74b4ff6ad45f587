import { describe, expect, it } from 'vitest';
import { MOLD_TYPES, type MoldKey } from '../../src/geometry';
import { answer, type Desk } from '../../src/worker/answer';
import type { Answers, MoldsAsk } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

/** A box of 100 x 100 x 200 mm on the board. */
const wish = { fileUnit: 'mm', up: '+z' } as const;
const all = Object.fromEntries(MOLD_TYPES.map(({ key }) => [key, {}]));

function deskWithBox(): Desk {
  const desk: Desk = {};
  const bytes = stlBytes(box([100, 100, 200])).slice().buffer;
  answer(desk, { kind: 'open', name: 'box.stl', bytes }, () => undefined);
  return desk;
}

function moldOf(desk: Desk, ask: MoldsAsk, type: MoldKey, onProgress = (_share: number): void => undefined) {
  const molds = valueOf(answer(desk, { kind: 'mold', wish, ask }, onProgress) as Answers['mold']);
  return molds.find((one) => one.type === type)!.mold;
}

describe('molds of the page', () => {
  it('come on the measure of the size: another thickness measures and builds no field anew', () => {
    const desk = deskWithBox();
    answer(desk, { kind: 'size', wish }, () => undefined);
    const measured = desk.measured!;
    moldOf(desk, { settings: { skin: { skinMm: 6 } } }, 'skin');
    const field = measured.bench.fields.get('open')!.field.task;
    const thick = valueOf(moldOf(desk, { settings: { skin: { skinMm: 8 } } }, 'skin'));
    expect(desk.measured).toBe(measured);
    expect(measured.bench.fields.get('open')!.field.task).toBe(field);
    // The box grown by r = 8 above the board, by Steiner: walls 4 a h r, top a2 r, quarter rounds pi r2 (h + a), eighths of a ball.
    const [a, h, r] = [100, 200, 8];
    const mm3 = 4 * a * h * r + a * a * r + Math.PI * r * r * (h + a) + (2 / 3) * Math.PI * r ** 3;
    const skin = thick.shape.rubber.find(({ name }) => name === 'skin')!;
    expectClose(skin.volumeMm3, mm3, 0.002, 'skin of 8 mm');
  });

  it('hold what a box around the sculpt holds', () => {
    // Walls of 12 mm and as much over the top: 124 x 124 x 212 less 100 x 100 x 200 mm3.
    const block = valueOf(moldOf(deskWithBox(), { settings: { block: {} } }, 'block'));
    expectClose(block.siliconeCm3.value, (124 * 124 * 212 - 100 * 100 * 200) / 1000, 1e-9, 'rubber');
  });

  it('are measured first where nobody has asked for the size yet', () => {
    const desk = deskWithBox();
    expect(valueOf(moldOf(desk, { settings: { block: {} } }, 'block')).type).toBe('block');
    expect(desk.measured).toBeDefined();
  });

  it('tell a type that does not fit with its reason, and the others with their figures', () => {
    const ask = { settings: { ...all, skin: { skinMm: 0.5, firstCoatMm: 0.75 } } };
    const desk = deskWithBox();
    expect(problemOf(moldOf(desk, ask, 'skin')).code).toBe('MOLD_PARAMETER');
    expect(valueOf(moldOf(desk, ask, 'block')).silicone.totalG).toBeGreaterThan(0);
  });

  it('stop between two stages when they are no longer wanted', () => {
    const request = { kind: 'mold', wish, ask: { settings: all } } as const;
    const stopped = answer(
      deskWithBox(),
      request,
      () => undefined,
      () => true,
    ) as Answers['mold'];
    expect(problemOf(stopped).code).toBe('STOPPED');
  });

  it('tell progress that never falls and ends at one', () => {
    const shares: number[] = [];
    moldOf(deskWithBox(), { settings: all }, 'block', (share) => shares.push(share));
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBe(1);
  });

  it('send no facets of the sculpt to the page', () => {
    const block = valueOf(moldOf(deskWithBox(), { settings: { block: {} } }, 'block'));
    expect(block.sculpt.chain).toBeUndefined();
  });

  it('keep nothing of the scan before when another is opened', () => {
    const desk = deskWithBox();
    moldOf(desk, { settings: { block: {} } }, 'block');
    const bytes = stlBytes(box([50, 50, 50])).slice().buffer;
    answer(desk, { kind: 'open', name: 'small.stl', bytes }, () => undefined);
    const small = valueOf(moldOf(desk, { settings: { block: {} } }, 'block'));
    expectClose(small.siliconeCm3.value, (74 * 74 * 62 - 50 ** 3) / 1000, 1e-9, 'rubber');
  });
});
