import { describe, expect, it } from 'vitest';
import { planOpening, type OpeningAsk, type OpeningPlan } from '../../src/plan';
import { finding, type Problem } from '../../src/problem';
import { openingCard, placeCard } from '../../src/sheet';
import { markedPlaceWords } from '../../src/words/openingPlaces';
import { benchOf } from '../support/moldBench';
import { ballOn } from '../support/moldShapes';
import { valueOf } from '../support/outcome';
import { cardOf, HEAD, manyDots, rowsIn } from '../support/placeCardOf';
import { textOf } from '../support/sheetOf';

const META = { version: '0.0.0-test' };
const bench = benchOf(ballOn(50), { accuracy: 'fast' });
const planned = (ask: OpeningAsk = {}): OpeningPlan => valueOf(planOpening(bench, ask));
const TOP: OpeningAsk = { base: 'closed', opening: { atMm: [0, 0, 100], diameterMm: 15 } };
/** Sideways and poured as it stands: a pocket over the hole, and a hole that does not face up. */
const SIDE: OpeningAsk = {
  base: 'closed',
  opening: { atMm: [50, 0, 50], diameterMm: 20 },
  pourUp: [0, 0, 1],
  vents: [[0, -50, 50]],
};

describe('the place card of an opening', () => {
  it('has a row for each place of the plan, in its words, with the tape distances of the ball', () => {
    const plan = planned(SIDE);
    const rows = rowsIn(openingCard(plan, META));
    expect(rows.map(([n, what]) => [n, what])).toEqual(
      plan.places.map((place) => [String(place.n), markedPlaceWords(place)]),
    );
    // The hole is at the outermost point of its right side, half way up.
    expect(rows[0]!.slice(2, 5)).toEqual([
      '50 (1 15/16)',
      'right 0 (0)',
      expect.stringMatching(/50 \(1 15\/16\)/),
    ]);
    expect(rows[1]![1]).toBe('Vent 2 mm (0.08 in), planned');
  });

  it('says of vents that the level filling is a lower bound for foam, and nothing of it where there is none', () => {
    expect(textOf(openingCard(planned(SIDE), META))).toMatch(/a lower bound for foam, which rises as a dome/);
    expect(textOf(openingCard(planned({ ...TOP, pourUp: [0, 0, 1] }), META))).not.toMatch(/lower bound/);
  });

  it('says a Stop of the plan in a frame over the drawing', () => {
    const page = openingCard(planned(SIDE), META);
    expect(textOf(page)).toMatch(/Stop, do not pour on this plan: .*does not face up/);
    expect(page.indexOf('class="stop"')).toBeLessThan(page.indexOf('<svg'));
  });

  it('says a Stop that stands beside the plan, as of the scan, and counts those over two', () => {
    const stops: Problem[] = [1, 2, 3, 4].map((n) =>
      finding('LOCKED_PIECE', 'stop', { n, neckMm: 94, bulbMm: 251, stretchShare: 1.1 }),
    );
    const text = textOf(openingCard(planned(TOP), { ...META, findings: stops }));
    expect(text).toMatch(/Part 1 is locked.*Part 2 is locked.*And 2 more\./);
    expect(text).not.toMatch(/Part 3 is locked/);
  });

  it('says a band without a width, with both ends', () => {
    const pour = { liquidCm3: 300, withinS: 2, mixPaS: 1 };
    const plan = planned({ ...TOP, pour });
    expect(plan.opening.band.isEmpty).toBe(true);
    expect(textOf(openingCard(plan, META))).toMatch(/Opening: No single opening suits: [\d.]+ mm are needed/);
  });

  it('has no frame over the drawing where nothing stops', () => {
    const page = openingCard(planned(TOP), META);
    expect(page.slice(0, page.indexOf('<svg'))).not.toMatch(/<p class="stop"/);
    expect(textOf(page)).not.toMatch(/do not pour/);
  });

  it('the same plan gives the same bytes, and no place that is none', () => {
    const [one, other] = [openingCard(planned(SIDE), META), openingCard(planned(SIDE), META)];
    expect(one).toBe(other);
    expect(one).not.toMatch(/NaN|undefined|Infinity|null/);
  });
});

describe('warnings on the card', () => {
  const long = { lead: 'Stop:', text: 'This is what is wrong and by how much. '.repeat(12) };

  it('take their room from the table: rows go to the next page, each once', () => {
    const dots = manyDots(HEAD, 12, 5);
    const page = placeCard(cardOf(HEAD, dots), { ...META, warnings: [long, long] });
    expect(rowsIn(page).map(([n]) => Number(n))).toEqual(dots.map(({ n }) => n));
    const bare = placeCard(cardOf(HEAD, dots), META);
    const onFirst = (html: string): number => rowsIn(html.split('</article>')[0]!).length;
    expect(onFirst(page)).toBeLessThan(onFirst(bare));
    expect(textOf(page)).not.toContain('No places to mark');
  });

  it('are text, never markup', () => {
    const page = placeCard(cardOf(HEAD, []), { ...META, warnings: [{ lead: '<b>', text: '<script>' }] });
    expect(page).not.toContain('<script>');
  });
});
