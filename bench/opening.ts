import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  adviseVents,
  findAirTraps,
  measureThickness,
  mouthOn,
  openRuns,
  pourColumns,
  searchAttitude,
  buildField,
  extentsOf,
  readScan,
  standSculpt,
  type Sculpt,
} from '../src/geometry';
import { makeSolid } from '../src/geometry/solids';
import { openMoldBench, planOpening } from '../src/plan';
import { quartered } from '../tests/support/meshTools';
import { keepResults, machineHere, median, type Row } from './report';

/** Traps, vents and thickness of the sample head, its facets in four, at 1 mm, the search for its best way up, and the whole plan. */
const WANTED = { trapsAndThicknessS: 3, searchS: 3 };
const RUNS = 5;
const DIRECTIONS = 500;
const LEAST_MM3 = 200;

const root = process.argv[2]!;
console.log(machineHere());
const scan = readScan({
  bytes: readFileSync(join(root, 'sample-meshes', 'quay-troll-scan.stl')),
  name: 'quay-troll-scan.stl',
});
if (!scan.ok) throw new Error(scan.problem.code);
const opened = openMoldBench(scan.value, { up: '+y', taped: [{ along: 'tall', lengthMm: 290 }] });
if (!opened.ok) throw new Error(opened.problem.code);
const { bench } = opened.value;
const sculpt = stood();
const chain = quartered(sculpt.chain!);
console.log(`${chain.triangles.length / 3} triangles`);
const [low, high] = [sculpt.bounds.min, sculpt.bounds.max];
const mouth = mouthOn(chain, {
  atMm: [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, low[2]],
  diameterMm: 28,
  normal: [0, 0, -1],
});

const times: Record<string, number[]> = {
  columns: [],
  traps: [],
  vents: [],
  field: [],
  thickness: [],
  search: [],
  plan: [],
  library: [],
};
for (let run = 0; run < RUNS; run++) {
  const pour = timed('columns', () => pourColumns(chain, [0, 0, -1], 1));
  const open = openRuns(pour.columns, pour.body.axes, { mouth, vents: [] });
  timed('traps', () => findAirTraps(pour, open, { leastMm3: LEAST_MM3 }));
  timed('vents', () => adviseVents(pour, { mouth, vents: [], leastMm3: LEAST_MM3 }));
  const levelMm = -Math.min(...extentsOf(sculpt.bounds)) / 2;
  const field = timed('field', () => buildField(chain, sculpt.bounds, { voxelMm: 1, levelsMm: [levelMm] }));
  if (!field.ok) throw new Error(field.problem.code);
  timed('thickness', () => measureThickness(field.value, { baseMm: low[2] }));
  timed('search', () =>
    searchAttitude(chain, { stepMm: 2, most: 3 }, { mouth, leastMm3: LEAST_MM3, directions: DIRECTIONS }),
  );
  bench.thicknesses.clear();
  timed('plan', () => planOpening(bench, { searchUp: true }));
  // The named baseline: the solids library takes in the same facets.
  const from = performance.now();
  await makeSolid(chain);
  times['library']!.push((performance.now() - from) / 1000);
}
const of = (name: string): number => median(times[name]!);
const trapsAndThickness = of('columns') + of('traps') + of('vents') + of('thickness');
const timesTaken: readonly (readonly [string, number, number | undefined])[] = [
  ['columns, traps and vents at 1 mm', of('columns') + of('traps') + of('vents'), undefined],
  ['thickness at 1 mm once the field stands', of('thickness'), undefined],
  ['both', trapsAndThickness, WANTED.trapsAndThicknessS],
  [`attitude, ${DIRECTIONS} directions at 2 mm and the walk downhill`, of('search'), WANTED.searchS],
  ['field for the thickness', of('field'), undefined],
  ['whole plan with the search and the best three at 1 mm', of('plan'), undefined],
];
const ratio = median(times['traps']!.map((s, i) => s / times['library']![i]!));
const rows = timesTaken.map(([what, ours, wanted]): Row => ({
  what,
  ours,
  unit: 's',
  ...(wanted === undefined ? {} : { wanted: { of: 'ours', atMost: wanted } }),
}));
rows.push({
  what: 'air traps at 1 mm',
  ours: of('traps'),
  unit: 's',
  baseline: 'Manifold takes in the same triangles',
  ratio,
});
keepResults(root, 'opening', rows, { triangles: chain.triangles.length / 3, times, ratio });

function timed<T>(name: string, work: () => T): T {
  const from = performance.now();
  const result = work();
  times[name]!.push((performance.now() - from) / 1000);
  return result;
}

function stood(): Sculpt {
  const found = standSculpt(bench.settled.solid, 'open');
  if (!found.ok || found.value.chain === undefined) throw new Error('opening: expected a sculpt');
  return found.value;
}
