import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startCrew } from '../src/cli/nodeCrew';
import {
  buildField,
  measureLevels,
  measureSolid,
  readScan,
  type Field,
  type SolidMeasure,
} from '../src/geometry';
import { BUILD_STAGES, LEVEL_STAGES, TIMED } from '../src/geometry/field/fieldTask';
import { sizeScan } from '../src/plan';
import { findAnchor, type AnchorRun } from './anchor';
import { bumpyBodyStl } from './bumpyBody';
import { keepResults, machineHere, median, type Row } from './report';

/** V(0), +10 and -8 mm at voxels of 1 mm. */
const [VOXEL_MM, OUT_MM, IN_MM] = [1, 10, 8];

/** What the project promises: wall time against the native library (same file, same levels), and peak memory. */
const CASES = [
  { name: '100 k', rings: 224, runs: 7, wallRatio: 0.5, peakMB: 130 },
  { name: '1 M', rings: 708, runs: 5, wallRatio: 0.36, peakMB: 260 },
  { name: '4 M', rings: 1415, runs: 3, wallRatio: 0.3, peakMB: 560 },
];
const WARM_RATIO = 0.35;
const CHANGE_MS = 100;
const SPEEDUP = 1.6;

const root = process.argv[2]!;
const anchor = findAnchor(process.env.ANCHOR);
const folder = mkdtempSync(join(tmpdir(), 'risewright-offsets-'));
console.log(machineHere());
if (anchor === undefined)
  console.log('no anchor: set ANCHOR to the yardstick (see bench/README.md) to measure against it');
