import { expect, test } from 'vitest';
import { ROUGHNESS_MM3 } from '../../../src/geometry/features/airTraps';
import { liquidHeldMm3 } from '../../../src/geometry/features/liquidHeld';
import type { Mouth } from '../../../src/geometry/features/mouth';
import { carvedBlock, cellSolid, columnsInCells } from '../../support/boxSolids';
import { upTo } from '../../support/draws';
import { lcg } from '../../support/lcg';
import { cellsBelow, floodByLevels } from '../../support/levelFlood';
import type { Vec3 } from '../../support/shapes';

/** A hole in the roof of one cell, or of four, smaller than they are. */
const holeAt = (atMm: Vec3, diameterMm: number): Mouth => ({
  atMm,
  normal: [0, 0, 1],
  diameterMm,
  lip: [atMm],
  movedMm: 0,
  lipMissed: 0,
});

test('What a body holds under its opening agrees with a flood of cells below the brim, less the air it shuts in', () => {
  const SIZE = 9;
  let [behindRidges, withAir] = [0, 0];
  for (let seed = 1; seed <= 200; seed++) {
    const random = lcg(seed);
    const solid = cellSolid(SIZE, carvedBlock(random, SIZE, upTo(random, 12, 40)));
    const pour = columnsInCells(solid);
    const { column, highMm, lowMm, count } = pour.columns;
    // No second run within a step of the roof: a wall thinner than a step is not seen.
    const runs = Array.from({ length: count }, (_, run) => run).filter(
      (run) => !(run + 1 < count && column[run + 1] === column[run] && lowMm[run + 1]! < highMm[run]! + 2),
    );
    const run = runs[upTo(random, 0, runs.length - 1)]!;
    const [x, y, z] = [column[run]! % SIZE, Math.floor(column[run]! / SIZE), highMm[run]!];
    const held = liquidHeldMm3(pour, holeAt([x + 0.5, y + 0.5, z], 0.6));
    const cells = { across: SIZE, tall: SIZE, isCell: solid.isFull };
    const inlet = { x, y, z: z - 1 };
    const wet = cellsBelow(cells, z, inlet);
    const { pockets } = floodByLevels(cells, [inlet]);
    const air = new Set(pockets.flatMap(({ numbers }) => numbers));
    // Pockets as small as roughness may be counted as filled.
    const small = pockets.filter((pocket) => pocket.cells < ROUGHNESS_MM3).flatMap(({ numbers }) => numbers);
    const filled = wet.filter((cell) => !air.has(cell)).length;
    const overSmall = wet.filter((cell) => small.includes(cell)).length;
    expect(held, `seed ${seed}`).toBeGreaterThanOrEqual(filled);
    expect(held, `seed ${seed}`).toBeLessThanOrEqual(filled + overSmall);
    if (wet.some((cell) => air.has(cell))) withAir++;
    const below = Array.from({ length: count }, (_, r) => Math.max(0, Math.min(z, highMm[r]!) - lowMm[r]!));
    if (below.reduce((sum, mm) => sum + mm, 0) > held) behindRidges++;
  }
  expect(behindRidges).toBeGreaterThan(5);
  expect(withAir).toBeGreaterThan(2);
});
