import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { build, type Plugin } from 'esbuild';
import { packageFolder } from '../../scripts/notices.mjs';
import { BUILT } from './hosted';
import { expect, hasBrowser, test } from './ticket';

const root = resolve('.');
const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name));

/** "react 19.3.1", of the package that a file is of. */
function packageOf(file: string): string | undefined {
  const folder = packageFolder(resolve(root, file));
  if (folder === undefined) return undefined;
  const { name, version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    name: string;
    version: string;
  };
  return `${name} ${version}`;
}

/** The headings of notices, each with what stands under it. */
function sectionsOf(text: string): Map<string, string> {
  const parts = text.split(/^(.+)\n=+$/m).slice(1);
  return new Map(parts.flatMap((part, n) => (n % 2 === 0 ? [[part, parts[n + 1]!.trim()] as const] : [])));
}

/** Files that are fetched stay apart; a name is looked up in its own case: esbuild itself takes PackChart.tsx for packChart.ts. */
const AS_ON_DISK: Plugin = {
  name: 'as on disk',
  setup: (build) => {
    build.onResolve({ filter: /\?url$/ }, ({ path }) => ({ path, external: true }));
    build.onResolve({ filter: /^\.\.?\// }, ({ path, resolveDir }) => {
      const file = ['.ts', '.tsx', '/index.ts'].map((end) => join(resolveDir, path + end)).find(existsSync);
      return file === undefined ? undefined : { path: file };
    });
  },
};

/** What another bundler than the one that built the page takes into it: packages of which a byte or more comes out. */
async function packagesByEsbuild(): Promise<Set<string>> {
  const workers = filesIn('src').filter((file) => file.endsWith('.worker.ts'));
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: ['src/app/main.tsx', ...workers],
    outdir: 'nowhere',
    write: false,
    bundle: true,
    minify: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    metafile: true,
    jsx: 'automatic',
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"', __APP_VERSION__: '"0"' },
    loader: { '.css': 'empty' },
    plugins: [AS_ON_DISK],
  });
  const inputs = Object.values(metafile.outputs).flatMap((output) => Object.entries(output.inputs));
  const taken = inputs.filter(([, { bytesInOutput }]) => bytesInOutput > 0).map(([file]) => packageOf(file));
  return new Set(taken.filter((name) => name !== undefined));
}

test.describe('what others wrote is named with its license', () => {
  const page = sectionsOf(readFileSync(`${BUILT}/third-party.txt`, 'utf8'));

  test('of the page and its workers all that another bundler takes into them', async () => {
    const packages = await packagesByEsbuild();
    expect(packages.size).toBeGreaterThan(15);
    expect([...packages].filter((name) => !page.has(name))).toEqual([]);
  });

  test('of the service worker all that it says of itself, with what keeps its dates', () => {
    const worker = readdirSync(BUILT).find((name) => /^sw-.*\.js$/.test(name))!;
    const parts = readFileSync(`${BUILT}/${worker}`, 'utf8').matchAll(/workbox:([a-z-]+):/g);
    const names = [...new Set([...parts].map(([, part]) => `workbox-${part}`))];
    expect(names.length).toBeGreaterThan(3);
    const named = [...page.keys()].map((heading) => heading.split(' ')[0]);
    expect(named).toEqual(expect.arrayContaining([...names, 'idb']));
  });

  test('of the command line and the library every module that their files name', () => {
    const notices = sectionsOf(readFileSync('dist/THIRD_PARTY_LICENSES.txt', 'utf8'));
    const files = ['dist/index.js', ...filesIn('dist/cli'), ...filesIn('dist/parts')];
    const modules = files
      .filter((file) => file.endsWith('.js'))
      .flatMap((file) => [...readFileSync(file, 'utf8').matchAll(/^\s*\/\/ (node_modules\/\S+)$/gm)]);
    const packages = new Set(modules.map(([, module]) => packageOf(module!)!));
    expect(packages.size).toBeGreaterThan(5);
    expect([...packages].filter((name) => !notices.has(name))).toEqual([]);
  });

  test('each with a text that gives a permission', () => {
    const both = [...page, ...sectionsOf(readFileSync('dist/THIRD_PARTY_LICENSES.txt', 'utf8'))];
    for (const [name, text] of both) expect(text, name).toMatch(/permi(ssion|tted)|Apache License/i);
  });

  test('and the page leads there, without network too', async ({ page: shown, request }) => {
    test.skip(!hasBrowser, 'no chromium was found');
    await shown.goto('./');
    const link = shown.getByRole('link', { name: 'What others wrote, and their licenses' });
    const opened = shown.waitForEvent('popup');
    await link.click();
    await expect((await opened).locator('body')).toContainText('react-dom');
    const served = await request.get((await link.getAttribute('href'))!);
    expect(served.headers()['content-type']).toMatch(/^text\/plain/);
    const worker = readdirSync(BUILT).find((name) => /^sw-.*\.js$/.test(name))!;
    expect(readFileSync(`${BUILT}/${worker}`, 'utf8')).toContain('third-party.txt');
  });
});
