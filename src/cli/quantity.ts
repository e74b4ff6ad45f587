import { bad, good, type Outcome } from '../problem';
import { readQuantity, type RatioValue, type Read, type ScalarKind } from '../units';
import { sayWhy } from '../words/quantityWords';

/** Reads an option's quantity; what is ambiguous is refused with each reading, as nobody is there to be asked. */
export function quantityOption(
  option: string,
  text: string,
  kind: ScalarKind,
  bareUnit?: string,
  allowZero = false,
): Outcome<number> {
  const read = readQuantity(text, kind, { ...(bareUnit === undefined ? {} : { bareUnit }), allowZero });
  return read.kind === 'one' ? good(read.value) : refused(option, text, read);
}

export function ratioOption(option: string, text: string): Outcome<RatioValue> {
  const read = readQuantity(text, 'ratio');
  return read.kind === 'one' ? good(read.value) : refused(option, text, read);
}

type NotOne = Exclude<Read<number> | Read<RatioValue>, { kind: 'one' }>;

function refused(option: string, text: string, read: NotOne): Outcome<never> {
  const { text: why, hint } = sayWhy(read.why);
  const readings = offered(read)
    .map((reading) => `"${reading.text}"`)
    .join(' or ');
  return bad('BAD_CALL', {
    text: `${option} "${text}": ${why}${readings === '' ? '' : ` It can be ${readings}.`}`,
    hint,
  });
}

/** What is hard to believe as it was typed is not offered again as it was typed: that stands first. */
function offered(read: NotOne): readonly { text: string }[] {
  if (read.kind !== 'ask') return [];
  return read.why.reason === 'implausible' ? read.readings.slice(1) : read.readings;
}
