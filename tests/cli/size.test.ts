import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close';
import { call, document, documents, type Document } from '../support/cliCall';
import { trianglesOf, withTriangles } from '../support/meshTools';
import { sampleBytes, truthOf } from '../support/samples';
import { box, sphere } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

const TROLL = ['size', 'quay-troll-scan.stl', '--up', '+y', '--tall', '290.85 mm'];
const BOX = 'box-40x30x20-ascii.stl';

/** What the command-line contract promises, in its order. */
const ENVELOPE = ['schema', 'inputs', 'assumptions', 'findings', 'result', 'range', 'because'];
const RESULT = [
  'volume_cm3',
  'area_cm2',
  'extents_mm',
  'triangles',
  'pieces',
  'holes',
  'rims',
  'closed',
  'method',
  'file_unit',
];

const everyValue = (value: unknown): unknown[] =>
  Array.isArray(value)
    ? value.flatMap(everyValue)
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(everyValue)
      : [value];

describe('size --json: the envelope others script against', () => {
  const troll = document(TROLL);

  it('keys and their order', () => {
    expect(Object.keys(troll)).toEqual(ENVELOPE);
    expect(Object.keys(troll.result)).toEqual(RESULT);
    expect(Object.keys(troll.range)).toEqual(['volume_cm3']);
    expect(troll.schema).toBe('risewright/size@1');
    for (const rim of troll.result.rims as object[])
      expect(Object.keys(rim)).toEqual(['length_mm', 'area_cm2', 'flatness_mm']);
  });

  it('the values of the troll scan: within 1 % of the clean head (truth.json), which is in the range', () => {
    const truthCm3 = truthOf('quay-troll-scan.stl').clean_volume_mm3 / 1000;
    expectClose(troll.result.volume_cm3 as number, truthCm3, 0.01);
    const [low, high] = troll.range.volume_cm3!;
    expect(low <= truthCm3 && truthCm3 <= high).toBe(true);
    expect(troll.result).toMatchObject({
      triangles: 35756,
      pieces: 7,
      holes: 4,
      closed: false,
      method: 'exact',
      file_unit: 'in',
    });
    expect(troll.inputs).toEqual({ file: 'quay-troll-scan.stl', tall: '290.85 mm', up: '+y' });
    expect(troll.assumptions).toEqual([]);
  });

  it('findings carry a code of the contract, a status, a sentence, and count, effect and place where they have one', () => {
    for (const finding of troll.findings) {
      expect(['fine', 'look', 'stop', 'unknown']).toContain(finding.status);
      expect(finding.text).toMatch(/\.$/);
    }
    expect(troll.findings.find((f) => f.code === 'MULTI_SHELL')).toMatchObject({ count: 6 });
    const holes = troll.findings.find((f) => f.code === 'NOT_CLOSED')!;
    expect(holes.count).toBe(4);
    expect(holes.effect_cm3).toBeGreaterThan(0);
    expect(holes.at_mm).toHaveLength(3);
  });

  it('no null, no NaN, no empty text anywhere', () => {
    const { out } = call([...TROLL, '--json']);
    expect(out).not.toMatch(/null|NaN|Infinity|undefined/);
    for (const value of everyValue(troll))
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
  });

  it('one line, one line end, and the same input gives the same bytes', () => {
    const [one, two] = [call([...TROLL, '--json']), call([...TROLL, '--json'])];
    expect(one.out).toBe(two.out);
    expect(one.out.indexOf('\n')).toBe(one.out.length - 1);
    expect(one.notes).toBe('');
  });

  it('up taken for granted is an assumption', () => {
    expect(document(['size', BOX, '--file-unit', 'mm']).assumptions).toEqual([
      { name: 'up', value: '+z', unit: '', from: 'assumed' },
    ]);
  });

  it.each([
    ['mm', 24],
    ['cm', 24e3],
    ['m', 24e9],
    ['in', 24 * 25.4 ** 3],
    ['ft', 24 * 304.8 ** 3],
  ])('a box of 40 x 30 x 20 %s', (unit, cm3) => {
    const { result } = document(['size', BOX, '--file-unit', unit]);
    expectClose(result.volume_cm3 as number, cm3, 1e-12);
    expect(result.file_unit).toBe(unit);
  });
});

