import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { HERE, input, type OpenedFigure } from './openedFigure';

/** Grams and drops of each color. */
export function colorFigures({ color, batch }: PreparedPour, { colors = [] }: PourAsk): OpenedFigure[] {
  if (color === undefined) return [];
  return color.items.flatMap((item, n) => {
    const recipe = colors[n];
    if (recipe === undefined) return [];
    const isOfB = recipe.of === 'B';
    const noted = color.assumptions.find(({ name }) => name === 'drop_g');
    const drop =
      item.dropFrom === 'weighed' ? 'weighed' : { from: noted?.basis ?? 'assumed', isAssumed: true as const };
    return [
      {
        key: `color_${n + 1}_g`,
        title: `${item.name}, grams`,
        value: item.massG,
        unit: 'g',
        formula: isOfB ? 'share x B' : 'share x (A + B)',
        inputs: [
          ...input('share', recipe.share, '', 'given', 'share'),
          ...(isOfB ? [] : input('A', batch.partAG, 'g', HERE, 'exact')),
          ...input('B', batch.partBG, 'g', HERE, 'exact'),
        ],
        source: 'a recipe by mass: a larger batch is the same color',
      },
      {
        key: `color_${n + 1}_drops`,
        title: `${item.name}, drops`,
        value: item.drops,
        unit: '',
        formula: 'grams / a drop, rounded',
        inputs: [...input('grams', item.massG, 'g', HERE), ...input('a drop', item.dropG, 'g', drop)],
        source: 'a quotient; the mass counts',
      },
    ];
  });
}
