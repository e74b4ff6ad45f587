import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../scripts/setup.mjs';
import { loadSources } from '../../scripts/sources.mjs';

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
export const engine = await loadSources(CONTENTS, { plugins: [showing] });

/** A sample as the engine measures it, placed. */
export function solidOf(name, up, mmPerUnit) {
  const bytes = readFileSync(join(root, 'sample-meshes', name));
  const { mesh, coordinateStep } = valueOf(engine.readScan({ bytes, name }));
  const placed = engine.placeMesh(mesh, { up, mmPerUnit });
  return valueOf(engine.measureSolid(placed, { coordinateStepMm: coordinateStep * mmPerUnit }));
}

export function valueOf(outcome) {
  if (!outcome.ok) throw new Error(`pictures: expected an answer, got ${outcome.problem.code}`);
  return outcome.value;
}