describe('several scans', () => {
  const three = call(['size', BOX, 'missing.stl', 'torus-r50-r12.stl', '--file-unit', 'mm', '--json']);

  it('one document a line, each naming its file, in order; the first failure sets the exit code', () => {
    const lines = documents(three);
    expect(lines.map((d) => d.inputs.file)).toEqual([BOX, 'missing.stl', 'torus-r50-r12.stl']);
    expect(lines.map((d) => d.schema)).toEqual([
      'risewright/size@1',
      'risewright/error@1',
      'risewright/size@1',
    ]);
    expect(lines[1]!.error).toMatchObject({ code: 'CANNOT_READ_FILE' });
    expect(three.exit).toBe(3);
  });

  it('of two failures the first counts: 4 (nothing solid), then 3 (no such file)', () => {
    const sheet = stlBytes(withTriangles(box([50, 50, 5]), trianglesOf(box([50, 50, 5])).slice(0, 2)));
    const args = (files: string[]): string[] => ['size', ...files, '--file-unit', 'mm', '--json'];
    expect(call(args(['sheet.stl', 'missing.stl']), { files: { 'sheet.stl': sheet } }).exit).toBe(4);
    expect(call(args(['missing.stl', 'sheet.stl']), { files: { 'sheet.stl': sheet } }).exit).toBe(3);
  });
});

describe('exit codes', () => {
  const moebiusLike = stlBytes(withTriangles(sphere(50, 8), trianglesOf(sphere(50, 8)).slice(0, 1)));
  it.each<[string, string[], number, Parameters<typeof call>[1]]>([
    ['an answer', ['size', BOX, '--file-unit', 'mm'], 0, {}],
    ['no such option', ['size', BOX, '--file-units', 'mm'], 2, {}],
    ['no such command', ['seize', BOX], 2, {}],
    ['no scan', ['size'], 2, {}],
    ['a unit that is none', ['size', BOX, '--file-unit', 'furlong'], 2, {}],
    ['a file that is not there', ['size', 'nowhere.stl', '--file-unit', 'mm'], 3, {}],
    ['a file that is no mesh', ['size', 'a.stl', '--file-unit', 'mm'], 3, { files: { 'a.stl': '%PDF-1.7' } }],
    ['an ending that is not read', ['size', 'a.step', '--file-unit', 'mm'], 3, { files: { 'a.step': 'x' } }],
    ['an open scan', ['size', 'a.stl', '--file-unit', 'mm'], 4, { files: { 'a.stl': moebiusLike } }],
    ['no unit', ['size', BOX], 5, {}],
    ['a cut that leaves nothing', ['size', BOX, '--file-unit', 'mm', '--cut', 'z=21'], 2, {}],
    ['help', ['--help'], 0, {}],
    ['help of a command', ['size', '--help'], 0, {}],
    ['version', ['--version'], 0, {}],
  ])('%s', (_, args, exit, desk) => {
    const words = call(args, desk);
    expect(words.exit).toBe(exit);
    if (exit !== 0) {
      expect(words.out).toBe('');
      expect(words.notes.length).toBeGreaterThan(10);
    }
    if (args.includes('--help') || args.includes('--version')) return;
    const json = call([...args, '--json'], desk);
    expect(json.exit).toBe(exit);
    expect(json.notes).toBe('');
    const [said] = documents(json) as [Document];
    if (exit === 0) return;
    expect(said.schema).toBe('risewright/error@1');
    expect(Object.keys(said.error!)).toEqual(['code', 'text', 'hint']);
    for (const text of Object.values(said.error!)) expect(text).not.toMatch(/^$|undefined|NaN/);
  });

  it('strict: 6 when a check says Stop, and the answer is there; without it 0', () => {
    // Taped at twice what the named unit says: one of the two is wrong by far more than 10 %.
    const args = ['size', 'sphere-r50.stl', '--tall', '200 mm', '--file-unit', 'mm', '--json'];
    const [calm, strict] = [call(args), call([...args, '--strict'])];
    expect(documents(calm)[0]!.findings.some((f) => f.status === 'stop')).toBe(true);
    expect([calm.exit, strict.exit]).toEqual([0, 6]);
    expect(documents(strict)[0]!.result).toEqual(documents(calm)[0]!.result);
  });

  it('without a unit the size under each unit is told, and none is picked', () => {
    const { error } = document(['size', 'quay-troll-scan.stl', '--up', '+y']);
    expect(error!.code).toBe('SCALE_UNKNOWN');
    for (const word of ['millimeters', 'centimeters', 'inches', 'feet', 'meters', '11.5'])
      expect(error!.text).toContain(word);
  });
});

