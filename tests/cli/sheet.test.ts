import { describe, expect, it } from 'vitest';
import { call, document } from '../support/cliCall';
import { PLAIN, SHOP_DESK, TROLL } from '../support/pourCalls';
import { textOf } from '../support/sheetOf';

const SHEET = ['sheet', ...TROLL, '--title', 'Quay Troll head', '--job', 'TROLL-13', '--lot', 'L-07'];
const pageOf = (args: readonly string[]): string =>
  call([...args, '-o', 'sheet.html'], SHOP_DESK).files.get('sheet.html') as string;

describe('sheet -o sheet.html', () => {
  it('writes one page with the grams of batch, and says so on stderr only', () => {
    const { files, out, notes, exit } = call([...SHEET, '-o', 'sheet.html'], SHOP_DESK);
    expect([exit, out]).toEqual([0, '']);
    expect(notes).toContain('sheet.html');
    const html = files.get('sheet.html') as string;
    const { part_a_g: a, part_b_g: b } = document(['batch', ...TROLL], SHOP_DESK).result;
    expect(textOf(html)).toContain(`A ${String(a)} g B ${String(b)} g`);
    for (const part of ['Quay Troll head', 'TROLL-13', 'Sample Foam Light, lot L-07', '0.0.0-test'])
      expect(textOf(html)).toContain(part);
  });

  it('without -o the page goes to stdout; quiet says nothing', () => {
    const { out, notes } = call(SHEET, SHOP_DESK);
    expect(out.startsWith('<!doctype html>')).toBe(true);
    expect(out).toBe(pageOf(SHEET));
    expect(notes).toBe('');
    expect(call([...SHEET, '-o', 'sheet.html', '--quiet'], SHOP_DESK).notes).toBe('');
  });

  it('no date unless it is given, and the same bytes twice', () => {
    expect(pageOf(SHEET)).toBe(pageOf(SHEET));
    expect(textOf(pageOf(SHEET))).not.toMatch(/\b20\d\d\b/);
    expect(textOf(pageOf([...SHEET, '--date', 'Nov 29, 2026']))).toContain('Date Nov 29, 2026');
  });

  it('options of batch are those of the sheet: cups, color, warmth, plug', () => {
    const text = textOf(
      pageOf([
        ...SHEET,
        ...[
          '--cup-volume',
          '1 L',
          '--color',
          'umber=1% of B',
          '--mold-temp',
          '33 C',
          '--plug-area',
          '12 cm2',
        ],
        ...['--mold-water', 'not confirmed dry', '--show', 'metric'],
      ]),
    );
    for (const part of [
      'cup 1',
      'cup 2',
      'umber',
      'to reach 33 \u00b0C',
      'Plug in reach',
      'Stop, do not pour',
    ])
      expect(text).toContain(part);
  });
});

describe('sheet --piece', () => {
  const BOOK = [
    { kind: 'pour', id: 'p1', no: 2, piece: '1-troll', pack: 1.25, mixedG: 551, skin: 3 },
    { kind: 'pour', id: 'p2', no: 4, piece: '2-hand', pack: 1.15, mixedG: 218, skin: 1 },
    { kind: 'pour', id: 'p3', no: 11, piece: 'Quay Troll head', pack: 1.3, mixedG: 577, moldC: 37 },
  ];
  const shop = { ...(JSON.parse(SHOP_DESK.files!['shop.json'] as string) as object), book: BOOK };
  const desk = { files: { 'shop.json': JSON.stringify(shop) } };

  it('the last pours of the piece stand on it, by its name or its id, and those of no other', () => {
    const page = call([...SHEET, '--piece', '1-troll', '-o', 'sheet.html'], desk).files.get('sheet.html');
    const text = textOf(page as string);
    expect(text).toContain('Last out of this mold No. 2: 551 g, pack 1.25, skin 3 of 5');
    expect(text).not.toContain('No. 4:');
  });

  it('a piece that nobody knows, or no shop to look in, is said', () => {
    const unknown = call([...SHEET, '--piece', 'Whale'], desk);
    expect([unknown.exit, unknown.out]).toEqual([2, '']);
    expect(unknown.notes).toContain('"Whale" is no piece of the shop');
    const alone = call(['sheet', ...PLAIN, '--piece', '1-troll'], desk);
    expect(alone.exit).toBe(2);
    expect(alone.notes).toContain('none was given');
  });
});

describe('sheet --json', () => {
  it('the document goes to stdout, the page to its file', () => {
    const called = call([...SHEET, '--json', '-o', 'sheet.html'], SHOP_DESK);
    const one = JSON.parse(called.out) as { schema: string; result: Record<string, unknown> };
    expect(one.schema).toBe('risewright/sheet@1');
    expect(one.result.file).toBe('sheet.html');
    expect(one.result.part_a_g).toBe(document(['batch', ...TROLL], SHOP_DESK).result.part_a_g);
    expect((called.files.get('sheet.html') as string).startsWith('<!doctype html>')).toBe(true);
    expect(called.notes).toBe('');
  });

  it('without a file the page is in the document', () => {
    const one = document(SHEET, SHOP_DESK);
    expect(`${one.result.html as string}`).toBe(pageOf(SHEET));
    expect(JSON.stringify(one)).not.toMatch(/:null|NaN/);
  });
});

describe('what goes wrong', () => {
  it('a call that is wrong writes no page over an old one', () => {
    for (const more of [[], ['--json']]) {
      const called = call(['sheet', ...PLAIN, '--pack', '9', '-o', 'sheet.html', ...more]);
      expect(called.exit).toBe(2);
      expect(called.files.size).toBe(0);
    }
  });

  it('a disk that refuses is told: exit 2', () => {
    const called = call([...SHEET, '-o', 'sheet.html'], { ...SHOP_DESK, cannotWrite: 'no room' });
    expect(called.exit).toBe(2);
    expect(called.notes).toContain('no room');
  });

  it('strict: a Stop is exit 6, and the page is there with its Stop', () => {
    const called = call(['sheet', ...PLAIN, '--pack', '2.2', '--strict', '-o', 'sheet.html']);
    expect(called.exit).toBe(6);
    expect(textOf(called.files.get('sheet.html') as string)).toContain('Stop, do not pour on this plan');
  });
});
