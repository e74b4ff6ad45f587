import { MADE, table, unit } from './table.mjs';

/** The same pour where it takes another way: a barometer, a ratio by weight, warm from both sides. */
const otherwise = (told) => ({
  ...told,
  cups: { cupCm3: 500, mixS: 15 },
  pour: { ...told.pour, ratio: { a: 100, b: 55, by: 'mass' } },
  air: { stationKPa: 96 },
  clamp: { ...told.clamp, measuredPeak: { packFactor: 1.2, peakKPa: 18 } },
  warm: { ...told.warm, sides: 2, surroundings: 'fan box' },
});

/** A large mold and a mix that is quick to cream: the time sets the size of a mix, not the cup. */
const hurried = (told) => ({
  ...told,
  pour: { ...told.pour, cavity: { volumeCm3: { value: 40000, low: 39500, high: 40500, from: 'taped' } } },
  cups: { cupCm3: 20000, mixS: 15 },
  foam: { ...told.foam, creamS: 40 },
});

/** docs/sums.md: the formula of every number that the page opens. */
export function sumsPage({ figuresOf, preparePour, FULL_POUR }) {
  const opened = [FULL_POUR, otherwise(FULL_POUR), hurried(FULL_POUR)].flatMap((ask) => {
    const prepared = preparePour(ask);
    if (!prepared.ok) throw new Error(`docs: expected a prepared pour, got ${prepared.problem.code}`);
    return figuresOf(prepared.value, ask);
  });
  const rows = opened.filter(
    ({ key, formula }, i) => opened.findIndex((one) => one.key === key && one.formula === formula) === i,
  );
  return (
    [
      MADE,
      '# Every sum of a pour',
      [
        'What the page opens under "How was this reckoned?" and what `figuresOf(prepared, ask)` gives in the library: formula, inputs, unit and source.',
        'Prices are in your own money. Where a number has two ways to come about, both stand here.',
      ].join('\n'),
      table(
        ['key', 'number', 'unit', 'formula', 'from', 'source'],
        rows.map((row) => [
          `\`${row.key}\``,
          row.title,
          unit(row.unit),
          row.formula,
          [
            ...new Set(
              row.inputs.map(({ title, unit: of }) => `${title}${of === '' ? '' : ` [${unit(of)}]`}`),
            ),
          ].join('; '),
          row.source,
        ]),
      ),
    ].join('\n\n') + '\n'
  );
}
