import { holds, checksOf, runTrial, type RangeCheck, type TrialResult } from '../tests/support/trialResult';
import { offsetTrial } from '../tests/support/offsetTrials';
import { HARMLESS } from '../tests/support/trialDamage';

/** 400 random scans of bodies whose offsets are known: how often do the stated ranges hold the truth, and how wide are they? */
const TRIALS = 400;
const MOST_VOXELS = 1e6;

/** What the project promises of its ranges. */
const LIMITS = { heldShare: 0.95, harmlessWidthShare: 0.005 };

const all = Array.from({ length: TRIALS }, (_, i) => runTrial(offsetTrial(i + 1, MOST_VOXELS)));
const results = all.filter((result): result is TrialResult => !('refused' in result));
for (const one of all)
  if ('refused' in one)
    console.log(`refused: seed ${one.trial.seed}, ${one.trial.shape}, ${one.trial.damage}: ${one.refused}`);

print('all', () => `${TRIALS} trials`);
print('by damage', ({ trial }) => trial.damage);
print('by shape', ({ trial }) => trial.shape);
print('by voxel', ({ voxelMm }) => `${Math.min(4, Math.floor(voxelMm))} mm and up`);
print('by shrinking in voxels', ({ trial, voxelMm }) => `from ${band(-trial.inMm / voxelMm)}`);
const harmless = results.filter(({ trial }) => HARMLESS.includes(trial.damage));
print('nothing lost, by shape', ({ trial }) => trial.shape, harmless);
for (const result of results)
  for (const check of checksOf(result)) if (!holds(check)) console.log(`missed: ${told(result, check)}`);

const heldShare = results.filter((result) => checksOf(result).every(holds)).length / results.length;
const wide = harmless.flatMap((result) =>
  checksOf(result)
    .filter(({ widthShare }) => widthShare > LIMITS.harmlessWidthShare)
    .map((check) => told(result, check)),
);
for (const line of wide) console.log(`nothing lost, yet wide: ${line}`);
const ms = results.reduce((sum, result) => sum + result.ms, 0);
console.log(`sizeScan ${(ms / results.length).toFixed(0)} ms a trial`);
console.log(
  `all three ranges held in ${percent(heldShare)} of the trials; wanted ${percent(LIMITS.heldShare)}`,
);
if (heldShare < LIMITS.heldShare) process.exitCode = 1;

/** One line a group, for V(0), grown and shrunk: share held; |error| over half-width at the median, 95 of 100 and worst; widths. */
function print(title: string, keyOf: (result: TrialResult) => string, from = results): void {
  console.log(`\n${title}`);
  const groups = new Map<string, TrialResult[]>();
  for (const result of from) groups.set(keyOf(result), [...(groups.get(keyOf(result)) ?? []), result]);
  for (const [key, group] of [...groups].sort(([a], [b]) => a.localeCompare(b))) {
    const columns = (['still', 'grown', 'shrunk'] as const).map((which) => line(group.map((r) => r[which])));
    console.log(`${key.padEnd(16)}${String(group.length).padStart(4)}  ${columns.join('  |  ')}`);
  }
}

function line(checks: readonly RangeCheck[]): string {
  const ratios = checks.map(({ ratio }) => Math.abs(ratio));
  const widths = checks.map(({ widthShare }) => widthShare);
  return [
    `held ${percent(checks.filter(holds).length / checks.length)}`,
    `error/half ${[0.5, 0.95, 1].map((q) => quantile(ratios, q).toFixed(2)).join(' ')}`,
    `width ${[0.5, 0.95, 1].map((q) => percent(quantile(widths, q))).join(' ')}`,
  ].join(' ');
}

function told({ trial, voxelMm }: TrialResult, check: RangeCheck): string {
  const { seed, shape, damage } = trial;
  return [
    `seed ${seed}, ${shape}, ${damage}, voxel ${voxelMm} mm, offset ${check.offsetMm.toFixed(2)} mm`,
    `true ${check.trueCm3.toPrecision(4)} cm3`,
    `error ${percent(check.errorShare)}, error/half ${check.ratio.toFixed(2)}, width ${percent(check.widthShare)}`,
  ].join(', ');
}

function quantile(numbers: readonly number[], q: number): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.ceil(q * sorted.length) - 1]!;
}

function band(voxels: number): string {
  return String([0, 1, 2, 3, 4, 6, 9].filter((from) => voxels >= from).at(-1)).padStart(2);
}

function percent(share: number): string {
  return `${(100 * share).toFixed(Math.abs(share) < 0.1 ? 3 : 1)} %`;
}
