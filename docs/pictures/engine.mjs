import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** What the pictures show and the library keeps to itself, by the file that holds it. */
const SHOWN = { 'measureLevels.ts': ['newLevelsTask'] };

const CONTENTS = `
export { readScan, measureSolid, placeMesh, buildField, distanceFunction, runFieldTask } from './src/geometry';
export { newLevelsTask } from './src/geometry/field/measureLevels';
export { binOf } from './src/geometry/field/columnBin';
export { SAMPLED } from './src/geometry/field/levels';
export { sectionOutlines } from './src/geometry/measure/section';
export { openMoldBench, planOpening } from './src/plan';
`;

/** Lets the parts of SHOWN out of their files; a name that is gone stops the build. */
const showing = {
  name: 'showing',
  setup: ({ onLoad }) =>
    onLoad({ filter: /field[\\/]measureLevels\.ts$/ }, ({ path }) => ({
      contents: `${readFileSync(path, 'utf8')}\nexport { ${SHOWN[path.split(/[\\/]/).at(-1)].join(', ')} };\n`,
      loader: 'ts',
    })),
};

/** The engine as its sources stand now. */
async function loadEngine() {
  const folder = `${root}node_modules/.cache/risewright-pictures`;
  mkdirSync(folder, { recursive: true });
  const { outputFiles } = await build({
    stdin: { contents: CONTENTS, resolveDir: root, loader: 'ts' },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'esm',
    plugins: [showing],
  });
  writeFileSync(`${folder}/engine.mjs`, outputFiles[0].contents);
  return import(pathToFileURL(`${folder}/engine.mjs`));
}

export const engine = await loadEngine();

/** A sample as the engine measures it, placed. */
export function solidOf(name, up, mmPerUnit) {
  const bytes = readFileSync(`${root}sample-meshes/${name}`);
  const { mesh, coordinateStep } = valueOf(engine.readScan({ bytes, name }));
  const placed = engine.placeMesh(mesh, { up, mmPerUnit });
  return valueOf(engine.measureSolid(placed, { coordinateStepMm: coordinateStep * mmPerUnit }));
}

export function valueOf(outcome) {
  if (!outcome.ok) throw new Error(`pictures: expected an answer, got ${outcome.problem.code}`);
  return outcome.value;
}
