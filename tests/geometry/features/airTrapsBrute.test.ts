import { expect, test } from 'vitest';
import { openRuns } from '../../../src/geometry/features/openRuns';
import type { PourColumns } from '../../../src/geometry/features/pourColumns';
import type { OpenRuns, Pockets } from '../../../src/geometry/features/pocket';
import { sweepDown } from '../../../src/geometry/features/sweepDown';
import { carvedBlock, cellSolid, columnsInCells, randomBoxes, type CellSolid } from '../../support/boxSolids';
import { upTo, type Random } from '../../support/draws';
import { lcg } from '../../support/lcg';
import { floodByLevels, type Cells, type Flooded, type OpenCell } from '../../support/levelFlood';

const CASES = 200;
const SIZE = 9;

const cellsOf = ({ size, isFull }: CellSolid): Cells => ({ across: size, tall: size, isCell: isFull });

/** Highest levels first, small ones first among equals: the order of a list is no fact. */
const listed = (pockets: readonly { saddle: number; cells: number }[]): string[] =>
  [...pockets]
    .sort((a, b) => b.saddle - a.saddle || a.cells - b.cells)
    .map(({ saddle, cells }) => `${cells} over ${saddle}`);

/** What opens: the tops of some columns of cells, or a level within one. */
function randomOpenings(random: Random, { columns }: PourColumns, count: number): OpenRuns {
  const run = Array.from({ length: count }, () => upTo(random, 0, columns.count - 1));
  return { run, levelMm: run.map((r) => upTo(random, columns.lowMm[r]! + 1, columns.highMm[r]!)) };
}

const cellsAt = ({ columns }: PourColumns, { run, levelMm }: OpenRuns): OpenCell[] =>
  run.map((r, i) => ({
    x: columns.column[r]! % columns.grid.columns,
    y: Math.floor(columns.column[r]! / columns.grid.columns),
    z: levelMm[i]! - 1,
  }));

function expectSame(found: Pockets, expected: Flooded, what: string): void {
  expect(
    listed(found.pockets.map(({ saddleMm, volumeMm3 }) => ({ saddle: saddleMm, cells: volumeMm3 }))),
    what,
  ).toEqual(listed(expected.pockets));
  const sizes = (list: readonly number[]): number[] => [...list].sort((a, b) => a - b);
  expect(sizes(found.apart.map(({ volumeMm3 }) => volumeMm3)), what).toEqual(sizes(expected.apart));
}

const solidFrom = (random: Random): CellSolid => {
  const count = upTo(random, 3, 14);
  return cellSolid(
    SIZE,
    random() < 0.5 ? randomBoxes(random, SIZE, count) : carvedBlock(random, SIZE, count),
  );
};

test('What a sinking level shuts in agrees with a flood of cells, pocket for pocket', () => {
  for (let seed = 1; seed <= CASES; seed++) {
    const random = lcg(seed);
    const solid = solidFrom(random);
    const pour = columnsInCells(solid);
    const open = randomOpenings(random, pour, upTo(random, 1, 4));
    const found = sweepDown(pour.heights, pour.links, open, { leastMm3: 0.5, ways: pour.ways });
    expectSame(found, floodByLevels(cellsOf(solid), cellsAt(pour, open)), `seed ${seed}`);
  }
});

test('All air that is shut in is counted once: pockets, pieces apart and open columns fill the solid', () => {
  for (let seed = 1001; seed <= 1000 + CASES; seed++) {
    const random = lcg(seed);
    const solid = solidFrom(random);
    const pour = columnsInCells(solid);
    const open = randomOpenings(random, pour, upTo(random, 1, 3));
    const found = sweepDown(pour.heights, pour.links, open, { leastMm3: 0.5, ways: pour.ways });
    const truth = floodByLevels(cellsOf(solid), cellsAt(pour, open));
    const total = (list: readonly { volumeMm3: number }[]): number =>
      list.reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
    expect(total(found.pockets), `seed ${seed}`).toBe(
      truth.pockets.reduce((sum, { cells }) => sum + cells, 0),
    );
    expect(total(found.apart), `seed ${seed}`).toBe(truth.apart.reduce((sum, cells) => sum + cells, 0));
    for (const { runs, saddleMm, volumeMm3, topRun } of found.pockets) {
      const { highMm, lowMm } = pour.columns;
      const tops = [...runs].map((r) => highMm[r]!);
      expect(Math.min(...tops)).toBeGreaterThan(saddleMm);
      expect(highMm[topRun]).toBe(Math.max(...tops));
      expect([...runs].reduce((sum, r) => sum + highMm[r]! - Math.max(lowMm[r]!, saddleMm), 0)).toBe(
        volumeMm3,
      );
    }
  }
});

test('Vents at random places let out what a flood with the same open cells lets out', () => {
  for (let seed = 2001; seed <= 2000 + CASES; seed++) {
    const random = lcg(seed);
    const solid = solidFrom(random);
    const pour = columnsInCells(solid);
    const { columns } = pour;
    const run = Array.from({ length: upTo(random, 1, 5) }, () => upTo(random, 0, columns.count - 1));
    const places = cellsAt(pour, { run, levelMm: run.map((r) => columns.highMm[r]!) });
    const vents = places.map(({ x, y, z }) => ({ atMm: [x + 0.5, y + 0.5, z + 1] as const }));
    const open = openRuns(columns, pour.body.axes, { mouth: undefined, vents });
    expect(
      run.every((r) => open.run.includes(r)),
      `seed ${seed}`,
    ).toBe(true);
    const found = sweepDown(pour.heights, pour.links, open, { leastMm3: 0.5, ways: pour.ways });
    expectSame(found, floodByLevels(cellsOf(solid), places), `seed ${seed}`);
  }
});

test('One more vent never shuts in more', () => {
  for (let seed = 3001; seed <= 3100; seed++) {
    const random = lcg(seed);
    const pour = columnsInCells(solidFrom(random));
    const all = randomOpenings(random, pour, 6);
    let before = Infinity;
    for (let n = 1; n <= 6; n++) {
      const open = { run: all.run.slice(0, n), levelMm: all.levelMm.slice(0, n) };
      const found = sweepDown(pour.heights, pour.links, open, { leastMm3: 0.5, ways: pour.ways });
      const now = [...found.pockets, ...found.apart].reduce((sum, { volumeMm3 }) => sum + volumeMm3, 0);
      expect(now, `seed ${seed}, ${n} holes`).toBeLessThanOrEqual(before);
      before = now;
    }
  }
});
