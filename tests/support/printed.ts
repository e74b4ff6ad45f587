import { expectClose } from './close';

/** Agreement with a figure as printed: within half of its last digit. The text keeps the digits (`3.330`). */
export function expectPrinted(actual: number, printed: string, what = 'value'): void {
  const decimals = printed.includes('.') ? printed.length - printed.indexOf('.') - 1 : 0;
  const expected = Number(printed);
  // 1e-9 of the half digit more, since a printed 5 may have been rounded either way in doubles.
  expectClose(actual, expected, (0.5 * (1 + 1e-9)) / 10 ** decimals / Math.abs(expected), what);
}
