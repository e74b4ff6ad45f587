// npm test: installs what is missing, builds, and runs every test: unit, command line, browser.
// Ends with what failed, told once more, and a line "N passed, N failed", both from the runners' own reports.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureInstalled, root } from './setup.mjs';

ensureInstalled();
const reports = mkdtempSync(join(tmpdir(), 'risewright-test-'));
const runs = [
  {
    name: 'unit and command line',
    file: join(reports, 'vitest.json'),
    count: countVitest,
    args: (file) => [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${file}`,
    ],
  },
  {
    name: 'browser',
    file: join(reports, 'playwright.json'),
    count: countPlaywright,
    args: () => ['node_modules/@playwright/test/cli.js', 'test', '--reporter=list,json'],
    env: { PLAYWRIGHT_JSON_OUTPUT_FILE: join(reports, 'playwright.json') },
  },
];
let passed = 0;
let failed = 0;
let skipped = 0;
/** What failed, a few lines each. */
const faults = [];

for (const [name, args] of [
  ['the command line', ['scripts/build.mjs']],
  ['the app', ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn']],
]) {
  if (node(args) === 0) continue;
  faults.push(`Building ${name} failed.`);
  failed++;
}
for (const run of failed === 0 ? runs : []) {
  console.log(`\n${run.name} tests`);
  const code = node(run.args(run.file), run.env);
  const counts = existsSync(run.file)
    ? run.count(JSON.parse(readFileSync(run.file, 'utf8')))
    : { passed: 0, failed: 0, skipped: 0, faults: [] };
  passed += counts.passed;
  skipped += counts.skipped;
  // A runner that ends badly without a failed test (a crash, a missing browser) counts as one failure.
  failed += code !== 0 && counts.failed === 0 ? 1 : counts.failed;
  faults.push(...counts.faults);
  if (code !== 0 && counts.failed === 0) faults.push(`The ${run.name} tests ended with code ${code}.`);
}
rmSync(reports, { recursive: true, force: true });
for (const fault of faults) console.error(`\nFailed: ${fault}`);
console.log(`\n${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;

function node(args, env = {}) {
  return (
    spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } })
      .status ?? 1
  );
}

function countVitest({ numPassedTests, numFailedTests, numFailedTestSuites, numPendingTests, testResults }) {
  const faults = testResults.flatMap(({ name, status, message, assertionResults }) => {
    const failing = assertionResults.filter((result) => result.status === 'failed');
    if (status === 'failed' && failing.length === 0) return [fault(name, message)];
    return failing.map(({ fullName, failureMessages }) =>
      fault(`${name}: ${fullName}`, failureMessages.join('\n')),
    );
  });
  return {
    passed: numPassedTests,
    failed: numFailedTests === 0 ? numFailedTestSuites : numFailedTests,
    skipped: numPendingTests,
    faults,
  };
}

function countPlaywright({ stats, suites, errors }) {
  const specs = suites.flatMap(function specsOf(suite) {
    return [...(suite.specs ?? []), ...(suite.suites ?? []).flatMap(specsOf)];
  });
  const failing = specs.filter(({ ok }) => !ok);
  const faults = failing.map(({ file, line, title, tests }) => {
    const results = tests.flatMap(({ results }) => results);
    return fault(`${file}:${line} ${title}`, results.map(({ error }) => error?.message ?? '').join('\n'));
  });
  return {
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected,
    skipped: stats.skipped,
    faults: [...errors.map(({ message }) => fault('The runner', message)), ...faults],
  };
}

/** Its name and the first lines of what was said, without the codes of colors. */
function fault(name, message = '') {
  // eslint-disable-next-line no-control-regex -- the escape character begins a color
  const plain = message.replace(/\u001b\[[0-9;]*m/g, '').trim();
  return [name, ...plain.split('\n').slice(0, 12)].join('\n  ');
}
