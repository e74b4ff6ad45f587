import { describe, expect, it } from 'vitest';
import { call } from '../support/cliCall';
import { textBytes } from '../support/writeMesh';

const TROLL = ['size', 'quay-troll-scan.stl', '--up', '+y', '--tall', '290.85 mm'];

describe('size for a person', () => {
  const text = (show?: string): string =>
    call([...TROLL, ...(show === undefined ? [] : ['--show', show])]).out;

  it('the volume is the last line, with its range', () => {
    const last = text().trimEnd().split('\n').at(-1)!;
    expect(last).toMatch(/Volume/);
    expect(last).toContain('19 times in 20');
  });

  it('metric, US and both', () => {
    expect(text('metric')).not.toMatch(/\d (in|fl oz|gal|qt)\b/);
    expect(text('us')).toMatch(/ in\b/);
    expect(text('us').split('\n').at(-2)).not.toMatch(/Volume +[\d.\s\u2009\u202f]+(L|mL)\b/);
    expect(text('both')).toMatch(/mm.* in/);
    expect(call([...TROLL, '--show', 'parsecs']).exit).toBe(2);
  });

  it('says why there is no volume and what to do, on stderr', () => {
    const { notes, out } = call(['size', 'quay-troll-scan.stl', '--up', '+y']);
    expect(out).toBe('');
    expect(notes).toContain('--file-unit');
    expect(notes).toContain('quay-troll-scan.stl');
  });

  it('reads an OBJ with a place in its error', () => {
    const { notes } = call(['size', 'a.obj', '--file-unit', 'mm'], {
      files: { 'a.obj': textBytes('v 0 0 0\nv 1 0 zero\n') },
    });
    expect(notes).toContain('Line 2');
  });
});
