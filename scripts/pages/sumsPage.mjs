import { MADE, table, unit } from './table.mjs';

/** Something told in every question, so that every sum is there. The values are examples. */
const TOLD = {
  pour: {
    cavity: { volumeCm3: { value: 4500, low: 4440, high: 4560, from: 'taped' } },
    freeRiseKgM3: { value: 96, from: 'data-sheet' },
    ratio: { a: 100, b: 50, by: 'volume' },
    partDensities: { aKgM3: 1100, bKgM3: 1200 },
    packFactor: { value: 1.25, from: 'chosen' },
  },
  air: { altitudeM: 800 },
  roomC: 21,
  moldC: 34,
  foam: { creamS: 45, openMin: 30, timesAtC: 23, ncoShare: 0.13, waterShare: 0.0055 },
  cups: { cupCm3: 2000, mixS: 15 },
  clamp: { projectedCm2: 300, plugCm2: 20, lidG: 3000, jacketMm: 12 },
  warm: { wallMm: 8, sides: 1, surroundings: 'still box', airTempC: 45, targetTempC: 36 },
  packs: { list: [1.15, 1.25, 1.45] },
  prices: { aPerKg: 9, bPerKg: 7, failurePrice: 80 },
  past: [
    { packFactor: 1.25, filled: true },
    { packFactor: 1.26, filled: false },
  ],
  castingCm2: 1660,
  colors: [{ name: 'Moss', share: 0.02, of: 'B' }],
  facts: { pigmentShare: (0.02 * 60) / 170, panelSpanMm: 90 },
};

/** The same pour where it takes another way: a barometer, a ratio by weight, warm from both sides. */
const OTHERWISE = {
  ...TOLD,
  cups: { cupCm3: 500, mixS: 15 },
  pour: { ...TOLD.pour, ratio: { a: 100, b: 55, by: 'mass' } },
  air: { stationKPa: 96 },
  clamp: { ...TOLD.clamp, measuredPeak: { packFactor: 1.2, peakKPa: 18 } },
  warm: { ...TOLD.warm, sides: 2, surroundings: 'fan box' },
};

/** A large mold and a mix that is quick to cream: the time sets the size of a mix, not the cup. */
const HURRIED = {
  ...TOLD,
  pour: { ...TOLD.pour, cavity: { volumeCm3: { value: 40000, low: 39500, high: 40500, from: 'taped' } } },
  cups: { cupCm3: 20000, mixS: 15 },
  foam: { ...TOLD.foam, creamS: 40 },
};

/** docs/sums.md: the formula of every number that the page opens. */
export function sumsPage({ figuresOf, preparePour }) {
  const opened = [TOLD, OTHERWISE, HURRIED].flatMap((ask) => {
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
