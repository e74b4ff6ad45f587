import { expect, it } from 'vitest';
import { answer, type Desk } from '../../src/worker/answer';
import type { Answers, LadderAsk } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

const wish = { fileUnit: 'mm', up: '+z' } as const;

function deskWithBox(): Desk {
  const desk: Desk = {};
  const bytes = stlBytes(box([100, 100, 200])).slice().buffer;
  answer(desk, { kind: 'open', name: 'box.stl', bytes }, () => undefined);
  return desk;
}

const laddersOf = (desk: Desk, ask: LadderAsk, shouldStop?: () => boolean): Answers['ladder'] =>
  answer(desk, { kind: 'ladder', wish, ask }, () => undefined, shouldStop) as Answers['ladder'];

it('answers with the rungs of what was asked for: a box around a box of 100 x 100 x 200 mm', () => {
  const [ladder, ...others] = valueOf(laddersOf(deskWithBox(), { settings: { block: {} } }));
  expect(others).toEqual([]);
  for (const { thicknessMm, rubberCm3 } of ladder!.rungs)
    expectClose(
      rubberCm3.value,
      ((100 + 2 * thicknessMm) ** 2 * 212 - 2e6) / 1000,
      1e-9,
      `${thicknessMm} mm`,
    );
});

it('stands aside when told, and then says the same as one that was never stopped', () => {
  const desk = deskWithBox();
  let asked = 0;
  expect(problemOf(laddersOf(desk, { settings: { block: {} } }, () => ++asked > 4)).code).toBe('STOPPED');
  const after = valueOf(laddersOf(desk, { settings: { block: {} } }));
  expect(after).toEqual(valueOf(laddersOf(deskWithBox(), { settings: { block: {} } })));
});

it('stands aside within a rung too, while its field is built', () => {
  let asked = 0;
  const stopped = laddersOf(deskWithBox(), { settings: { skin: {} } }, () => ++asked > 2);
  expect(problemOf(stopped).code).toBe('STOPPED');
});

it('measures on a field of its own: that of the molds stays as it is', () => {
  const desk = deskWithBox();
  valueOf(
    answer(desk, { kind: 'mold', wish, ask: { settings: { skin: {} } } }, () => undefined) as Answers['mold'],
  );
  const field = desk.measured!.bench.fields.get('open');
  valueOf(laddersOf(desk, { settings: { skin: {} } }));
  expect(desk.measured!.bench.fields.get('open')).toBe(field);
});
