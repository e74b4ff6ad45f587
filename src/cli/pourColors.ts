import { bad, good, type Outcome } from '../problem';
import type { ColorShare } from '../yield';
import { listOf, type OptionSpec, type OptionValues } from './command';
import { figureIn } from './moldFigures';
import { quantityOption } from './quantity';

export const COLOR_OPTION: OptionSpec = {
  flags: '--color <name=share>',
  about:
    'a color, as "umber=1% of B" or "umber=0.5% of mix"; its drops by "umber=1% of B, 25 drops=1.1 g" if you weighed some',
  repeat: true,
};

/** The recipe, by mass share. Errors: BAD_CALL. */
export function colorOptions(options: OptionValues): Outcome<ColorShare[]> {
  const colors: ColorShare[] = [];
  for (const text of listOf(options, 'color')) {
    const color = colorOf(text);
    if (!color.ok) return color;
    colors.push(color.value);
  }
  return good(colors);
}

const FORM =
  /^\s*([^=]*?)\s*=\s*(.+?)\s+of\s+(A\s*\+\s*B|\w+)\s*(?:[,;]\s*(\S+)\s+drops?\s*=\s*(\S.*?))?\s*$/;

function colorOf(text: string): Outcome<ColorShare> {
  const match = FORM.exec(text);
  if (match === null) return refused(text, 'is not a color and its share');
  const [, name = '', share = '', of = '', drops, mass] = match;
  if (name === '') return refused(text, 'has no name');
  const base = BASES.get(of.toLowerCase().replace(/\s/g, ''));
  if (base === undefined) return refused(text, `is a share of "${of}"`);
  const read = quantityOption('--color', share, 'share', undefined, true);
  if (!read.ok) return read;
  const color = { name, share: read.value, of: base };
  if (drops === undefined || mass === undefined) return good(color);
  const count = figureIn({}, '--color', drops);
  if (!count.ok) return count;
  const dropsG = quantityOption('--color', mass, 'mass', 'g');
  return dropsG.ok ? good({ ...color, weighedDrops: { drops: count.value, dropsG: dropsG.value } }) : dropsG;
}

const BASES: ReadonlyMap<string, ColorShare['of']> = new Map([
  ['b', 'B'],
  ['mix', 'mix'],
  ['a+b', 'mix'],
]);

const refused = (text: string, why: string): ReturnType<typeof bad> =>
  bad('BAD_CALL', {
    text: `--color "${text}" ${why}.`,
    hint: 'Write its name, its share and of what: "umber=1% of B" or "umber=0.5% of mix".',
  });
