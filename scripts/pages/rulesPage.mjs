import { figure, MADE, span, table, unit } from './table.mjs';

/** Every table of rules, by the name it is exported under, with the place it stands at. */
const RULE_TABLES = [
  ['RULES', 'The batch', 'src/yield/rules.ts'],
  ['POUR_RULES', 'Around the pour', 'src/yield/pour/rules.ts'],
  ['MDI_LIMITS', 'Isocyanate in the air', 'src/yield/pour/exposure.ts'],
  ['WARMTH_RULES', 'Warmth', 'src/yield/warmth/rules.ts'],
  ['SILICONE_RULES', 'Silicone', 'src/yield/silicone/rules.ts'],
  ['MOLDMAKING_RULES', 'Jacket, box, shrinkage, finish', 'src/yield/moldmaking/rules.ts'],
  ['DEMOLD_RULES', 'Taking the casting out', 'src/yield/demold/rules.ts'],
  ['VOLUME_RULES', 'Volumes without a scan', 'src/yield/volumeWays/rules.ts'],
  ['LEARN_RULES', 'What past pours teach', 'src/yield/learn/rules.ts'],
  ['RUN_RULES', 'A run of castings', 'src/yield/run/rules.ts'],
  ['CHECK_FIGURES', 'Limits of the checks and cautions', 'src/checks/figures.ts'],
];

const BOUND_TABLES = [
  ['INPUT_BOUNDS', 'The batch'],
  ['POUR_BOUNDS', 'Around the pour'],
  ['WARMTH_BOUNDS', 'Warmth'],
  ['SILICONE_BOUNDS', 'Silicone'],
  ['MOLDMAKING_BOUNDS', 'Jacket, box, shrinkage, finish'],
  ['DEMOLD_BOUNDS', 'Taking the casting out'],
  ['VOLUME_BOUNDS', 'Volumes without a scan'],
  ['LEARN_BOUNDS', 'The Book'],
  ['RUN_BOUNDS', 'A run of castings'],
];

/** docs/rules.md: every default and every bound. */
export const rulesPage = (sources) =>
  [
    MADE,
    '# Every default, with where it comes from',
    [
      'A figure that is not geometry and that you did not give. Each one that is used is listed as assumed beside the answer until you give your own.',
      'A share is a number from 0 to 1; the unit "1" is a plain number. "Low to high" is the range a figure is believed to lie in, not a limit.',
      '"Common practice, no source" is what shops are used to, without a source that could be cited. "Chosen here" is a decision of this project.',
      '"From memory" was not looked up again. How each is used: [how-it-computes.md](how-it-computes.md), [pour.md](pour.md), [molds.md](molds.md),',
      '[opening.md](opening.md), [learning.md](learning.md); the formulas stand in [sums.md](sums.md), the numbers of each command in [numbers.md](numbers.md).',
    ].join('\n'),
    ...RULE_TABLES.flatMap(([name, title, file]) => [
      `## ${title}`,
      `\`${name}\`, ${file}`,
      table(
        ['name', 'value', 'low to high', 'unit', 'from'],
        Object.entries(sources[name]).map(([key, rule]) => [
          `\`${key}\``,
          figure(rule.value),
          span(rule),
          unit(rule.unit),
          rule.from,
        ]),
      ),
    ]),
    '## What may be typed',
    'Bounds of sense, chosen here, no source: outside, the input is refused by its name and nothing is reckoned.',
    ...BOUND_TABLES.flatMap(([name, title]) => [
      `### ${title}`,
      `\`${name}\``,
      table(
        ['input', 'from', 'to', 'unit'],
        Object.entries(sources[name]).map(([key, bounds]) => [
          `\`${key}\``,
          figure(bounds.low),
          figure(bounds.high),
          unit(bounds.unit),
        ]),
      ),
    ]),
  ].join('\n\n') + '\n';
