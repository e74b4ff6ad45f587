import { expect, test } from 'vitest';
import { openToSky } from '../../../src/geometry/features/pourColumns';
import { sweepDown } from '../../../src/geometry/features/sweepDown';
import { SKY_MM } from '../../../src/geometry/features/columns';
import { carvedBlock, cellSolid, columnsInCells } from '../../support/boxSolids';
import { upTo } from '../../support/draws';
import { lcg } from '../../support/lcg';
import { floodByLevels } from '../../support/levelFlood';

const SIZE = 9;
const PAD = 2;

test('What rising silicone shuts in under a sculpt agrees with a flood of the cells around it', () => {
  let trapped = 0;
  for (let seed = 1; seed <= 100; seed++) {
    const random = lcg(seed);
    const solid = cellSolid(SIZE, carvedBlock(random, SIZE, upTo(random, 12, 40)));
    const pour = columnsInCells(solid, { pad: PAD, aroundFromMm: 0 });
    const found = sweepDown(pour.heights, pour.links, openToSky(pour), {
      leastMm3: 0.5,
      ways: pour.ways,
    });
    const tall = pour.body.height.high + SKY_MM;
    const across = SIZE + 2 * PAD;
    const sky = Array.from({ length: across * across }, (_, i) => ({
      x: i % across,
      y: Math.floor(i / across),
      z: tall - 1,
    }));
    const truth = floodByLevels(
      { across, tall, isCell: (x, y, z) => !solid.isFull(x - PAD, y - PAD, z) },
      sky,
    );
    const told = found.pockets.map(({ saddleMm, volumeMm3 }) => `${saddleMm} ${volumeMm3}`).sort();
    expect(told, `seed ${seed}`).toEqual(
      truth.pockets.map(({ saddle, cells }) => `${saddle} ${cells}`).sort(),
    );
    expect(found.apart.length, `seed ${seed}`).toBe(truth.apart.length);
    trapped += truth.pockets.length;
  }
  expect(trapped).toBeGreaterThan(20);
});