const results: Record<string, unknown> = { anchor: anchor !== undefined };
/** What they come to, a line each. */
const lines: Row[] = [];
try {
  for (const { name, rings, runs, wallRatio, peakMB } of CASES) {
    const file = join(folder, `${rings}.stl`);
    writeFileSync(file, bumpyBodyStl(rings));
    results[name] = compareCold(file, { name, runs, wallRatio, peakMB });
  }
  results['warm'] = await warm(join(folder, `${CASES[0]!.rings}.stl`));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
keepResults(root, 'offsets', lines, results);

interface OurRun {
  wallS: number;
  peakMB: number;
  outwardCm3: number;
  inwardCm3: number;
}

/** Ours and the anchor in turn, whole processes. */
function compareCold(
  file: string,
  { name, runs, wallRatio, peakMB }: { name: string; runs: number; wallRatio: number; peakMB: number },
): unknown {
  const ours: OurRun[] = [];
  const theirs: AnchorRun[] = [];
  for (let run = -1; run < runs; run++) {
    const their = anchor?.(file, VOXEL_MM, OUT_MM, IN_MM);
    const our = runOurs(file);
    if (run < 0) continue;
    ours.push(our);
    if (their !== undefined) theirs.push(their);
  }
  const wall = median(ours.map((r) => r.wallS));
  const peak = Math.max(...ours.map((r) => r.peakMB));
  const ratios = theirs.map((r, i) => ours[i]!.wallS / r.wallS);
  console.log(`${name} triangles, cold: ours ${seconds(ours)} s, median ${wall.toFixed(2)}, peak ${peak} MB`);
  if (theirs.length > 0) {
    const ratio = median(ratios);
    const differs = (a: number, b: number): string => `${(100 * (a / b - 1)).toFixed(3)} %`;
    console.log(
      `  anchor ${seconds(theirs)} s, peak ${Math.max(...theirs.map((r) => r.peakMB))} MB; ratio ${ratios.map((r) => r.toFixed(2)).join(' ')}, median ${ratio.toFixed(2)}`,
    );
    console.log(
      `  ours less the anchor: +${OUT_MM} mm ${differs(ours[0]!.outwardCm3, theirs[0]!.outwardCm3)}, -${IN_MM} mm ${differs(ours[0]!.inwardCm3, theirs[0]!.inwardCm3)}`,
    );
  }
  lines.push(
    {
      what: `offsets +${OUT_MM} and -${IN_MM} mm of ${name} triangles, voxels of ${VOXEL_MM} mm, whole program`,
      ours: wall,
      unit: 's',
      ...againstAnchor(ratios, wallRatio),
    },
    { what: 'its peak memory', ours: peak, unit: 'MB', wanted: { of: 'ours', atMost: peakMB } },
  );
  return { ours, theirs, ratios, wallMedianS: wall, peakMB: peak };
}

function runOurs(file: string): OurRun {
  const peakFile = join(folder, 'peak.txt');
  const hook = `import { writeFileSync } from 'node:fs'; process.on('exit', () => writeFileSync(${JSON.stringify(peakFile)}, String(process.resourceUsage().maxRSS)));`;
  const args = [
    '--import',
    `data:text/javascript,${encodeURIComponent(hook)}`,
    join(root, 'dist', 'cli', 'risewright.js'),
  ];
  const call = [
    'size',
    file,
    '--file-unit',
    'mm',
    '--offset',
    `${OUT_MM}mm`,
    `--offset=-${IN_MM}mm`,
    '--voxel',
    `${VOXEL_MM}mm`,
    '--json',
  ];
  const from = performance.now();
  const child = spawnSync(process.execPath, [...args, ...call], { encoding: 'utf8' });
  const wallS = (performance.now() - from) / 1000;
  if (child.status !== 0) throw new Error(`bench: expected exit 0, got ${child.status}: ${child.stderr}`);
  const { result } = JSON.parse(child.stdout) as { result: { offsets: { volume_cm3: number }[] } };
  return {
    wallS,
    peakMB: Math.round(Number(readFileSync(peakFile, 'utf8')) / 1024),
    outwardCm3: result.offsets[0]!.volume_cm3,
    inwardCm3: result.offsets[1]!.volume_cm3,
  };
}

/** In one process that has done it before: against the anchor, two threads against one stage by stage, and one offset changed. */
async function warm(file: string): Promise<unknown> {
  const bytes = readFileSync(file);
  const crew = startCrew(2);
  await new Promise((resolve) => setTimeout(resolve, 1500));
  const offsetsMm = [OUT_MM, -IN_MM];
  const whole = (): number => {
    const from = performance.now();
    const scan = readScan({ bytes, name: file });
    const size = scan.ok
      ? sizeScan(scan.value, { fileUnit: 'mm', up: '+z', offsetsMm, voxelMm: VOXEL_MM, crew })
      : scan;
    if (!size.ok) throw new Error(size.problem.code);
    return (performance.now() - from) / 1000;
  };
  for (let run = 0; run < 5; run++) whole();
  const oursS: number[] = [];
  const ratios: number[] = [];
  for (let run = 0; run < 7; run++) {
    const theirS = anchor?.(file, VOXEL_MM, OUT_MM, IN_MM).wallS;
    oursS.push(whole());
    if (theirS !== undefined) ratios.push(oursS[run]! / theirS);
  }
  console.log(
    `100 k triangles, warm: ours ${oursS.map((s) => s.toFixed(2)).join(' ')} s, median ${median(oursS).toFixed(2)}`,
  );
  if (ratios.length > 0)
    console.log(`  ratio ${ratios.map((r) => r.toFixed(2)).join(' ')}, median ${median(ratios).toFixed(2)}`);

  lines.push({
    what: `the same of ${CASES[0]!.name} triangles in a process that is warm`,
    ours: median(oursS),
    unit: 's',
    ...againstAnchor(ratios, WARM_RATIO),
  });
  const scan = readScan({ bytes, name: file });
  const solid = scan.ok ? measureSolid(scan.value.mesh, { coordinateStepMm: 1e-5 }) : scan;
  if (!solid.ok) throw new Error(solid.problem.code);
  const stages = compareThreads(solid.value, crew);
  const changeMs = changeOneOffset(solid.value, crew);
  crew.end();
  return { oursS, ratios, stages, changeMs };
}

/** Medians of the stages with one thread and with two, warm. */
function compareThreads(solid: SolidMeasure, crew: ReturnType<typeof startCrew>): Record<string, number[]> {
  const rows = new Map<string, [number[], number[]]>();
  const note = (stage: string, threads: number, ms: number): void => {
    const row = rows.get(stage) ?? [[], []];
    row[threads - 1]!.push(ms);
    rows.set(stage, row);
  };
  const levelsMm = [OUT_MM, -IN_MM];
  for (let run = 0; run < 9; run++) {
    for (const threads of [1, 2] as const) {
      const field = buildField(solid.chain, solid.bounds, {
        voxelMm: VOXEL_MM,
        levelsMm,
        ...(threads === 2 ? { crew } : {}),
        onTimings: (kind, timings) => {
          const names =
            kind === 'build' ? BUILD_STAGES : kind === 'levels' ? LEVEL_STAGES : (['rest'] as const);
          names.forEach((name, i) => {
            const each = Array.from({ length: threads }, (_, id) => timings[TIMED * id + i]!);
            note(name, threads, Math.max(...each));
          });
        },
      });
      const volumes = field.ok ? measureLevels(field.value, levelsMm) : field;
      if (!volumes.ok) throw new Error(volumes.problem.code);
    }
  }
  console.log('stages, one thread and two, warm (medians, ms):');
  const table: Record<string, number[]> = {};
  for (const [stage, [one, two]] of rows) {
    table[stage] = [median(one), median(two), median(one) / median(two)];
    console.log(`  ${stage.padEnd(16)} ${table[stage].map((x) => x.toFixed(2).padStart(8)).join('')}`);
  }
  const levels = ['near levels', 'sums'].map((stage) => rows.get(stage)!);
  const sum = (threads: 0 | 1): number => levels.reduce((total, row) => total + median(row[threads]), 0);
  console.log(`  level passes ${(sum(0) / sum(1)).toFixed(2)} times faster with two`);
  lines.push({
    what: 'its level passes with two threads',
    ours: sum(0) / sum(1),
    unit: 'times',
    wanted: { of: 'ours', atLeast: SPEEDUP },
  });
  return table;
}

/** One offset changed on a standing field, voxels of 2 mm. */
function changeOneOffset(solid: SolidMeasure, crew: ReturnType<typeof startCrew>): number {
  const made = buildField(solid.chain, solid.bounds, { voxelMm: 2, levelsMm: [12, -8], crew });
  if (!made.ok) throw new Error(made.problem.code);
  const field: Field = made.value;
  const times: number[] = [];
  for (let run = 0; run < 11; run++) {
    const from = performance.now();
    measureLevels(field, [6 + 0.5 * run]);
    times.push(performance.now() - from);
  }
  console.log(
    `one offset changed, 2 mm: ${times.map((t) => t.toFixed(0)).join(' ')} ms, median ${median(times).toFixed(0)}`,
  );
  lines.push({
    what: 'one offset changed on a standing field, voxels of 2 mm',
    ours: median(times),
    unit: 'ms',
    wanted: { of: 'ours', atMost: CHANGE_MS },
  });
  return median(times);
}

/** Our time over that of the native library in the same run, where it was there. */
function againstAnchor(ratios: readonly number[], atMost: number): Omit<Row, 'what' | 'ours' | 'unit'> {
  const baseline = ratios.length > 0 ? { ratio: median(ratios) } : {};
  return { baseline: 'OpenVDB in C++', ...baseline, wanted: { of: 'ratio', atMost } };
}

function seconds(runs: readonly { wallS: number }[]): string {
  return runs.map(({ wallS }) => wallS.toFixed(2)).join(' ');
}
