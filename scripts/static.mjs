// npm run check:static: every check that runs nothing of the tool, two at a time, each one's words in one piece.
import { spawn } from 'node:child_process';
import { root } from './setup.mjs';

/** The longest first. */
const CHECKS = ['lint', 'typecheck', 'format:check', 'unused', 'imports', 'api:check', 'docs:check', 'lock'];
const AT_ONCE = 2;

const failed = [];
const waiting = [...CHECKS];
await Promise.all(
  Array.from({ length: AT_ONCE }, async () => {
    for (let name = waiting.shift(); name !== undefined; name = waiting.shift()) {
      const { code, words } = await run(name);
      console.log(`${code === 0 ? 'ok' : 'FAILED'}: npm run ${name}`);
      if (code !== 0) failed.push(name);
      if (code !== 0 || words !== '') console.log(words);
    }
  }),
);
if (failed.length > 0) console.error(`Not right: ${failed.join(', ')}`);
process.exitCode = failed.length === 0 ? 0 : 1;

function run(name) {
  return new Promise((resolve, reject) => {
    const child = spawn('npm', ['run', '--silent', name], { cwd: root });
    let words = '';
    const hear = (chunk) => (words += chunk);
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('error', reject);
    child.on('close', (code) => resolve({ code: code ?? 1, words: words.trim() }));
  });
}
