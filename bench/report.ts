/** The middle of the numbers; of an even count the lower of the two. */
export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[(values.length - 1) >> 1]!;
}

export const verdict = (ok: boolean): string => (ok ? 'ok' : 'NOT MET');
