import { startCrew } from '../src/cli/nodeCrew';
import { measureSolid, readScan } from '../src/geometry';
import { makeSolid } from '../src/geometry/solids';
import { openMoldBench, planMold, type MoldBench } from '../src/plan';
import { bumpyBodyStl } from './bumpyBody';
import { keepResults, machineHere, median } from './report';

/** A skin of 10 mm with its jacket around 250 000 triangles, from the bytes of the file, and another thickness on the standing field. */
const RINGS = 354;
const SKIN_MM = 10;
const WANTED = { wholeS: 3, nextMs: 300 };
const RUNS = 5;

const root = process.argv[2]!;
console.log(machineHere());
const bytes = bumpyBodyStl(RINGS);
const crew = startCrew(2);
const wholeS: number[] = [];
const nextMs: number[] = [];
const oracleS: number[] = [];
for (let run = 0; run < RUNS; run++) {
  const from = performance.now();
  const bench = opened();
  rubberCm3(bench, SKIN_MM);
  wholeS.push((performance.now() - from) / 1000);
  for (const skinMm of [8, 12, 9]) {
    const start = performance.now();
    rubberCm3(bench, skinMm);
    nextMs.push(performance.now() - start);
  }
  oracleS.push(await grownByLibrary());
}
crew.end();
const ratio = median(wholeS.map((s, i) => s / oracleS[i]!));
console.log(
  `250 k triangles, ${SKIN_MM} mm skin, jacket and undercuts: ${wholeS.map((s) => s.toFixed(2)).join(' ')} s, median ${median(wholeS).toFixed(2)}`,
);
console.log(`  another thickness: median ${median(nextMs).toFixed(0)} ms`);
console.log(
  `  against the volume of the body alone as the solids library reads it: ${ratio.toFixed(1)} times`,
);
keepResults(
  root,
  'mold',
  [
    {
      what: `silicone skin of ${SKIN_MM} mm, flange, undercuts and jacket around 250 000 triangles, from the file's bytes`,
      ours: median(wholeS),
      unit: 's',
      baseline: 'Manifold takes in the same triangles',
      ratio,
      wanted: { of: 'ours', atMost: WANTED.wholeS },
    },
    {
      what: 'another thickness of that skin',
      ours: median(nextMs),
      unit: 'ms',
      wanted: { of: 'ours', atMost: WANTED.nextMs },
    },
  ],
  { wholeS, nextMs, oracleS, ratio },
);

function opened(): MoldBench {
  const scan = readScan({ bytes, name: 'bumpy.stl' });
  const made = scan.ok ? openMoldBench(scan.value, { fileUnit: 'mm', up: '+z', crew }) : scan;
  if (!made.ok) throw new Error(made.problem.code);
  return made.value.bench;
}

function rubberCm3(bench: MoldBench, skinMm: number): number {
  const mold = planMold(bench, { type: 'skin', settings: { skinMm } });
  if (!mold.ok) throw new Error(mold.problem.code);
  return mold.value.siliconeCm3.value;
}

/** The named baseline in the same run: the same triangles made a solid by Manifold and measured, as a block mold would need. */
async function grownByLibrary(): Promise<number> {
  const scan = readScan({ bytes, name: 'bumpy.stl' });
  const solid = scan.ok ? measureSolid(scan.value.mesh, { coordinateStepMm: 1e-5 }) : scan;
  if (!solid.ok) throw new Error(solid.problem.code);
  const start = performance.now();
  await makeSolid(solid.value.chain);
  return (performance.now() - start) / 1000;
}