describe('where the scan comes from and where the answer goes', () => {
  it('stdin needs its format', () => {
    const desk = { stdin: sampleBytes(BOX) };
    expect(call(['size', '-', '--file-unit', 'mm', '--json'], desk).exit).toBe(2);
    const { result, inputs } = document(['size', '-', '--format', 'stl', '--file-unit', 'mm'], desk);
    expectClose(result.volume_cm3 as number, 24, 1e-12);
    expect(inputs).toMatchObject({ file: '-', format: 'stl' });
  });

  it('stdin called by the wrong format: what it holds decides, and that is said', () => {
    const { result, findings } = document(['size', '-', '--format', 'obj', '--file-unit', 'mm'], {
      stdin: sampleBytes(BOX),
    });
    expectClose(result.volume_cm3 as number, 24, 1e-12);
    expect(findings).toContainEqual(expect.objectContaining({ code: 'WRONG_FORMAT', status: 'look' }));
  });

  it('-o writes the same document to a file, and nothing to stdout; "-" is stdout', () => {
    const args = ['size', BOX, '--file-unit', 'mm', '--json'];
    const plain = call(args).out;
    const toFile = call([...args, '-o', 'answer.json']);
    expect(toFile).toMatchObject({ out: '', exit: 0 });
    expect(toFile.files.get('answer.json')).toBe(plain);
    expect(call([...args, '-o', '-']).out).toBe(plain);
  });

  it('progress only on a terminal, and not when quiet', () => {
    const args = ['size', BOX, '--file-unit', 'mm'];
    expect(call(args).notes).toBe('');
    expect(call(args, { isTerminal: true }).notes).toContain('measuring');
    expect(call([...args, '--quiet'], { isTerminal: true }).notes).toBe('');
  });
});

describe('quantities on the command line', () => {
  it('an ambiguous length is refused with both readings', () => {
    const { error } = document(['size', BOX, '--tall', '1,250']);
    expect(error!.code).toBe('BAD_CALL');
    expect(error!.text).toMatch(/1[.,]25\b/);
    expect(error!.text).toMatch(/1[\s\u2009\u202f]?250/);
    expect(call(['size', BOX, '--tall', '1,250']).exit).toBe(2);
  });

  it.each([
    ['200 mm', 200],
    ['200', 200],
    ['20 cm', 200],
    ['7 7/8 in', 200.025],
    ['7.874 in', 199.9996],
  ])('--tall "%s" is %d mm', (text, mm) => {
    expectClose((document(['size', BOX, '--tall', text]).result.extents_mm as number[])[2]!, mm, 1e-12);
  });

  it.each([['200 g'], ['-5 mm'], ['0 mm'], ['NaN'], [''], ['tall']])('--tall "%s" is refused', (text) => {
    expect(call(['size', BOX, `--tall=${text}`, '--json']).exit).toBe(2);
  });

  it('--span and --is: the diagonal 3-4-12-13 of a box (Pythagoras)', () => {
    const desk = { files: { 'b.stl': stlBytes(box([3, 4, 12])) } };
    expectClose(
      document(['size', 'b.stl', '--span', '0,0,0:3,4,12', '--is', '13 in'], desk).result
        .volume_cm3 as number,
      144 * 2.54 ** 3,
      1e-12,
    );
    for (const args of [
      ['--span', '0,0,0:3,4,12'],
      ['--is', '13 in'],
      ['--span', '0,0:3,4', '--is', '1 in'],
      ['--span', 'a,b,c:1,2,3', '--is', '1 in'],
    ]) {
      expect(call(['size', 'b.stl', ...args, '--json'], desk).exit, args.join(' ')).toBe(2);
    }
  });

  it('a unit and a tape that disagree by more than 1 %: said, and the tape is used', () => {
    const { findings, result } = document(['size', BOX, '--file-unit', 'mm', '--tall', '25 mm']);
    expect(findings.find((f) => f.code === 'UNITS_SUSPECT' && f.text.includes('file unit'))).toBeDefined();
    expectClose((result.extents_mm as number[])[2]!, 25, 1e-12);
  });
});

it('a misspelt option is answered with the one that was meant', () => {
  const words = call(['size', BOX, '--file-unti', 'mm']);
  expect(words).toMatchObject({ exit: 2, out: '' });
  expect(words.notes).toContain('--file-unit');
  const { error } = document(['size', BOX, '--file-unti', 'mm']);
  expect(error!.text).toContain('--file-unti');
  expect(`${error!.text} ${error!.hint}`).toMatch(/--file-unit\b/);
});

it('a file that is too large is refused by its length, and not read', () => {
  const called = call(['size', 'huge.stl', '--file-unit', 'mm'], { sizes: { 'huge.stl': 3_600_000_000 } });
  expect(called).toMatchObject({ exit: 3, out: '' });
  expect(called.notes).toContain('The file has 3600 MB; 536.9 MB is the most.'.replace('3600', '3\u202f600'));
  expect(called.notes).toContain('binary STL');
});
