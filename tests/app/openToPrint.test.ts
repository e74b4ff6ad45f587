import { afterEach, describe, expect, it, vi } from 'vitest';
import { openToPrint } from '../../src/app/parts/openToPrint';
import { PRINT_WORDS } from '../../src/words/printWords';

afterEach(() => vi.unstubAllGlobals());

/** A window that loads when the test says so. */
function sheetThat(print: unknown) {
  let load = (): void => undefined;
  const sheet = { print, addEventListener: (_: string, told: () => void) => (load = told) };
  return { sheet, load: () => load() };
}

const troubleOf = (open: unknown): { said: string[]; at: () => void } => {
  vi.stubGlobal('open', open);
  const said: string[] = [];
  return { said, at: () => openToPrint('<p>A 10 g</p>', (why) => said.push(why)) };
};

describe('a page that is to be printed', () => {
  it('is printed once its window has loaded it, and nothing is said', () => {
    const print = vi.fn();
    const { sheet, load } = sheetThat(print);
    const { said, at } = troubleOf(() => sheet);
    at();
    expect(print).not.toHaveBeenCalled();
    load();
    expect(print).toHaveBeenCalledOnce();
    expect(said).toEqual([]);
  });

  it.each<[string, () => null]>([
    ['is not opened', () => null],
    [
      'may not be opened',
      () => {
        throw new DOMException('sandboxed', 'SecurityError');
      },
    ],
  ])('whose window %s is told of', (_, open) => {
    const { said, at } = troubleOf(open);
    at();
    expect(said).toEqual(['blocked']);
  });

  it.each<[string, unknown]>([
    ['missing', undefined],
    [
      'forbidden',
      () => {
        throw new Error('not allowed');
      },
    ],
  ])('where printing is %s is told of', (_, print) => {
    const { sheet, load } = sheetThat(print);
    const { said, at } = troubleOf(() => sheet);
    at();
    load();
    expect(said).toEqual(['noPrint']);
  });

  it('every trouble names the way out that stands beside it', () => {
    for (const why of ['blocked', 'noPrint'] as const) expect(PRINT_WORDS[why]).toContain('as a file');
  });
});
