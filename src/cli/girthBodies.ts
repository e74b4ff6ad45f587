import { bad, good, type Outcome } from '../problem';
import type { TapedBody } from '../yield';
import { listOf, type OptionSpec, type OptionValues } from './command';
import { namedFields } from './girthFields';
import { quantityOption } from './quantity';

type Kind = TapedBody['kind'];
type Side = 'length' | 'girth' | 'girths' | 'width' | 'depth' | 'height';

const SHAPES: Readonly<Record<Kind, { names: readonly Side[]; about: string; example: string }>> = {
  limb: {
    names: ['length', 'girths', 'girth'],
    about: 'arm, leg, neck, tail: its length and the girths at its ends',
    example: 'length=270mm,girths=300mm/210mm',
  },
  ball: { names: ['girth'], about: 'ball, by its girth', example: 'girth=560mm' },
  box: {
    names: ['width', 'depth', 'height'],
    about: 'box with rounded edges',
    example: 'width=120mm,depth=80mm,height=60mm',
  },
  dome: {
    names: ['girth', 'height'],
    about: 'half a ball or egg, flat below: girth of its base, and height',
    example: 'girth=440mm,height=90mm',
  },
};
const KINDS = Object.keys(SHAPES) as readonly Kind[];

export const GIRTH_OPTIONS: readonly OptionSpec[] = KINDS.map((kind) => ({
  flags: `--${kind} <sizes>`,
  about: `${SHAPES[kind].about}, as "${SHAPES[kind].example}" (bare number: mm)`,
  repeat: true,
}));

/** Every body that was given, kind by kind. Errors: BAD_CALL. */
export function tapedBodies(options: OptionValues): Outcome<TapedBody[]> {
  const bodies: TapedBody[] = [];
  for (const kind of KINDS)
    for (const text of listOf(options, kind)) {
      const body = bodyOf(kind, text);
      if (!body.ok) return body;
      bodies.push(body.value);
    }
  if (bodies.length === 0)
    return bad('BAD_CALL', {
      text: 'There is nothing to add up.',
      hint: `Give a body, as --limb "${SHAPES.limb.example}" or --ball "${SHAPES.ball.example}".`,
    });
  return good(bodies);
}

function bodyOf(kind: Kind, text: string): Outcome<TapedBody> {
  const { names, example } = SHAPES[kind];
  const option = `--${kind}`;
  const fields = namedFields(text, { option, names, example });
  if (!fields.ok) return fields;
  if (kind === 'limb') return limbOf(text, fields.value);
  const sides: Partial<Record<Side, number>> = {};
  for (const name of names) {
    const side = sideOf(option, name, fields.value[name]);
    if (!side.ok) return side;
    sides[name] = side.value;
  }
  const { girth = 0, width = 0, depth = 0, height = 0 } = sides;
  if (kind === 'ball') return good({ kind, girthMm: girth });
  if (kind === 'dome') return good({ kind, girthMm: girth, heightMm: height });
  return good({ kind, widthMm: width, depthMm: depth, heightMm: height });
}

/** Two girths are parted by a slash; that of "10 1/4 in", between two digits, is none. */
const BETWEEN_GIRTHS = /(?<!\d)\s*\/\s*/;

function limbOf(text: string, fields: Partial<Record<Side, string>>): Outcome<TapedBody> {
  const { girth, girths } = fields;
  const refuse = (why: string, hint: string): Outcome<never> =>
    bad('BAD_CALL', { text: `--limb "${text}": ${why}`, hint });
  if (girth !== undefined && girths !== undefined)
    return refuse('girth and girths are two answers to one question.', 'Keep one of them.');
  const texts = (girths ?? girth)?.split(BETWEEN_GIRTHS);
  if (texts?.length === 1 && /^\d+\s*\/\s*\d+$/.test(texts[0]!))
    return refuse(
      `"${texts[0]}" can be two girths or a fraction.`,
      'Write the unit behind each, as "girths=300mm/210mm".',
    );
  if (texts !== undefined && texts.length > 2)
    return refuse(
      'a limb has a girth at each end, and no more.',
      'Take a limb with more of them as several, end to end.',
    );
  const length = sideOf('--limb', 'length', fields.length);
  if (!length.ok) return length;
  const one = sideOf('--limb', 'girths', texts?.[0]);
  if (!one.ok) return one;
  const lengthMm = length.value;
  if (texts?.[1] === undefined) return good({ kind: 'limb', lengthMm, girthMm: one.value });
  const other = sideOf('--limb', 'girths', texts[1]);
  return other.ok ? good({ kind: 'limb', lengthMm, girthMm: one.value, otherGirthMm: other.value }) : other;
}

function sideOf(option: string, name: Side, text: string | undefined): Outcome<number> {
  if (text !== undefined) return quantityOption(`${option} ${name}`, text, 'length', 'mm');
  const { example } = SHAPES[option.slice(2) as Kind];
  return bad('BAD_CALL', {
    text: `${option} has no ${name}.`,
    hint: `Write it as ${option} "${example}".`,
  });
}
