import { amount } from '../../words/sentence';

/** "21 to 31". */
export const between = ({ low, high }: { low: number; high: number }, digits = 2): string => {
  const [from, to] = [amount(low, digits), amount(high, digits)];
  return from === to ? from : `${from} to ${to}`;
};

/** Times as a clock on the wall tells them: minutes up to two hours. */
export const minutesWords = (min: number): string =>
  min < 120 ? `${amount(min, 2)} min` : `${amount(min / 60, 2)} h`;
