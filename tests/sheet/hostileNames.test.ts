import { describe, expect, it } from 'vitest';
import { planMold, planOpening } from '../../src/plan';
import { finding } from '../../src/problem';
import { moldSheet, openingCard, placeCard } from '../../src/sheet';
import { call } from '../support/cliCall';
import { HOSTILE_NAMES, plainLike, tagsOf } from '../support/hostileNames';
import { benchOf } from '../support/moldBench';
import { ballOn } from '../support/moldShapes';
import { valueOf } from '../support/outcome';
import { cardOf, dot, HEAD } from '../support/placeCardOf';
import { SHOP_DESK, TROLL } from '../support/pourCalls';
import { pourOf, sheetOf, textOf } from '../support/sheetOf';

const bench = benchOf(ballOn(50), { accuracy: 'fast' });
const mold = valueOf(planMold(bench, { type: 'blanket', settings: { base: 'open', skinMm: 10 } }));
const plan = valueOf(
  planOpening(bench, {
    base: 'closed',
    opening: { atMm: [50, 0, 50], diameterMm: 20 },
    vents: [[0, -50, 50]],
  }),
);
const meta = (name: string) => ({ title: name, jobCode: name, date: name, version: name });
/** A Stop that quotes what was typed. */
const stops = (name: string) => [finding('CARD_UNKNOWN', 'stop', { name, known: name })];

/** What is printed or written, by the name that is given everywhere a name can be given. */
const PAGES: [string, (name: string) => string][] = [
  [
    'the pour sheet',
    (name) =>
      sheetOf(pourOf({ colors: [{ name, share: 0.01, of: 'B' }] }), {
        ...meta(name),
        foam: name,
        lot: name,
        findings: stops(name),
      }),
  ],
  ['the mold sheet', (name) => moldSheet(mold, { ...meta(name), silicone: name, findings: stops(name) })],
  [
    'the place card',
    (name) =>
      placeCard(cardOf(HEAD, [dot(1, [0, 130, 10], [0, 1, 0], { text: name })]), {
        ...meta(name),
        warnings: [{ lead: name, text: name }],
      }),
  ],
  ['the place card of an opening', (name) => openingCard(plan, { ...meta(name), findings: stops(name) })],
];

/** In the text of a page blanks are one, and a title is not among it. */
const shown = (text: string): string => text.replace(/\s+/g, ' ').trim();

describe.each(PAGES)('%s', (_, pageOf) => {
  it.each(HOSTILE_NAMES)('takes %s for a name', (name) => {
    const page = pageOf(name);
    expect(tagsOf(page)).toEqual(tagsOf(pageOf(plainLike(name))));
    expect(textOf(page)).toContain(shown(name));
    expect(textOf(page).split(shown(name)).length).toBeGreaterThan(5);
  });
});

/** As the command line writes them; every name in one and one page each, as a plan takes its time. */
describe('on the command line', () => {
  const NAME = HOSTILE_NAMES.join(' ');
  const BALL = ['sphere-r50.stl', '--file-unit', 'mm', '--accuracy', 'fast'];
  const NAMED = ['title', 'job', 'date'].map((option) => `--${option}=${NAME}`);
  const CALLS: [string, () => string][] = [
    ['sheet', () => call(['sheet', ...TROLL, ...NAMED, `--lot=${NAME}`], SHOP_DESK).out],
    ['opening --card', () => call(['opening', ...BALL, ...NAMED, '--card', '-']).out],
  ];

  it.each(CALLS)('%s takes them for names', (_, pageOf) => {
    const page = pageOf();
    expect(page).toContain('<!doctype html>');
    expect(tagsOf(page).join('')).not.toMatch(
      /<(script|img|iframe|a|base)\b|ran\b|elsewhere|\son\w+=|\sstyle=/i,
    );
    expect(textOf(page)).toContain(shown(NAME));
  });
});
