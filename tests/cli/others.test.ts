import { describe, expect, it } from 'vitest';
import { expectClose } from '../support/close';
import { call, document } from '../support/cliCall';
import { sampleBytes } from '../support/samples';

describe('units TEXT', () => {
  it('gives every reading of an ambiguous number', () => {
    const { schema, result } = document(['units', '1,250']);
    expect(schema).toBe('risewright/units@1');
    const texts = JSON.stringify(result.readings);
    expect(texts).toMatch(/1[.,]25\b/);
    expect(texts).toMatch(/1[\s\u2009\u202f]?250/);
  });

  it('10 1/4 in is 260.35 mm (1 in = 25.4 mm exactly)', () => {
    const readings = document(['units', '10', '1/4', 'in']).result.readings as {
      kind: string;
      value: number;
    }[];
    expect(readings.map((r) => r.kind)).toEqual(['length']);
    expectClose(readings[0]!.value, 10.25 * 25.4, 1e-15);
  });

  it('what is no quantity: exit 2', () => {
    expect(call(['units', 'a', 'lot', '--json']).exit).toBe(2);
  });
});

describe('sample DIR', () => {
  const called = call(['sample', 'try/', '--json']);

  it('writes a shop that batch reads, and the troll scan byte for byte', () => {
    expect(called.exit).toBe(0);
    expect(called.folders).toEqual(['try']);
    expect([...called.files.keys()].sort()).toEqual(['try/quay-troll-scan.stl', 'try/shop.json']);
    expect(
      Buffer.compare(
        called.files.get('try/quay-troll-scan.stl') as Uint8Array,
        sampleBytes('quay-troll-scan.stl'),
      ),
    ).toBe(0);
  });

  it('the lines it says to try do run', () => {
    const lines = [...call(['sample', 'try']).out.matchAll(/Try +risewright (.+)/g)].map((m) => m[1]!);
    expect(lines.length).toBe(4);
    const files = Object.fromEntries(called.files) as Record<string, string | Uint8Array>;
    for (const line of lines) {
      const args = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((m) => m[1] ?? m[2]!);
      const tried = call(args, { files });
      expect(tried.exit, `${line}\n${tried.notes}`).toBe(0);
    }
  });
});

describe('help', () => {
  it('names every command, and every option of size in its contract', () => {
    const { out } = call(['--help']);
    for (const name of ['size', 'mold', 'batch', 'units', 'sample']) expect(out).toContain(name);
    const { out: size } = call(['size', '--help']);
    for (const option of [
      '--file-unit',
      '--tall',
      '--wide',
      '--deep',
      '--span',
      '--is',
      '--up',
      '--cut',
      '--format',
      '--json',
      '--strict',
      '--show',
      '-o',
      '--quiet',
      '--no-input',
      '--no-color',
      '--shop',
    ]) {
      expect(size, option).toContain(option);
    }
  });

  it('the version is the one it is given', () => {
    expect(call(['--version']).out.trim()).toBe('0.0.0-test');
  });

  it('called with nothing: the help, as a wrong call or not, but never silence', () => {
    const { out, notes } = call([]);
    expect(`${out}${notes}`).toContain('Usage');
  });
});

describe('a disk that refuses', () => {
  it('-o on it ends with exit 2, the file, why, and what to do; nothing is on stdout', () => {
    const called = call(['size', 'sphere-r50.stl', '--file-unit', 'mm', '-o', 'full/answer.txt'], {
      cannotWrite: 'no space left on device',
    });
    expect(called.exit).toBe(2);
    expect(called.out).toBe('');
    expect(called.notes).toContain('full/answer.txt cannot be written: no space left');
    expect(called.notes).toContain('another -o');
  });
});
