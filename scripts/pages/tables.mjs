import { loadSources } from '../sources.mjs';

/** What the pages are made from: the tables of rules, the lists of what is registered, and the opened sums. */
const CONTENTS = `
export { RULES, INPUT_BOUNDS } from './src/yield/rules';
export { MDI_LIMITS } from './src/yield/pour/exposure';
export { POUR_RULES } from './src/yield/pour/rules';
export { POUR_BOUNDS } from './src/yield/pour/bounds';
export { SILICONE_RULES, SILICONE_BOUNDS } from './src/yield/silicone/rules';
export { MOLDMAKING_RULES, MOLDMAKING_BOUNDS } from './src/yield/moldmaking/rules';
export { DEMOLD_RULES, DEMOLD_BOUNDS } from './src/yield/demold/rules';
export { LEARN_RULES, LEARN_BOUNDS } from './src/yield/learn/rules';
export { VOLUME_RULES, VOLUME_BOUNDS } from './src/yield/volumeWays/rules';
export { RUN_RULES, RUN_BOUNDS } from './src/yield/run/rules';
export { WARMTH_RULES, WARMTH_BOUNDS } from './src/yield/warmth/rules';
export { CHECK_FIGURES, CHECKS } from './src/checks';
export { MOLD_TYPES } from './src/geometry/molds';
export { SCAN_FORMATS } from './src/geometry/io/formats';
export { MESH_WRITERS } from './src/geometry/io/writers';
export { JACKET_MATERIALS, WALL_MATERIALS } from './src/yield';
export { COMMANDS } from './src/cli/commands';
export { COMMON_OPTIONS } from './src/cli/command';
export { figuresOf, preparePour } from './src/plan';
export { FULL_POUR } from './tests/support/fullPour';
`;

/** The sources as they stand now. */
export const loadTables = () => loadSources(CONTENTS);
