import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { mergeVertices, STLLoader } from 'three-stdlib';
import { readScan } from '../src/geometry';
import { sizeScan } from '../src/plan';
import { revolvedVolume, sphere, sphereOutline } from '../tests/support/shapes';
import { stlBytes } from '../tests/support/writeMesh';
import { keepResults, machineHere, median, type Row } from './report';

/** How often each side runs, after one run each that is thrown away. Odd, so that the median is a run. */
const RUNS = 5;
const CLI_RUNS = 5;

/** 501 rings of 1 000 sides: 2 x 1 000 x 500 triangles. */
const [RINGS, SIDES] = [501, 1000];

/** What the project promises on a plain machine. */
const LIMITS = { timesFaster: 4, cliWallS: 2.5, cliPeakMB: 400 };

const root = process.argv[2];
if (root === undefined) throw new Error('bench: expected the root folder, got nothing');

const bytes = stlBytes(sphere(50, RINGS, SIDES));
const exactMm3 = revolvedVolume(sphereOutline(50, RINGS), SIDES);
const library = { asCalled: compareWith(byThree), normalsOff: compareWith(byThreeWelded) };
const cli = runTheCli();
const results = {
  file: `ball of ${2 * SIDES * (RINGS - 1)} triangles, binary STL, ${bytes.length} bytes`,
  library,
  cli,
};
keepResults(root, 'size', rows(), results);
report();

interface Comparison {
  oursMs: number[];
  threeMs: number[];
  ratios: number[];
  oursMedianMs: number;
  threeMedianMs: number;
  ratioMedian: number;
  ratioLeast: number;
}

/** Ours and theirs in turn, so that whatever else the machine does falls on both. */
function compareWith(theirs: () => number): Comparison {
  const [oursMs, threeMs]: [number[], number[]] = [[], []];
  for (let run = -1; run < RUNS; run++) {
    const [ours, three] =
      run % 2 === 0 ? [timed(byUs), timed(theirs)] : [timed(theirs), timed(byUs)].reverse();
    if (run < 0) continue;
    oursMs.push(ours!);
    threeMs.push(three!);
  }
  const ratios = threeMs.map((ms, i) => ms / oursMs[i]!);
  return {
    oursMs: oursMs.map(Math.round),
    threeMs: threeMs.map(Math.round),
    ratios: ratios.map((r) => Number(r.toFixed(2))),
    oursMedianMs: Math.round(median(oursMs)),
    threeMedianMs: Math.round(median(threeMs)),
    ratioMedian: Number(median(ratios).toFixed(2)),
    ratioLeast: Number(Math.min(...ratios).toFixed(2)),
  };
}

function timed(work: () => number): number {
  (globalThis as { gc?: () => void }).gc?.();
  const from = performance.now();
  const mm3 = work();
  const ms = performance.now() - from;
  // Coordinates are float32 in the file: the volume of the facets is known to some 1e-7.
  if (Math.abs(mm3 / exactMm3 - 1) > 1e-5) throw new Error(`bench: expected ${exactMm3} mm3, got ${mm3}`);
  return ms;
}

/** Everything a user gets: checked reading, welding, pieces, holes, overlaps, range. */
function byUs(): number {
  const scan = readScan({ bytes, name: 'million.stl' });
  if (!scan.ok) throw new Error(scan.problem.code);
  const size = sizeScan(scan.value, { fileUnit: 'mm', up: '+z' });
  if (!size.ok) throw new Error(size.problem.code);
  return 1000 * size.value.volumeCm3.value;
}

/** A well-kept loader, its welding as its page calls it (normals and all), and a bare sum of signed volumes. */
function byThree(): number {
  return plainSum(mergeVertices(new STLLoader().parse(bytes.buffer as ArrayBuffer)));
}

/** The same with the normals taken off, without which corners of neighboring facets never match. */
function byThreeWelded(): number {
  const soup = new STLLoader().parse(bytes.buffer as ArrayBuffer);
  soup.deleteAttribute('normal');
  return plainSum(mergeVertices(soup));
}

