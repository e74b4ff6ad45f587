import { describe, expect, it } from 'vitest';
import {
  absolutePressureKPa,
  displacedByLevel,
  fillRate,
  freeRiseFromCup,
  frothRatio,
  hollowCavityCm3,
  shrinkFromLengths,
  tempAtDepthC,
} from '../../src/yield';
import type { HeatedBody } from '../../src/yield';
import type { Outcome } from '../../src/problem';
import { problemOf, valueOf } from '../support/outcome';

const slab: HeatedBody = {
  shape: 'slab',
  thicknessMm: 40,
  hWM2K: 10,
  surroundTempC: 50,
  startTempC: 20,
  conductivityWMK: 0.2,
  densityKgM3: 1200,
  heatCapacityJKgK: 1300,
};
const cup = { fullG: 90, cupG: 40, waterG: 500 };
const levels = { medium: 'water', beforeCm3: 5000 } as const;

/** What is refused, what is told of it, and the last that is taken at either end; worked out by hand from the other inputs of the call. */
const EDGES: readonly {
  what: string;
  call: (value: number) => Outcome<unknown>;
  low: number;
  high: number;
  unit: string;
  refused: readonly number[];
  taken: readonly number[];
}[] = [
  {
    what: 'of 5 castings no more than 5 filled',
    call: (filled) => fillRate({ poured: 5, filled }),
    ...{ low: 0, high: 5, unit: '', refused: [6], taken: [0, 5] },
  },
  {
    what: 'a rule is no coarser than the length that it measured',
    call: (readingMm) => shrinkFromLengths({ sculptMm: 4, moldMm: 4, readingMm }),
    ...{ low: 0, high: 4, unit: 'mm', refused: [4.1, 10], taken: [0, 4] },
  },
  {
    what: 'the water of a cup test is liquid, and not hot',
    call: (waterTempC) => freeRiseFromCup({ ...cup, waterTempC }),
    ...{ low: 1, high: 40, unit: 'C', refused: [0.9, 40.1], taken: [1, 40] },
  },
  {
    what: 'under vacuum there is no more than the room',
    call: (pressureKPa) => frothRatio({ pressureKPa, ambientKPa: 90 }),
    ...{ low: 0, high: 90, unit: 'kPa', refused: [90.1], taken: [90] },
  },
  {
    what: 'a gauge reads no more than the air of the room, less the 0.01 kPa that are left',
    call: (vacuumKPa) => absolutePressureKPa({ vacuumKPa, ambientKPa: 90 }),
    ...{ low: 0, high: 89.99, unit: 'kPa', refused: [90], taken: [0, 89.98] },
  },
  {
    what: 'the level rises when the sculpt goes in',
    call: (afterCm3) => displacedByLevel({ ...levels, afterCm3 }),
    ...{ low: 5000, high: 1e7, unit: 'cm3', refused: [4999, 5000], taken: [5001] },
  },
  {
    what: 'a depth lies in the slab',
    call: (depthMm) => tempAtDepthC(slab, { depthMm, minutes: 5 }),
    ...{ low: 0, high: 40, unit: 'mm', refused: [40.1], taken: [0, 40] },
  },
  {
    what: 'a depth of a cylinder ends at its middle',
    call: (depthMm) => tempAtDepthC({ ...slab, shape: 'cylinder' }, { depthMm, minutes: 5 }),
    ...{ low: 0, high: 20, unit: 'mm', refused: [20.1], taken: [0, 20] },
  },
  {
    what: 'a volume lies within its own range',
    call: (value) => hollowCavityCm3({ outerCm3: { value, low: 900, high: 1100 }, coreCm3: { value: 100 } }),
    ...{ low: 900, high: 1100, unit: '', refused: [899, 1101], taken: [900, 1100] },
  },
];

describe('what is refused is told with the edges that hold', () => {
  it.each(EDGES)('$what', ({ call, low, high, unit, refused, taken }) => {
    for (const value of refused)
      expect(problemOf(call(value))).toMatchObject({
        code: 'INPUT_OUT_OF_BOUNDS',
        values: { value, low, high, unit },
      });
    for (const value of taken) valueOf(call(value));
  });
});
