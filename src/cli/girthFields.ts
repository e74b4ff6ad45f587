import { bad, good, type Outcome } from '../problem';

/**
 * "length=270mm,girths=300mm/210mm", each text under its name in small letters. Only a comma with a name behind it ends a text: one
 * within a number is the reader's. `example`: how the option is written. Errors: BAD_CALL.
 */
export function namedFields<Name extends string>(
  text: string,
  { option, names, example }: { option: string; names: readonly Name[]; example: string },
): Outcome<Partial<Record<Name, string>>> {
  const refuse = (why: string): Outcome<never> =>
    bad('BAD_CALL', { text: `${option} "${text}": ${why}`, hint: `Write it as ${option} "${example}".` });
  const fields: Partial<Record<Name, string>> = {};
  for (const field of text.split(/,(?=\s*[a-z]+\s*=)/i)) {
    const match = /^\s*([a-z]+)\s*=\s*(.*?)\s*$/is.exec(field);
    if (match === null) return refuse(`"${field.trim()}" is no name with a quantity.`);
    const name = names.find((known) => known === match[1]!.toLowerCase());
    if (name === undefined) return refuse(`"${match[1]}" is none of ${names.join(', ')}.`);
    if (fields[name] !== undefined) return refuse(`${name} is there twice.`);
    fields[name] = match[2]!;
  }
  return good(fields);
}
