import { formatQuantity, type Show } from '../units';

/** A temperature as it is printed, to a tenth: 36.5 °C. Takes C. */
export const degrees = (c: number, show: Show): string =>
  formatQuantity('temperature', Number(c.toFixed(1)), show).replace(/ ([CF])\b/g, ' \u00b0$1');
