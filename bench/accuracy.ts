import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { sizeScan, type SizeOptions } from '../src/plan';
import { ballMm3, boxTruth, torusMm3, fullTorus, fullBall } from '../tests/geometry/field/truths';
import { percentiles, thicknessOf } from '../tests/geometry/features/thicknessOf';
import { levelsOf } from '../tests/geometry/field/levelsOf';
import { moldOf, partCm3 } from '../tests/support/moldOf';
import { valueOf } from '../tests/support/outcome';
import { trapsOf } from '../tests/support/pours';
import { sampleScan, truthOf } from '../tests/support/samples';
import { box, capsuleOutline, icosphere, revolve, torus } from '../tests/support/shapes';
import { joined } from '../tests/support/meshTools';
import { versionOf } from './report';

/** How near the program comes to truths that are not its own: closed forms, and bodies measured by a generator that shares no code with it. */

interface Line {
  what: string;
  got: number;
  unit: 'cm3' | 'mm';
  truth: number;
  by: string;
  /** Whether the stated range holds the truth. */
  holds?: boolean;
}

/** The samples as a user would ask of them: what the file leaves unsaid is said. */
const SCANS: readonly (readonly [file: string, how: string, asked: SizeOptions])[] = [
  ['sphere-r50.stl', 'clean', { fileUnit: 'mm' }],
  ['capsule-r20-l60.stl', 'clean', { fileUnit: 'mm' }],
  ['torus-r50-r12.stl', 'clean', { fileUnit: 'mm' }],
  ['box-with-void.stl', 'a void inside', { fileUnit: 'mm' }],
  ['hollow-sphere-50-44.stl', 'hollow', { fileUnit: 'mm' }],
  ['twin-spheres-r40-d50.stl', 'two shells overlap', { fileUnit: 'mm' }],
  ['box-40x30x20-quads.obj', 'four corners a face', { fileUnit: 'mm' }],
  ['quay-troll-scan.stl', 'inches, three holes, noise, specks', { fileUnit: 'in' }],
  ['lighthouse-hand-scan.stl', 'a thumb of its own, facets doubled and turned over', { fileUnit: 'mm' }],
  [
    'lamp-eel-scan.stl',
    '3 % small, taped; seams, a sheet',
    { taped: [{ along: 'wide', lengthMm: truthOf('lamp-eel-scan.stl').tape_wide_mm! }] },
  ],
  [
    'singing-rock-scan.obj',
    'inches, inside out, its board cut off',
    { fileUnit: 'in', cuts: [{ axis: 2, keep: 'above', atUnits: 0 }] },
  ],
];

const GENERATOR = 'its generator, sample-meshes/truth.json';
const lines = [...SCANS.map(ofScan), ...ofOffsets(), ...ofMolds(), ...ofPours(), ...ofThickness()];
const table = lines.map(({ what, got, unit, truth, by, holds }) => ({
  what,
  got: digits(got),
  truth: digits(truth),
  unit,
  'error %': (100 * (got / truth - 1)).toFixed(4).replace(/^-(?=0\.0+$)/, ''),
  'truth within the range': holds === undefined ? '' : holds ? 'yes' : 'NO',
  'truth by': by,
}));
writeFileSync(
  join(process.argv[2]!, 'bench', 'results', `accuracy-${versionOf(process.argv[2]!)}.csv`),
  `${Papa.unparse(table, { newline: '\n' })}\n`,
);
console.table(table);
if (lines.some(({ holds }) => holds === false)) process.exitCode = 1;

function ofScan([file, how, asked]: (typeof SCANS)[number]): Line {
  const { volumeCm3 } = valueOf(sizeScan(sampleScan(file), asked));
  const truth = truthOf(file).clean_volume_mm3 / 1000;
  const holds = volumeCm3.low <= truth * (1 + 1e-9) && truth * (1 - 1e-9) <= volumeCm3.high;
  return {
    what: `volume of ${file} (${how})`,
    got: volumeCm3.value,
    unit: 'cm3',
    truth,
    by: GENERATOR,
    holds,
  };
}

function ofOffsets(): Line[] {
  const of = (
    name: string,
    mesh: ReturnType<typeof box>,
    truthMm3: (mm: number) => number,
    by: string,
  ): Line[] =>
    levelsOf(mesh, [10, -8]).map(({ volumeMm3 }, i) => ({
      what: `${name}, ${i === 0 ? '10 mm larger' : '8 mm smaller'} all round, voxels of 1 mm`,
      got: volumeMm3 / 1000,
      unit: 'cm3',
      truth: truthMm3(i === 0 ? 10 : -8) / 1000,
      by,
    }));
  return [
    ...of('ball of 50 mm radius', fullBall(50, 120), (t) => ballMm3(50 + t), 'closed form'),
    ...of('box of 60 x 50 x 40 mm', box([60, 50, 40]), boxTruth([60, 50, 40]), "Steiner's formula"),
    ...of('ring of 40 and 15 mm', fullTorus(40, 15, 200, 100), (t) => torusMm3(40, 15 + t), 'Pappus'),
  ];
}

function ofMolds(): Line[] {
  const plain = { flangeMm: 0, keyRadiusMm: 0, jacketMm: 1, parts: '2', pull: '+z', skinMm: 6 };
  const skin = moldOf(fullBall(50, 120), 'skin', { ...plain, base: 'closed' }, { voxelMm: 1.5 });
  return [
    {
      what: 'silicone skin of 6 mm around a ball of 50 mm radius',
      got: partCm3(skin, 'skin'),
      unit: 'cm3',
      truth: (ballMm3(56) - ballMm3(50)) / 1000,
      by: 'closed form',
    },
  ];
}

function ofPours(): Line[] {
  const block = box([100, 60, 40]);
  const chimney = (x: number): ReturnType<typeof box> => box([20, 20, 35], [x, 20, 35]);
  const body = joined(joined(block, chimney(10)), chimney(70));
  const { trappedMm3 } = trapsOf(body, { atMm: [20, 30, 70], diameterMm: 12 });
  return [
    {
      what: 'air kept by a closed chimney beside an open one',
      got: trappedMm3 / 1000,
      unit: 'cm3',
      truth: 12,
      by: 'its edges, 20 x 20 x 30 mm',
    },
  ];
}

function ofThickness(): Line[] {
  const median = (name: string, mesh: ReturnType<typeof box>, truth: number): Line => ({
    what: `thickness of a ${name}, at the median`,
    got: percentiles(thicknessOf(mesh), [0.5])[0]!,
    unit: 'mm',
    truth,
    by: 'its shape',
  });
  return [
    median('ball of 30 mm radius', icosphere(30, 5), 60),
    median('capsule of 20 mm radius', revolve(capsuleOutline(20, 60, 64), 128), 40),
    median('ring with a tube of 10 mm radius', torus(40, 10, 160, 64), 20),
  ];
}

function digits(value: number): string {
  return value.toFixed(value < 100 ? 4 : 2);
}
