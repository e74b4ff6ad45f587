import { good, type Outcome } from '../problem';
import { listOf, type OptionValues } from './command';
import { flagOf } from './batchOptions';
import { quantityOption } from './quantity';

/** Every mass of an option that may be given more than once, in g. The first that cannot be read is told: BAD_CALL. */
export function massesOption(options: OptionValues, option: string): Outcome<number[]> {
  const masses: number[] = [];
  for (const text of listOf(options, option)) {
    const read = quantityOption(flagOf(option), text, 'mass', 'g');
    if (!read.ok) return read;
    masses.push(read.value);
  }
  return good(masses);
}
