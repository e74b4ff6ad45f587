import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Tests that put a database in place, or need a library that nobody has loaded yet: each file has its modules to itself. */
const APART = [
  'tests/geometry/solids/manifold.test.ts',
  'tests/store/**/*.test.ts',
  'tests/fuzz/backup.test.ts',
  'tests/app/keeperTypedBack.test.ts',
  'tests/app/pieceKeeper.test.ts',
  'tests/app/shelf*.test.ts',
];

/** Whole bodies planned again and again: two thirds of all the time. `npm test` runs them, `npm run check` does not. */
const LONG = [
  'tests/cli/{mold,moldAll,offsets,opening,openingCalls}.test.ts',
  'tests/geometry/{looseCorners,soup}.test.ts',
  'tests/geometry/features/{airTraps,airTrapsLaws,attitude,saddles,thicknessBars,thicknessPlaces,thicknessRough}.test.ts',
  'tests/geometry/field/{coverage,damage,invariance,mended,threads}.test.ts',
  'tests/geometry/molds/{conservation,flange,jacket,laws,pulls,undercuts}.test.ts',
  'tests/geometry/solids/levelSurface.test.ts',
  'tests/house/readme.test.ts',
  'tests/plan/{ladder,moldAmounts,moldCompare,moldReview,offsetRanges,offsets,thinShells}.test.ts',
  'tests/plan/opening/{openingSize,planOpening}.test.ts',
  'tests/sheet/openingCard.test.ts',
];

/** Half a minute or more each. */
const LONGEST =
  /tests\/(plan\/(opening\/planOpening|thinShells)|cli\/opening(Calls)?|house\/readme)\.test\.ts$/;

/** The longest go first, so that no thread is left alone with one of them at the end: by itself vitest begins with the files that have the most lines. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isApart = ({ project }: TestSpecification): boolean => project.name === 'apart';
    const rank = (file: TestSpecification): number =>
      isApart(file) ? 0 : LONGEST.test(file.moduleId) ? 1 : file.project.name === 'long' ? 2 : 3;
    return sorted.sort((one, other) => rank(one) - rank(other));
  }
}

export default defineConfig({
  test: {
    environment: 'node',
    // Against what hangs; how fast something is bench/ says. The longest takes 12 s here, and thrice that beside other work.
    testTimeout: 60_000,
    // All cores: by itself vitest leaves one free, which on two cores doubles the time.
    maxWorkers: availableParallelism(),
    sequence: { sequencer: LongestFirst },
    // npm run coverage: the rooms that reckon.
    coverage: {
      provider: 'v8',
      include: ['src/{geometry,yield,plan,job}/**/*.ts'],
      reporter: ['json'],
      reportOnFailure: true,
    },
    projects: [
      // Modules are read once a thread, not once a file: reading them took a third of the time.
      {
        extends: true,
        test: {
          name: 'together',
          include: ['tests/**/*.test.ts'],
          exclude: [...APART, ...LONG],
          isolate: false,
        },
      },
      { extends: true, test: { name: 'long', include: LONG, isolate: false } },
      { extends: true, test: { name: 'apart', include: APART } },
    ],
  },
});
