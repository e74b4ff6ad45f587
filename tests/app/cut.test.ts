import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../src/geometry';
import { sizeWish } from '../../src/worker/sizeWish';
import { good, type Outcome } from '../../src/problem';
import type { Sized, SizeWish } from '../../src/worker/protocol';
import { expectClose } from '../support/close';
import { problemOf, valueOf } from '../support/outcome';
import { box } from '../support/shapes';

/** Exact arithmetic but for float64 and the 1e-9 at which the scale is taken as settled. */
const EXACT = 1e-7;

/*
 * A block of 100 x 100 mm that stands 100 mm out of a table of 300 x 300 x 15 mm, in a file whose unit is an inch and whose
 * zero is far below. By hand: block 1000 cm3, table 1350 cm3.
 */
const IN = 25.4;
const LOW_MM = 500;
const block = box([100 / IN, 100 / IN, 110 / IN], [0, 0, (LOW_MM + 5) / IN]);
const table = box([300 / IN, 300 / IN, 15 / IN], [-100 / IN, -100 / IN, LOW_MM / IN]);
const scan = {
  mesh: joined(block, table),
  format: 'stl' as const,
  trianglesRead: 24,
  coordinateStep: 1e-9,
  findings: [],
};

const size = (wish: SizeWish): Outcome<Sized> => {
  const measured = sizeWish(scan, wish, {});
  return measured.ok ? good(measured.value.sized) : measured;
};

describe('cutting the table off', () => {
  it('finds the table and says where its top is above the lowest point', () => {
    const { floor } = valueOf(size({ fileUnit: 'in' }));
    expectClose(floor!.heightMm, 15, 1e-3, 'height of the table');
    expectClose(floor!.topMm, LOW_MM + 15, 1e-3, 'height on the zero of the file');
  });

  it('leaves the block alone, whether the unit is named or the block is taped', () => {
    const { atUnits } = valueOf(size({ fileUnit: 'in' })).floor!;
    const cut = { by: 'floor', atUnits, keep: 'above' } as const;
    const named = valueOf(size({ fileUnit: 'in', cut }));
    expectClose(named.size.volumeCm3.value, 1000, EXACT, 'block');
    const taped = valueOf(size({ taped: { along: 'tall', lengthMm: 100 }, cut }));
    expectClose(taped.size.scale.mmPerUnit, IN, EXACT, 'unit by the tape on the block alone');
    expectClose(taped.size.volumeCm3.value, 1000, EXACT, 'block');
    expect(taped.size.volumeCm3.from).toBe('taped');
  });

  it('takes a typed height as true millimeters, although the scale hangs on the cut', () => {
    const cut = { by: 'height', heightMm: 15, keep: 'above' } as const;
    for (const along of ['tall', 'wide', 'deep'] as const) {
      const sized = valueOf(size({ taped: { along, lengthMm: 100 }, cut }));
      expectClose(sized.size.scale.mmPerUnit, IN, EXACT, `unit by ${along}`);
      expectClose(sized.cut!.heightMm, 15, EXACT, 'height of the cut');
      expectClose(sized.size.volumeCm3.value, 1000, EXACT, 'block');
    }
  });

  it('keeps the table instead when asked, and tells what went', () => {
    const cut = { by: 'height', heightMm: 15, keep: 'below' } as const;
    const sized = valueOf(size({ fileUnit: 'in', cut }));
    // The part of the block inside the table counts once.
    expectClose(sized.size.volumeCm3.value, 1350, 1e-3, 'table');
    const went = sized.size.findings.find(({ code }) => code === 'CUT_AWAY')!.values.effectCm3;
    expectClose(Number(went), -1000, 5e-3, 'what went');
  });

  it('refuses a plane above everything, and a scale that no cut can reach', () => {
    const cut = { by: 'height', heightMm: 900, keep: 'above' } as const;
    expect(problemOf(size({ fileUnit: 'in', cut })).code).toBe('CUT_EMPTY');
    // What is left below 15 mm is 15 mm tall at every scale: it can never be taped as 300.
    const below = { by: 'height', heightMm: 15, keep: 'below' } as const;
    expect(problemOf(size({ taped: { along: 'tall', lengthMm: 300 }, cut: below })).code).toBe(
      'SCALE_UNREACHED',
    );
  });

  it('answers nothing but the size under each unit while the scale is not known', () => {
    const cut = { by: 'height', heightMm: 15, keep: 'above' } as const;
    expect(problemOf(size({})).code).toBe('SCALE_UNKNOWN');
    expect(problemOf(size({ cut })).code).toBe('SCALE_UNKNOWN');
  });
});

function joined(one: TriangleMesh, other: TriangleMesh): TriangleMesh {
  const shift = one.positions.length / 3;
  return {
    positions: Float64Array.from([...one.positions, ...other.positions]),
    triangles: Int32Array.from([...one.triangles, ...[...other.triangles].map((v) => v + shift)]),
  };
}
