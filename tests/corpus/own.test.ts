import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { EXIT, exitOf } from '../../src/cli/exit';
import { readScan } from '../../src/geometry';
import { say } from '../../src/words/say';
import { filesOf, judge } from './readFile';
import { verdictOf, type Expectation, type Said, type Verdict } from './verdict';

/** Our own corpus: files named for what is odd about them, made by generate.mjs, which shares no code with the program. */
const folder = join(import.meta.dirname, 'files');
const files = filesOf(folder);

describe('our own corpus is answered as its manifest asks', () => {
  it.each(files.map((one) => [one.file, one] as const))('%s', (_, one) => {
    const { said, verdict } = judge(folder, one);
    expect(verdict, `${JSON.stringify(said)}, expected ${JSON.stringify(one.expect)}`).toBe('pass');
  });

  it('every file of each format is as the generator makes it', () => {
    const check = spawnSync(process.execPath, [join(import.meta.dirname, 'generate.mjs'), '--check'], {
      encoding: 'utf8',
    });
    expect(check.stderr).toBe('');
    expect(check.status).toBe(0);
    for (const ending of ['stl', 'obj', 'ply', '3mf'])
      expect(files.filter(({ file }) => file.endsWith(`.${ending}`)).length).toBeGreaterThanOrEqual(15);
  });

  it('what a reader says of them is a sentence, and what it refuses ends the command line with 3', () => {
    for (const { file } of files) {
      const scan = readScan({ bytes: new Uint8Array(readFileSync(join(folder, file))), name: file });
      for (const problem of scan.ok ? scan.value.findings : [scan.problem]) {
        const { text, hint } = say(problem);
        if (!scan.ok) expect(exitOf(problem.code), `${file}: ${problem.code}`).toBe(EXIT.unreadable);
        expect(`${text} ${hint}`, file).not.toMatch(/undefined|an unknown amount|NaN(?!")|null/);
      }
    }
  });
});

describe('the verdict on an answer', () => {
  const right: Said = { ok: true, warnings: ['WELDED'], triangles: 12, volumeMm3: 6000 };
  const wrong: Said = { ...right, volumeMm3: 6001 };
  const plain = { ...right, warnings: [] };
  const no = (code: string): Said => ({ ok: false, code });
  const either: Expectation = {
    outcome: 'either',
    volume_mm3: 6000,
    warnings_any_of: ['WELDED'],
    error_codes_any_of: ['SYNTAX'],
  };
  it.each<[string, Expectation, Said, Verdict]>([
    ['right', { outcome: 'exact', volume_mm3: 6000 }, plain, 'pass'],
    ['within 1 part in 100 000', { outcome: 'exact', volume_mm3: 6000.05 }, plain, 'pass'],
    ['not within it', { outcome: 'exact', volume_mm3: 6000.07 }, plain, 'silent wrong'],
    ['within a tolerance of its own', { outcome: 'exact', volume_mm3: 6060, rel_tol: 0.02 }, plain, 'pass'],
    [
      'another volume is as right',
      { outcome: 'exact', volume_mm3: 1, volume_also_ok_mm3: [6000] },
      plain,
      'pass',
    ],
    ['a good file refused', { outcome: 'exact', volume_mm3: 6000 }, no('SYNTAX'), 'refused'],
    ['a fault', either, { ok: false, crash: 'at line 1' }, 'crash'],
    ['right and said', { ...either, outcome: 'warn' }, right, 'pass'],
    ['right, not said', { ...either, outcome: 'warn' }, plain, 'missing warning'],
    ['nothing need be said', { ...either, warnings_any_of: ['NONE'] }, plain, 'pass'],
    ['wrong and said', either, wrong, 'wrong with warning'],
    ['wrong, not said', either, { ...wrong, warnings: ['THIN'] }, 'silent wrong'],
    ['refused as it may be', either, no('SYNTAX'), 'pass'],
    ['refused with another code', either, no('TOO_LARGE'), 'unclear error'],
    ['read though it should not be', { outcome: 'reject', error_codes_any_of: [] }, right, 'silent wrong'],
    [
      'a volume where there is none, said',
      { outcome: 'no_volume', warnings_any_of: ['WELDED'] },
      right,
      'pass',
    ],
    ['the same, not said', { outcome: 'no_volume', warnings_any_of: ['WELDED'] }, plain, 'silent wrong'],
    [
      'said, and not one of those that are right',
      { outcome: 'no_volume', warnings_any_of: ['WELDED'], volume_also_ok_mm3: [1] },
      right,
      'wrong with warning',
    ],
  ])('%s', (_, wanted, said, verdict) => expect(verdictOf(wanted, said)).toBe(verdict));
});