function plainSum(welded: ReturnType<typeof mergeVertices>): number {
  const p = welded.getAttribute('position').array;
  const index = welded.getIndex()!.array;
  let sixfold = 0;
  for (let i = 0; i < index.length; i += 3) {
    const a = 3 * index[i]!,
      b = 3 * index[i + 1]!,
      c = 3 * index[i + 2]!;
    sixfold +=
      p[a]! * (p[b + 1]! * p[c + 2]! - p[b + 2]! * p[c + 1]!) +
      p[a + 1]! * (p[b + 2]! * p[c]! - p[b]! * p[c + 2]!) +
      p[a + 2]! * (p[b]! * p[c + 1]! - p[b + 1]! * p[c]!);
  }
  return sixfold / 6;
}

/** The whole program as it is called: process start, file from disk, JSON out. Peak memory as the child's own maxRSS. */
function runTheCli(): { wallS: number[]; peakMB: number[]; wallMedianS: number; peakMostMB: number } {
  const folder = mkdtempSync(join(tmpdir(), 'risewright-bench-'));
  const [scan, peakFile] = [join(folder, 'million.stl'), join(folder, 'peak.txt')];
  writeFileSync(scan, bytes);
  const hook = `import { writeFileSync } from 'node:fs'; process.on('exit', () => writeFileSync(${JSON.stringify(peakFile)}, String(process.resourceUsage().maxRSS)));`;
  const args = [
    '--import',
    `data:text/javascript,${encodeURIComponent(hook)}`,
    join(root!, 'dist', 'cli', 'risewright.js'),
    'size',
    scan,
    '--file-unit',
    'mm',
    '--json',
  ];
  const [wallS, peakMB]: [number[], number[]] = [[], []];
  try {
    for (let run = 0; run < CLI_RUNS; run++) {
      const from = performance.now();
      const child = spawnSync(process.execPath, args, { encoding: 'utf8' });
      wallS.push(Number(((performance.now() - from) / 1000).toFixed(2)));
      if (child.status !== 0) throw new Error(`bench: expected exit 0, got ${child.status}: ${child.stderr}`);
      peakMB.push(Math.round(Number(readFileSync(peakFile, 'utf8')) / 1024));
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return { wallS, peakMB, wallMedianS: median(wallS), peakMostMB: Math.max(...peakMB) };
}

function rows(): Row[] {
  const million = '1 million triangles of a binary STL';
  const against = (what: string, baseline: string, { oursMedianMs, ratioMedian }: Comparison): Row => ({
    what,
    ours: oursMedianMs,
    unit: 'ms',
    baseline,
    ratio: 1 / ratioMedian,
    wanted: { of: 'ratio', atMost: 1 / LIMITS.timesFaster },
  });
  return [
    against(
      `read and measure ${million}, library`,
      'three-stdlib STLLoader + mergeVertices as called',
      library.asCalled,
    ),
    against('the same', 'three-stdlib with the normals dropped first', library.normalsOff),
    {
      what: `the same, whole program`,
      ours: cli.wallMedianS,
      unit: 's',
      wanted: { of: 'ours', atMost: LIMITS.cliWallS },
    },
    {
      what: 'its peak memory',
      ours: cli.peakMostMB,
      unit: 'MB',
      wanted: { of: 'ours', atMost: LIMITS.cliPeakMB },
    },
  ];
}

function report(): void {
  console.log(`${machineHere()}\n${results.file}`);
  for (const [
    how,
    { oursMs, threeMs, ratios, oursMedianMs, threeMedianMs, ratioMedian, ratioLeast },
  ] of Object.entries(library)) {
    console.log(`${how}: three-stdlib's mergeVertices`);
    console.log(`  ours    ${oursMs.join(' ')} ms, median ${oursMedianMs}`);
    console.log(`  three   ${threeMs.join(' ')} ms, median ${threeMedianMs}`);
    console.log(`  ratio   ${ratios.join(' ')}, median ${ratioMedian}, least ${ratioLeast}`);
  }
  console.log(`program ${cli.wallS.join(' ')} s, median ${cli.wallMedianS}`);
  console.log(`peak    ${cli.peakMB.join(' ')} MB, most ${cli.peakMostMB}`);
}
