import { describe, expect, it } from 'vitest';
import type { OpeningAsk } from '../../src/plan';
import { answer, type Desk } from '../../src/worker/answer';
import type { Answers } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

/** A box of 100 x 100 x 200 mm on the board. */
const wish = { fileUnit: 'mm', up: '+z', accuracy: 'fast' } as const;

function deskWithBox(): Desk {
  const desk: Desk = {};
  const bytes = stlBytes(box([100, 100, 200])).slice().buffer;
  answer(desk, { kind: 'open', name: 'box.stl', bytes }, () => undefined);
  return desk;
}

const openingOf = (desk: Desk, ask: OpeningAsk, onProgress = (_share: number): void => undefined) =>
  valueOf(answer(desk, { kind: 'opening', wish, ask }, onProgress) as Answers['opening']);

/** Numbers in all arrays within, typed or not. */
const numbersIn = (value: unknown): number =>
  typeof value === 'number'
    ? 1
    : ArrayBuffer.isView(value)
      ? (value as Float64Array).length
      : value !== null && typeof value === 'object'
        ? Object.values(value).reduce<number>((sum, one) => sum + numbersIn(one), 0)
        : 0;

describe('opening and vents for the page', () => {
  it('come on the measure of the size, and thickness is measured once for another opening', () => {
    const desk = deskWithBox();
    answer(desk, { kind: 'size', wish }, () => undefined);
    const measured = desk.measured!;
    openingOf(desk, {});
    const thick = measured.bench.thicknesses.get('open inside');
    const wide = openingOf(desk, { opening: { diameterMm: 30 } });
    expect(desk.measured).toBe(measured);
    expect(thick).toBeDefined();
    expect(measured.bench.thicknesses.get('open inside')).toBe(thick);
    // A round hole of 30 mm.
    expectClose(wide.opening.areaCm2, (Math.PI * 3 ** 2) / 4, 1e-12, 'opening');
  });

  it('send outlines and figures to the page, and nothing as large as the facets of a scan', () => {
    // The outline of a box is eight numbers in each of three views.
    expect(numbersIn(openingOf(deskWithBox(), {}))).toBeLessThan(500);
  });

  it('tell progress that never falls', () => {
    const shares: number[] = [];
    openingOf(deskWithBox(), {}, (share) => shares.push(share));
    expect(shares.length).toBeGreaterThan(3);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
  });

  it.each(['opening', 'bestUp'] as const)('stop when they are no longer wanted: %s', (kind) => {
    const stopped = answer(
      deskWithBox(),
      { kind, wish, ask: {} },
      () => undefined,
      () => true,
    ) as Answers['opening'];
    expect(problemOf(stopped).code).toBe('STOPPED');
  });

  it('find ways up for a box in which no air stays, the opening up or nearly so', () => {
    const best = valueOf(
      answer(deskWithBox(), { kind: 'bestUp', wish, ask: {} }, () => undefined) as Answers['bestUp'],
    );
    expect(best.length).toBeGreaterThan(0);
    // Base up a box has a level ceiling and no pocket.
    expect(best[0]!.trappedCm3.value).toBe(0);
    expect(best[0]!.up[2]).toBeLessThan(0);
  });
});
