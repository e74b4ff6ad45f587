import { describe, expect, it } from 'vitest';
import { call, type Desk } from '../support/cliCall';
import { box } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

const desk: Desk = {
  files: { 'brick.stl': stlBytes(box([100, 80, 60])), 'stone.stl': stlBytes(box([400, 300, 300])) },
};
const linesOf = (args: string[]): string[] => {
  const { out, exit } = call(['mold', ...args, '--file-unit', 'mm', '--voxel', '4 mm'], desk);
  expect(exit).toBe(0);
  return out.trimEnd().split('\n');
};
/** The lines directly under the first one with this label, as far as they are cautions. */
function cautionsUnder(label: string, lines: string[]): string {
  const at = lines.findIndex((line) => line.startsWith(`  ${label} `));
  expect(at).toBeGreaterThan(-1);
  const after = lines.slice(at + 1);
  return after
    .slice(
      0,
      after.findIndex((line) => !line.startsWith('  Caution')),
    )
    .join('\n');
}

describe('cautions stand directly under the material they belong to', () => {
  it.each([
    ['plaster', /Plaster setting: .*burn.*\n.*Plaster powder/],
    ['bandage', /Plaster setting/],
    ['glass-mat', /Styrene.*\n.*peroxide.*\n.*Glass mat/],
    ['putty', /allergic/],
  ])('a jacket of %s', (material, words) => {
    expect(cautionsUnder('Jacket', linesOf(['brick.stl', '--jacket-material', material]))).toMatch(words);
  });

  it('silicone by its cure, both where that is not known', () => {
    const silicone = (args: string[]): string => cautionsUnder('Silicone', linesOf(['brick.stl', ...args]));
    expect(silicone(['--cure', 'addition'])).toMatch(/Addition silicone/);
    expect(silicone(['--cure', 'addition'])).not.toMatch(/Condensation silicone/);
    expect(silicone(['--cure', 'condensation'])).toMatch(/tin compound/);
    expect(silicone([])).toMatch(/Condensation silicone.*\n.*Addition silicone/);
    expect(silicone([])).toMatch(/Fillers and thickeners/);
    expect(silicone(['--type', 'block'])).not.toMatch(/Fillers and thickeners/);
  });

  it('clay, a vacuum pot, a warm mold, paint', () => {
    expect(cautionsUnder('Clay', linesOf(['brick.stl', '--type', 'blanket']))).toMatch(/never over a flame/);
    const more = [
      '--type',
      'block',
      '--degas',
      '--cup-volume',
      '2 L',
      '--mold-temp',
      '50 C',
      '--will-paint',
      'yes',
    ];
    const lines = linesOf(['brick.stl', ...more]);
    expect(cautionsUnder('Vacuum', lines)).toMatch(/implode/);
    expect(cautionsUnder('Cavity', lines)).toMatch(/Warm mold/);
    expect(lines.join('\n')).toMatch(/Finish +After paint.*\n {2}Caution +Release, paint and solvents/);
    expect(linesOf(['brick.stl', '--type', 'block']).join('\n')).not.toMatch(/implode|Warm mold|Finish/);
  });

  it('a mold that is too heavy for one person', () => {
    expect(cautionsUnder('Stands', linesOf(['stone.stl', '--type', 'block', '--wall', '40']))).toMatch(
      /two people/,
    );
    expect(cautionsUnder('Stands', linesOf(['brick.stl', '--type', 'block']))).toBe('');
  });

  it('the data sheet comes before any of them', () => {
    const lines = linesOf(['brick.stl']);
    const first = lines.findIndex((line) => line.startsWith('  First'));
    expect(lines[first]).toMatch(/data sheets, local codes and licensed practice/);
    expect(lines.findIndex((line) => line.startsWith('  Caution'))).toBeGreaterThan(first);
  });
});

describe('the text of a mold', () => {
  it('says what clay that comes out stands for', () => {
    const lines = linesOf(['brick.stl', '--type', 'blanket', '--silicone-density', '1190']).join('\n');
    // 1190 over the 1700 kg/m3 of clay.
    expect(lines.replaceAll('\u202f', '')).toMatch(
      /Weigh the clay that comes out: 1000 g of it stand for 700 g of rubber/,
    );
  });

  it('says once that something is not checked', () => {
    const lines = linesOf(['brick.stl']);
    expect(lines.some((line) => line.startsWith('  Not checked '))).toBe(true);
    expect(lines.join('\n')).not.toMatch(/Not checked:? +Not checked/);
  });

  it('shows US units where they are wanted', () => {
    const text = linesOf(['brick.stl', '--type', 'block', '--show', 'us']).join('\n');
    expect(text).toMatch(/Box +4\.09 in x|Box +4\.\d\d in/);
    expect(text).toMatch(/Assumed +wall around the sculpt: 0\.47 in/);
  });
});
