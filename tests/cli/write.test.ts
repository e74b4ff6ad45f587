import { existsSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makeFolder } from '../../src/cli/makeFolder';
import { call, documents } from '../support/cliCall';

const FULL = { cannotWrite: 'no space left on device' };

describe('sample DIR writes over nothing', () => {
  it.each(['try/shop.json', 'try/quay-troll-scan.stl'])('%s is there: exit 2, nothing written', (there) => {
    const called = call(['sample', 'try', '--json'], { files: { [there]: 'mine' } });
    expect(called.exit).toBe(2);
    expect(documents(called)[0]!.error!.text).toBe(`${there} is already there, and it is not written over.`);
    expect([...called.files.keys(), ...called.folders]).toEqual([]);
  });

  it('a disk that refuses is told as such, not as a file that cannot be opened', () => {
    const called = call(['sample', 'try'], FULL);
    expect(called.exit).toBe(2);
    expect(called.notes).toContain('try/shop.json cannot be written: no space left');
    expect(called.notes).toContain('another folder');
  });
});

describe('-o on a disk that refuses', () => {
  const foam = ['--volume', '5 L', '--free-rise', '96', '--ratio', '52:100'];

  it.each<[string, string[]]>([
    ['an answer', ['batch', ...foam]],
    ['a complaint', ['batch', '--volume', '5 L']],
    ['a size', ['size', 'sphere-r50.stl', '--file-unit', 'mm']],
  ])('%s in JSON: the error is on stdout, exit 2', (_, args) => {
    const called = call([...args, '--json', '-o', 'none/x.json'], FULL);
    expect(called.exit).toBe(2);
    expect(called.notes).toBe('');
    const [document, ...more] = documents(called);
    expect(more).toEqual([]);
    expect(document).toMatchObject({ schema: 'risewright/error@1', error: { code: 'CANNOT_WRITE_FILE' } });
    expect(document!.error!.text).toBe('none/x.json cannot be written: no space left on device.');
  });
});

describe('makeFolder on a real disk', () => {
  const root = mkdtempSync(join(tmpdir(), 'risewright-'));
  afterAll(() => rmSync(root, { recursive: true }));

  it('makes what is missing above, and takes a folder that is there', () => {
    const deep = join(root, 'a', 'b', 'c');
    makeFolder(deep);
    makeFolder(deep);
    expect(statSync(deep).isDirectory()).toBe(true);
  });

  it('throws where a file is in the way', () => {
    writeFileSync(join(root, 'file'), '');
    expect(() => makeFolder(join(root, 'file'))).toThrow('EEXIST');
    expect(() => makeFolder(join(root, 'file', 'below'))).toThrow('ENOTDIR');
  });

  it.runIf(existsSync('/proc/self'))('ends where a parent takes no folder', () => {
    expect(() => makeFolder('/proc/no-folder')).toThrow('ENOENT');
    expect(() => makeFolder('/proc/no-folder/below')).toThrow('ENOENT');
  });
});

describe('an answer is never written over what it was read from', () => {
  it.each([
    ['size', 'ball.stl', '--file-unit', 'mm'],
    ['mold', 'ball.stl', '--file-unit', 'mm', '--type', 'block'],
    ['batch', '--scan', 'ball.stl', '--free-rise', '96 kg/m3', '--ratio', '100:55'],
  ])('%s %s -o the same file: exit 2, nothing written, with and without JSON', (...args) => {
    for (const more of [[], ['--json']]) {
      const called = call([...args, '-o', './ball.stl', ...more], { files: { 'ball.stl': 'solid' } });
      expect(called.exit).toBe(2);
      expect([...called.files.keys()]).toEqual([]);
    }
  });
});
