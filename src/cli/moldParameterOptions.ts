import { MOLD_TYPES, type MoldParameter, type MoldType, type MoldWish } from '../geometry';
import { good, type Outcome } from '../problem';
import { keyOf, textOf, type OptionSpec, type OptionValues } from './command';
import { DEGREES, figureIn } from './moldFigures';
import { quantityOption } from './quantity';

/** One option of the command: the parameter of every type that has it under this flag. */
interface Merged {
  flag: string;
  parameter: MoldParameter;
  owners: { type: MoldType; parameter: MoldParameter }[];
}

const HOLDERS: Readonly<Record<MoldParameter['kind'], string>> = {
  length: 'length',
  height: 'length',
  angle: 'angle',
  count: 'count',
  choice: 'choice',
  pull: 'direction',
};

const UNITS: Readonly<Partial<Record<MoldParameter['kind'], string>>> = {
  length: ' mm',
  height: ' mm',
  angle: ' degrees',
};

const MERGED: readonly Merged[] = merged();

/** One option a flag, generated from the parameter lists of the mold types. */
export const PARAMETER_OPTIONS: readonly OptionSpec[] = MERGED.map(({ flag, parameter, owners }) => {
  const choices = [...new Set(owners.flatMap(({ parameter: own }) => own.choices ?? []))];
  return {
    flags: `--${flag} <${HOLDERS[parameter.kind]}>`,
    about: aboutOf(owners),
    ...(choices.length === 0 ? {} : { choices }),
  };
});

/** Under which flag a parameter is asked for, with its dashes. */
export const flagOfParameter = (key: string): string =>
  `--${MERGED.find(({ parameter }) => parameter.key === key)?.flag ?? key}`;

/** The parameters that were given, by key; whether a type has them is for the plan to say. Errors: BAD_CALL. */
export function parameterOptions(options: OptionValues): Outcome<MoldWish> {
  const wish: Record<string, number | string> = {};
  for (const { flag, parameter } of MERGED) {
    const text = textOf(options, keyOf(flag));
    if (text === undefined) continue;
    const read = readParameter(`--${flag}`, text, parameter);
    if (!read.ok) return read;
    wish[parameter.key] = read.value;
  }
  return good(wish);
}

function readParameter(flag: string, text: string, { kind, low }: MoldParameter): Outcome<number | string> {
  switch (kind) {
    case 'choice':
    case 'pull':
      return good(text);
    case 'length':
    case 'height':
      return quantityOption(flag, text, 'length', 'mm', low === 0);
    case 'angle':
      return figureIn(DEGREES, flag, text, low === 0);
    case 'count':
      return figureIn({}, flag, text, low === 0);
  }
}

function merged(): Merged[] {
  const all: Merged[] = [];
  for (const type of MOLD_TYPES)
    for (const parameter of type.parameters) {
      const known = all.find(({ flag }) => flag === parameter.flag);
      if (known === undefined) all.push({ flag: parameter.flag, parameter, owners: [{ type, parameter }] });
      else if (known.parameter.key !== parameter.key || known.parameter.kind !== parameter.kind)
        throw new Error(`merged: expected one meaning of --${parameter.flag}, got ${parameter.key} too`);
      else known.owners.push({ type, parameter });
    }
  return all;
}

/** "skin thickness (skin; assumed 6 mm) or blanket thickness (blanket; assumed 10 mm)". */
function aboutOf(owners: Merged['owners']): string {
  const kinds = new Map<string, { parameter: MoldParameter; types: string[] }>();
  for (const { type, parameter } of owners) {
    const name = `${parameter.label} ${parameter.default}`;
    const known = kinds.get(name);
    if (known === undefined) kinds.set(name, { parameter, types: [type.key] });
    else known.types.push(type.key);
  }
  return [...kinds.values()]
    .map(({ parameter, types }) => {
      const whose = types.length === MOLD_TYPES.length ? '' : `${types.join(', ')}; `;
      return `${parameter.label.charAt(0).toLowerCase()}${parameter.label.slice(1)} (${whose}assumed ${parameter.default}${UNITS[parameter.kind] ?? ''})`;
    })
    .join(' or ');
}
