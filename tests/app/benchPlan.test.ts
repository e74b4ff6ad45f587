import { describe, expect, it } from 'vitest';
import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { benchPlan } from '../../src/app/bench/benchPlan';
import { benchStops } from '../../src/app/bench/benchStops';
import { benchTicks } from '../../src/app/bench/benchTicks';
import { cupAtBench } from '../../src/app/bench/cupAtBench';
import { waitLines } from '../../src/app/bench/waitLines';
import { openingKeyOf, openingNow, pourNow } from '../../src/app/ticket/now';
import { cardOf } from '../../src/app/ticket/wishes';
import type { OpeningPlan } from '../../src/plan';
import { finding } from '../../src/problem';
import { dayTime } from '../../src/words/benchWords';
import { expectClose } from '../support/close';
import { poured, settle, step, type } from './pageEngine';

type Actions = Parameters<typeof step>[1][];

function told(...actions: Actions) {
  const { ticket, desk } = poured();
  const now = settle(step(ticket, ...actions), desk);
  const pour = pourNow(now).answer!;
  return { ticket: now, pour, plan: benchPlan(now, pour, SAMPLE_SHOP.foams) };
}

describe('the plan as the bench has it', () => {
  it('pours five seconds before it creams, by the card', () => {
    const { plan, pour } = told();
    expect(plan.pourBy).toMatchObject({ s: 35, from: 'data-sheet', at: 'at 23 °C' });
    expect(plan.rise).toMatchObject({ s: 150, from: 'data-sheet' });
    expect(plan.open).toMatchObject({ s: 1500, from: 'data-sheet' });
    expect(plan.open).not.toHaveProperty('earliestS');
    expect(plan).toMatchObject({ cups: 1, packFactor: 1.3, cavityCm3: pour.cavityCm3.value });
    expect(plan.partAG + plan.partBG).toBe(plan.totalG);
    expect(plan.scaleG).toBe(plan.totalG);
    expect('opening' in plan).toBe(false);
  });

  it('takes the early end of the range on a warm day, and says for which warmth', () => {
    const { plan, pour } = told(...type('ingredients', '31'), ...type('moldTemp', '31'));
    // Mixing leaves no time to pour then: that is a Stop, and the clock still says when it creams.
    expect(pour.refused.cups?.code).toBe('POUR_WINDOW_NONE');
    // 2.0 times in 10 K is the quick end; 1.33488 and 1.45553 are exp(Ea/R (1/T1 - 1/T2)) of 23 to 31 °C, blowing and gelling (foam.md, T23).
    expectClose(plan.pourBy!.s, 40 / 2 ** 0.8 - 5, 1e-9, 'pour by');
    expect(plan.pourBy).toMatchObject({ from: 'assumed', at: 'for 31 °C, from 23 °C' });
    expectClose(plan.rise!.s, 150 / 1.33488, 1e-4, 'rise');
    expectClose(plan.open!.s, 1500 / 1.45553, 1e-4, 'open');
  });

  it('without times knows none to pour by, and waits for the end of the common range', () => {
    const { plan } = told(...type('cream', ''), ...type('openTime', ''));
    expect(plan).not.toHaveProperty('pourBy');
    expect(plan.open).toEqual({
      s: 3600,
      earliestS: 1200,
      from: 'assumed',
      by: 'common practice, no source',
    });
  });

  it('has the rise of another foam from nowhere', () => {
    expect(told({ do: 'foam', foam: { name: 'Another' } }).plan).not.toHaveProperty('rise');
    expect(
      told({ do: 'foam', foam: { name: 'Another' } }, ...type('riseTime', '200')).plan.rise,
    ).toMatchObject({ s: 200, from: 'given' });
  });

  it.each<[string, Actions, string | undefined]>([
    ['a plug of some area', type('plugArea', '12'), 'plug'],
    ['a plug of none', type('plugArea', '0'), 'open'],
    ['a plug that is held', [{ do: 'pourFact', fact: 'plugHeld', value: 'yes' }], 'plug'],
    ['an opening that lets air out', [{ do: 'pourFact', fact: 'openingOpen', value: 'yes' }], undefined],
  ])('reads of %s how the mold is closed', (_, actions, opening) => {
    expect(told(...actions).plan.opening).toBe(opening);
  });

  it('has the color of all cups, which is in the mix and in the casting', () => {
    const { plan } = told(
      { do: 'color', row: 0, color: { name: 'Moss' } },
      ...type('color.0.share', '2'),
      ...type('color.0.drops', '0.5 g'),
    );
    expectClose(plan.colorG!, 0.02 * plan.partBG, 1e-9, 'color');
    expectClose(plan.scaleG, plan.totalG + plan.colorG!, 1e-9, 'scale');
  });

  it('gives for the B in the cup its A by the ratio, to the step of the scale', () => {
    const { pour, plan } = told(...type('bInCup', '207'));
    expect(cupAtBench(pour, 207)).toEqual({ partAG: 376, partBG: 207, totalG: 583, isRead: true });
    expect(plan).toMatchObject({ cupAG: 376, scaleG: 583 });
    expect(plan).not.toHaveProperty('colorG');
    expect(cupAtBench(pour, undefined)).toMatchObject({ ...pour.cups.cups[0]!, isRead: false });
  });
});

