import { describe, expect, it } from 'vitest';
import type { Mold, MoldAsk } from '../../src/plan';
import { expectClose } from '../support/close';
import { benchOf, moldOn } from '../support/moldBench';
import { box } from '../support/shapes';

/** What stands beside the rubber: vacuum, paint, sealer, glue. A block around a box, so that nothing has to be looked for. */
const bench = benchOf(box([60, 50, 40]));
const blockOf = (ask: Partial<MoldAsk>): Mold => moldOn(bench, { type: 'block', ...ask });
const codesOf = ({ findings }: Mold): string[] => findings.map(({ code }) => code);

describe('a vacuum pump', () => {
  it('that leaves 12 kPa only swells the bubbles: told; one that leaves 2 kPa breaks them', () => {
    const degassed = (degasPressureKPa: number): string[] =>
      codesOf(blockOf({ work: { degassed: true, degasPressureKPa } }));
    expect(degassed(12)).toContain('DEGAS_WEAK');
    expect(degassed(2)).not.toContain('DEGAS_WEAK');
    expect(codesOf(blockOf({ work: { degassed: true } }))).not.toContain('DEGAS_WEAK');
  });
});

describe('paint, sealer and glue of a box of 118 cm2 beside its face on the board, with a texture of a tenth more', () => {
  // 60 x 50 + 2 (50 x 40 + 40 x 60) mm2.
  const realM2 = (118 / 1e4) * 1.1;
  const finishing = (finish: MoldAsk['finish']) =>
    blockOf({ finish: { textureFactor: 1.1, ...finish } }).finishing;

  it('are what the coats cover over what a liter or kilogram covers', () => {
    const { surfaceCm2, paint, seal } = finishing({
      paint: { coverageM2: 8, coats: 3 },
      seal: { coverageM2: 5, coats: 2 },
    });
    expectClose(surfaceCm2, 118, 1e-9);
    expectClose(paint!.amount, (3 * realM2) / 8, 1e-9);
    expectClose(seal!.amount, (2 * realM2) / 5, 1e-9);
    expect([paint!.coats, seal!.coats]).toEqual([3, 2]);
  });

  it('glue goes on both faces of a seam: without a figure of its own it has a range', () => {
    const own = finishing({ bond: { faceCm2: 90, gPerM2: 200 } });
    expectClose(own.bondG!.value, (2 * 200 * 90) / 1e4, 1e-9);
    expect([own.bondG!.low, own.bondG!.high]).toEqual([own.bondG!.value, own.bondG!.value]);
    const { bondG } = finishing({ bond: { faceCm2: 90 } });
    expect(bondG!.low < bondG!.value && bondG!.value < bondG!.high).toBe(true);
  });
});
