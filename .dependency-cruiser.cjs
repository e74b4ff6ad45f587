/**
 * Import directions: who may import whom. Read it as a table; tests/house/imports.test.ts plants a bad import for each row
 * and expects it to be caught.
 */
const LAYERS = {
  // room: the rooms of ours it may import
  units: [],
  yield: ['units', 'problem', 'estimate'],
  geometry: ['units', 'problem', 'estimate'],
  checks: ['yield', 'units', 'problem', 'estimate'],
  plan: ['geometry', 'yield', 'checks', 'units', 'problem', 'estimate'],
  job: ['yield', 'units', 'problem', 'estimate'],
  store: ['job', 'units', 'problem', 'estimate'],
  words: ['plan', 'yield', 'checks', 'units', 'problem', 'estimate'],
  sheet: ['words', 'plan', 'yield', 'checks', 'units', 'problem', 'estimate'],
  worker: ['plan', 'geometry', 'yield', 'checks', 'job', 'words', 'units', 'problem', 'estimate'],
  viewer: ['geometry', 'units', 'problem', 'estimate'],
  app: [
    'worker',
    'viewer',
    'store',
    'job',
    'sheet',
    'words',
    'plan',
    'geometry',
    'yield',
    'checks',
    'units',
    'problem',
    'estimate',
  ],
  cli: ['plan', 'job', 'sheet', 'geometry', 'yield', 'checks', 'words', 'units', 'problem', 'estimate'],
};

const PURE =
  '^src/(units|yield|geometry|checks|plan|job|words|sheet)/|^src/(meshCodes|codes|problem|estimate|index|apiTypes)\\.ts$';

const layerRules = Object.entries(LAYERS).map(([room, allowed]) => ({
  name: `layer-${room}`,
  comment: `${room} may import only ${[room, ...allowed].join(', ')}`,
  severity: 'error',
  from: { path: `^src/${room}/` },
  to: { path: '^src/', pathNot: [room, ...allowed].map((name) => `^src/${name}(/|\\.ts$)`) },
}));

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: { path: '^src' }, to: { circular: true } },
    {
      name: 'leaves-import-nothing',
      severity: 'error',
      from: { path: '^src/(meshCodes|codes|problem|estimate)\\.ts$' },
      to: { path: '^src/', pathNot: '^src/(meshCodes|codes)\\.ts$' },
    },
    ...layerRules,
    {
      name: 'pure-no-node',
      comment: 'the engine runs in a browser',
      severity: 'error',
      from: { path: PURE },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'pure-no-react',
      severity: 'error',
      from: { path: PURE },
      to: { path: 'node_modules/(react|react-dom|@react-three|three|three-stdlib)/' },
    },
    {
      name: 'manifold-only-in-geometry',
      severity: 'error',
      from: { path: '^src', pathNot: '^src/geometry/' },
      to: { path: 'node_modules/manifold-3d/' },
    },
    {
      name: 'field-imports-neither-three-nor-manifold',
      severity: 'error',
      from: { path: '^src/geometry/field/' },
      to: { path: 'node_modules/(three|manifold-3d)' },
    },
    {
      name: 'src-no-tests',
      severity: 'error',
      from: { path: '^src' },
      to: { path: '^(tests|bench|scripts)/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.mjs', '.js'] },
  },
};