describe('the ticks before A goes in', () => {
  const words = (...actions: Actions): Record<string, string> => {
    const { ticket, pour } = told(...actions);
    return Object.fromEntries(benchTicks(ticket, pour).map((one) => [one.id, `${one.words} | ${one.plan}`]));
  };

  it('have no figure that nobody has said', () => {
    expect(words()).toMatchObject({
      gloves: 'Gloves on, fan on | ',
      mold: 'Mold dry, released, strapped | ',
      plug: 'Plug, if there is one, and vent pins in reach | ',
    });
  });

  it('name straps, pins, opening and cup as the plan has them', () => {
    const said = words(
      ...type('projected', '404'),
      ...type('plugArea', '12'),
      ...type('ventCount', '2'),
      ...type('openWide', '30'),
      ...type('cupFill', '50'),
    );
    expect(said.mold).toMatch(/^Mold dry, released, strapped \| \d+ straps?$/);
    expect(said.plug).toBe('Plug and both vent pins in reach | 30 mm');
    expect(said.cup).toMatch(/^Cup holds 2 times the mix \| [\d.]+ L or more$/);
    expect(words(...type('plugArea', '0'), ...type('ventCount', '0')).plug).toBe(
      'Opening free, nothing in its way | ',
    );
  });

  it('ask for a cup that holds the liquid three times, and say that this is common practice', () => {
    const { ticket, pour } = told();
    const cup = benchTicks(ticket, pour).find(({ id }) => id === 'cup')!;
    const liters = (3 * pour.batch.totalG) / pour.batch.liquidKgM3;
    const asked = Number(/^([\d.]+) L or more$/.exec(cup.plan)![1]);
    expect(asked).toBeGreaterThanOrEqual(liters);
    expect(asked).toBeLessThan(liters + 0.1);
    expect(cup.from).toContain('common practice, no source');
  });
});

describe('the Stops of the plan', () => {
  it('stand at the bench in words, each once', () => {
    const sealed: Actions = [
      ...type('ventCount', '0'),
      { do: 'pourFact', fact: 'openingOpen', value: 'no' },
      { do: 'pourFact', fact: 'moldWater', value: 'wet' },
    ];
    const { ticket, pour } = told(...sealed);
    const stops = benchStops(ticket, cardOf(ticket));
    const stopped = pour.checks.filter(({ status }) => status === 'stop');
    expect(stopped.length).toBeGreaterThan(0);
    expect(stops).toHaveLength(stopped.length);
    expect(new Set(stops.map(({ text }) => text)).size).toBe(stops.length);
    expect(stops.every(({ text }) => text.length > 10)).toBe(true);
  });

  it('are those of the opening too, once it was worked out', () => {
    const { ticket } = told();
    const looked = { ...ticket, venting: { ...ticket.venting, isWanted: true } };
    const answer = {
      findings: [finding('OPENING_UNDERSIDE', 'stop', { tiltDegrees: 120 })],
      checks: [],
      places: [],
    } as unknown as OpeningPlan;
    const planned = {
      ...looked,
      opening: { ...looked.opening, key: openingKeyOf(looked)!, state: 'answered' as const, answer },
    };
    expect(openingNow(planned).answer).toBe(answer);
    expect(benchStops(planned, cardOf(planned))).toHaveLength(1);
    expect(benchStops(looked, cardOf(looked))).toEqual([]);
  });

  it('are none where nothing stops', () => {
    const { ticket } = told();
    expect(benchStops(ticket, cardOf(ticket))).toEqual([]);
  });
});

describe('what comes while it is waited for', () => {
  const beganMs = new Date(2026, 10, 30, 14, 6, 37).getTime();

  it('stands at its times of day, and what holds now is marked', () => {
    const { plan } = told(...type('plugArea', '12'));
    const lines = waitLines({ ...plan, freeFirst: 'Free first: 3' }, beganMs, 600_000);
    expect(lines.map(({ key, when, isNow }) => [key, when, isNow])).toEqual([
      ['rise', '14:09', false],
      ['hands', 'until 14:31', true],
      ['open', '14:31', false],
      ['free', 'then', false],
    ]);
    expect(lines[0]!.words).toBe('Rise done. Leave the plug in.');
    expect(waitLines(plan, beganMs, 1_500_000).find(({ isNow }) => isNow)!.key).toBe('open');
    expect(dayTime(beganMs + 1_500_000)).toBe('14:31');
  });

  it('has no times where there is no plan, and no moment that it may be opened', () => {
    expect(waitLines(undefined, beganMs, 9e6).map(({ when, isNow }) => [when, isNow])).toEqual([
      ['first', false],
      ['until open', true],
      ['then', false],
    ]);
  });
});
