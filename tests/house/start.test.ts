import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const start = (args: string[], env: Record<string, string> = {}) =>
  spawnSync(process.execPath, [join(root, 'scripts/start.mjs'), ...args], {
    encoding: 'utf8',
    timeout: 15_000,
    env: { ...process.env, ...env },
  });

it.each([['--wan'], ['lan'], ['--lan', '--port=1']])(
  'start refuses %s, and says what it knows',
  (...args) => {
    const { status, stderr, stdout } = start(args);
    expect(status).toBe(2);
    expect(stderr).toContain(`does not know ${args.at(-1)}`);
    expect(stderr).toContain('npm start -- --lan');
    expect(stdout).toBe('');
  },
);

it('start tells of an option that npm kept to itself', () => {
  const { status, stderr } = start([], { npm_config_lan: 'true' });
  expect(status).toBe(2);
  expect(stderr).toContain('npm start -- --lan');
});

it('the icons are as their script draws them', () => {
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'scripts/icons.mjs'), '--check'], {
    encoding: 'utf8',
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
});
