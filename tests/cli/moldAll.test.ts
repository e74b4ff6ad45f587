import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { call, document, type Desk } from '../support/cliCall';
import { sphere } from '../support/shapes';
import { stlBytes } from '../support/writeMesh';

const desk: Desk = {
  files: { 'ball.stl': stlBytes(sphere(50, 32)), 'shop.json': JSON.stringify(SAMPLE_SHOP) },
};
const ALL = [
  ...['mold', 'ball.stl', '--file-unit', 'mm', '--base', 'closed', '--voxel', '4 mm', '--all'],
  ...[
    '--shop',
    'shop.json',
    '--silicone',
    'Sample Silicone 25',
    '--stock-base',
    '0',
    '--stock-catalyst',
    '0',
  ],
];

interface Row {
  thickness_mm: number;
  is_usual: boolean;
  silicone_cm3: number;
  silicone_g: number;
  price: number;
  jacket_cm3?: number;
}
interface Entry {
  type: string;
  good_for: string;
  silicone_cm3: number;
  range: Record<string, [number, number]>;
  thicknesses: Row[];
  error?: { code: string };
}

const entries = (args: string[] = []): Entry[] => document([...ALL, ...args], desk).result.molds as Entry[];

describe('the types side by side', () => {
  const molds = entries();

  it('are one entry a type, each at three thicknesses, and thicker never takes less', () => {
    expect(molds.map(({ type }) => type)).toEqual(['block', 'skin', 'blanket']);
    for (const { thicknesses, silicone_cm3, range } of molds) {
      expect(thicknesses).toHaveLength(3);
      const usual = thicknesses.find(({ is_usual }) => is_usual)!;
      expect(usual.silicone_cm3).toBe(silicone_cm3);
      expect(range.silicone_cm3![0]).toBeLessThan(silicone_cm3);
      for (const [n, row] of thicknesses.entries()) {
        if (n === 0) continue;
        expect(row.silicone_cm3).toBeGreaterThan(thicknesses[n - 1]!.silicone_cm3);
        expect(row.price).toBeGreaterThanOrEqual(thicknesses[n - 1]!.price);
      }
    }
  });

  it('a block has no jacket, the skins have one', () => {
    expect(molds.map(({ thicknesses }) => thicknesses[0]!.jacket_cm3 !== undefined)).toEqual([
      false,
      true,
      true,
    ]);
  });

  it('the same call gives the same bytes, without null', () => {
    const { out } = call([...ALL, '--json'], desk);
    expect(out).not.toMatch(/null|NaN/);
    expect(call([...ALL, '--json'], desk).out).toBe(out);
  });

  it('a thickness that is asked for is the middle of its three', () => {
    const [block, skin] = entries(['--skin', '8', '--wall', '20']);
    expect(skin!.thicknesses.map(({ thickness_mm }) => thickness_mm)).toEqual([6, 8, 12]);
    expect(block!.thicknesses.map(({ thickness_mm }) => thickness_mm)).toEqual([15, 20, 30]);
  });

  it('one that a type cannot have stands there with its reason, the others beside it', () => {
    const { molds: made } = document([...ALL, '--skin', '39'], desk).result as { molds: Entry[] };
    const thickest = made[1]!.thicknesses[2] as unknown as { error: { code: string } };
    expect(thickest.error.code).toBe('MOLD_PARAMETER');
    expect(call([...ALL, '--skin', '39'], desk).out).toMatch(
      /Not made +Brushed skin, 58.5 mm.*: Skin thickness/,
    );
  });

  it('the table is aligned, nine rows under its head, with kits, cost and jacket', () => {
    const { out, exit } = call([...ALL, '--show', 'metric'], desk);
    expect(exit).toBe(0);
    const lines = out.split('\n');
    const head = lines.findIndex((line) => line.includes('Thickness'));
    const rows = lines.slice(head + 1, head + 10);
    expect(rows.filter((row) => /^ {2}(Poured block|Brushed skin|Poured skin)/.test(row))).toHaveLength(9);
    expect(rows.filter((row) => row.includes(' * '))).toHaveLength(3);
    const costEnd = lines[head]!.indexOf('Cost') + 4;
    for (const row of rows) expect(row.slice(costEnd - 1, costEnd + 1)).toMatch(/\d /);
    expect(rows.every((row) => / kg .*(none|cm³, .* g) .* g$/.test(row))).toBe(true);
  });

  it('says what each type is good for and the cautions of all of them', () => {
    const { out } = call(ALL, desk);
    for (const { good_for } of molds) expect(out).toContain(good_for);
    for (const word of ['Condensation silicone', 'Plaster setting', 'Clay:', 'Fillers'])
      expect(out).toContain(word);
  });

  it('is another question than --type: exit 2', () => {
    const { error } = document([...ALL, '--type', 'skin'], desk);
    expect(error).toMatchObject({ code: 'BAD_CALL' });
    expect(call([...ALL, '--type', 'skin'], desk).exit).toBe(2);
  });

  it('a pull that is none is a wrong call, though a block has no pull', () => {
    const called = call([...ALL, '--pull', 'sideways'], desk);
    expect(called.exit).toBe(2);
    expect(called.notes).toMatch(/Pull of the jacket: "sideways" does not fit/);
  });
});
