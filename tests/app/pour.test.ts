import { describe, expect, it } from 'vitest';
import { batchChecks } from '../../src/app/batch/batchProblems';
import { fieldOf } from '../../src/app/batch/fieldProblem';
import { batchMarks } from '../../src/app/batch/marks';
import { moldsAskOf } from '../../src/app/ticket/moldWishes';
import { pourNow, pourToldNow } from '../../src/app/ticket/now';
import { readPastText } from '../../src/app/ticket/past';
import { packsOf } from '../../src/app/ticket/pourWishes';
import { readField } from '../../src/app/ticket/readField';
import type { Ticket } from '../../src/app/ticket/state';
import { cardOf } from '../../src/app/ticket/wishes';
import { announce } from '../../src/app/words/announce';
import { expectClose } from '../support/close';
import { openBox, poured, settle, step, still, type } from './pageEngine';

type Actions = Parameters<typeof step>[1][];
const fact = (name: 'moldWater' | 'ratioReadBack', value: string): Actions => [
  { do: 'pourFact', fact: name, value },
];

/** The box of 2000 cm3 with the light sample foam, and what is told on top. */
function pourWith(...actions: Actions) {
  const { ticket, desk } = poured();
  const told = settle(step(ticket, ...actions), desk);
  return { ticket: told, desk, pour: pourNow(told).answer! };
}
const statusOf = (ticket: Ticket, code: string): string | undefined =>
  pourNow(ticket).answer?.checks.find((check) => check.code === code)?.status;

describe('the air of the day', () => {
  it('at 1500 m the foam is lighter by the gas it need not push back, and the grams follow', () => {
    const before = pourWith().pour.batch;
    const { pour } = pourWith(...type('altitude', '1500'));
    // 1/rho = 1/rho_s + (1/rho_ref - 1/rho_s) p_ref/p, with 84.556 kPa at 1500 m (ISO 2533).
    const { liquidKgM3 } = before;
    const cardKgM3 = before.inputs.freeRiseKgM3;
    const gas = (1 / cardKgM3 - 1 / liquidKgM3) * (101.325 / 84.556);
    expectClose(pour.batch.inputs.freeRiseKgM3, 1 / (1 / liquidKgM3 + gas), 1e-3, 'free rise');
    expect(pour.batch.totalG).toBeLessThan(before.totalG);
  });

  it('is typed in feet too, and no mountain is hard to believe', () => {
    const { ticket } = pourWith(...type('altitude', '4921 ft'));
    expectClose(pourToldNow(ticket)!.air!.altitudeM!, 1500, 1e-3, 'height');
    expect(readField('altitude', { text: '1500', unit: 'm' })).toMatchObject({
      readback: '1500 m (4921 ft)',
    });
    expect(readField('tape', { text: '1500', unit: 'm' }).kind).toBe('ask');
  });

  it('is left as it is by a cup test of the day', () => {
    const cup: Actions = [{ do: 'foam', foam: { from: 'cup-test' } }];
    const { pour } = pourWith(...cup, ...type('altitude', '1500'));
    expect(pour.air!.correction.applied).toEqual([]);
  });

  it.each(['1,500', 'high'])('has no grams while the height reads %s: they hang on it', (text) => {
    const { ticket } = poured();
    expect(pourNow(step(ticket, ...type('altitude', text), still)).state).toBe('open');
  });

  it('from the first keystroke in a height no gram of before is shown or said', () => {
    const { ticket } = poured();
    const typed = step(ticket, ...type('altitude', '1500'));
    expect(pourNow(typed)).toEqual({ state: 'working' });
    expect(announce(typed)).not.toMatch(/\d/);
  });
});

describe('cups', () => {
  it('a cup of half a liter splits the batch; A and B of all cups add up to the step of the scale', () => {
    const { pour, ticket } = pourWith(...type('foamCup', '0.5'));
    const { cups, partAG, partBG, totalG } = pour.cups;
    expect(cups.length).toBeGreaterThan(1);
    expect(cups.reduce((sum, cup) => sum + cup.partAG, 0)).toBe(partAG);
    expect(partAG + partBG).toBe(totalG);
    expect(announce(ticket)).toContain(`${cups.length} cups: A ${partAG} grams, B ${partBG} grams.`);
  });

  it('that are too small are refused beside their field, and the grams stay', () => {
    const before = pourWith().pour.batch.totalG;
    const { pour, ticket } = pourWith(...type('foamCup', '20 cm3'));
    expect(pour.batch.totalG).toBe(before);
    expect(pour.refused.cups?.code).toBe('CUPS_TOO_MANY');
    expect(fieldOf(pour.refused.cups!)).toBe('foamCup');
    expect(batchMarks(ticket, cardOf(ticket)).cups).toBe('stop');
  });

  it('with no second left to pour in the cream time is told, and the grams stay', () => {
    const { pour } = pourWith(...type('cream', '20'));
    expect(fieldOf(pour.refused.cups!)).toBe('cream');
    expect(pour.batch.totalG).toBeGreaterThan(0);
  });
});

describe('what cannot be had of one question', () => {
  it('a target above the air leaves every other answer standing', () => {
    const warm: Actions = [...type('warmWall', '20'), ...type('warmAir', '25')];
    const { pour, ticket } = pourWith(...warm, ...type('projected', '300'), ...type('foamCup', '0.5'));
    expect(pour.refused.warm?.code).toBe('WARM_UNREACHABLE');
    expect(fieldOf(pour.refused.warm!)).toBe('warmAir');
    expect(pour.warmth.warmUp).toBeUndefined();
    expect(pour.forces.clamp).toBeDefined();
    expect(pour.cups.cups.length).toBeGreaterThan(1);
    expect(batchMarks(ticket, cardOf(ticket)).warm).toBe('stop');
  });

  it('two of them are both told', () => {
    const { pour } = pourWith(
      ...type('warmWall', '20'),
      ...type('warmAir', '25'),
      ...type('foamCup', '20 cm3'),
    );
    expect(Object.keys(pour.refused).sort()).toEqual(['cups', 'warm']);
  });

  it('a box of the forces that cannot be read takes the forces, not the grams', () => {
    const { ticket, pour } = pourWith(...type('projected', 'wide'));
    expect(pourToldNow(ticket)!.clamp).toBeUndefined();
    expect(pour.batch.totalG).toBeGreaterThan(0);
    expect(batchMarks(ticket, cardOf(ticket)).forces).toBe('stop');
  });
});

describe('packs side by side', () => {
  it('are four usual ones and the chosen one, each once', () => {
    const { ticket } = pourWith(...type('pack', '1.4'));
    expect(packsOf(ticket)).toEqual([1.15, 1.25, 1.35, 1.4, 1.45]);
    expect(packsOf(step(ticket, ...type('pack', '1.25')))).toEqual([1.15, 1.25, 1.35, 1.45]);
  });

  it('the chosen column has the grams of the batch, and more pack is never less mass', () => {
    const { pour } = pourWith(...type('pack', '1.4'));
    const columns = pour.packs!.columns.filter((column) => column.refused === undefined);
    const chosen = columns.find(({ packFactor }) => packFactor === 1.4)!;
    expect([chosen.batch.partAG, chosen.batch.partBG]).toEqual([pour.batch.partAG, pour.batch.partBG]);
    const grams = columns.map(({ batch }) => batch.totalG);
    expect(grams).toEqual([...grams].sort((a, b) => a - b));
  });
});

describe('castings of before', () => {
  it('count at their pack: of three at 1.25 two filled', () => {
    const { pour } = pourWith({ do: 'past', text: '1.25 filled 2, 1,25 short; 1.15 short' });
    const past = pour.packs!.columns.map((column) => ('past' in column ? column.past : undefined));
    expect(past.map((one) => [one?.filled, one?.poured]).slice(0, 3)).toEqual([
      [0, 1],
      [2, 3],
      [0, 0],
    ]);
  });

  it.each(['1.25', 'filled', '1.25 half', '1.25 filled 0', 'x short', '1.25 filled 1e9'])(
    'are told that "%s" is none',
    (text) => expect(readPastText(`1.15 short, ${text}`)).toEqual({ ok: false, text }),
  );
});

describe('the color', () => {
  const moss: Actions = [
    { do: 'color', row: 0, color: { name: 'Moss' } },
    ...type('color.0.share', '2'),
    ...type('color.0.drops', '0.5 g'),
  ];

  it('of 2 % of B weighs a fiftieth of B; 20 drops of 0.5 g are 0.025 g each', () => {
    const { pour } = pourWith(...moss);
    const [item] = pour.color!.items;
    expectClose(item!.massG, 0.02 * pour.batch.partBG, 1e-12, 'mass');
    expect(item!.name).toBe('Moss');
    expect(item!.drops).toBe(Math.round((0.02 * pour.batch.partBG) / 0.025));
  });

  it('goes to the check of pigment as its share of the whole mix', () => {
    const { ticket } = pourWith(...moss);
    expectClose(pourToldNow(ticket)!.facts!.pigmentShare!, 0.02 * (55 / 155), 1e-12, 'share');
  });

  it('of the same name twice is refused as a color; the grams stay', () => {
    const twice: Actions = [
      ...moss,
      { do: 'color', row: 1, color: { name: 'Moss' } },
      ...type('color.1.share', '1'),
    ];
    const { pour } = pourWith(...twice);
    expect(pour.refused.colors?.code).toBe('COLOR_NAMED_TWICE');
    expect(pour.color).toBeUndefined();
    expect(pour.batch.totalG).toBeGreaterThan(0);
  });
});

describe('the checks before the pour', () => {
  it('a mold that is not confirmed dry stops; once it is, it does not', () => {
    expect(statusOf(pourWith(...fact('moldWater', 'not confirmed dry')).ticket, 'MOLD_DAMP')).toBe('stop');
    expect(statusOf(pourWith(...fact('moldWater', 'confirmed dry')).ticket, 'MOLD_DAMP')).not.toBe('stop');
    expect(statusOf(pourWith().ticket, 'MOLD_DAMP')).toBe('unknown');
  });

  it('31 C lies in the common band of mold temperatures, 15.6 C (60 F) does not', () => {
    expect(statusOf(pourWith(...type('moldTemp', '31')).ticket, 'MOLD_TEMPERATURE')).toBe('fine');
    expect(statusOf(pourWith(...type('moldTemp', '60 F')).ticket, 'MOLD_TEMPERATURE')).not.toBe('fine');
  });

  it('the sample ratio the other way round stops, whatever was read back', () => {
    const turned = pourWith(
      ...type('partsA', '55'),
      ...type('partsB', '100'),
      ...fact('ratioReadBack', 'yes'),
    );
    expect(statusOf(turned.ticket, 'RATIO_ORDER')).toBe('stop');
    expect(statusOf(pourWith(...fact('ratioReadBack', 'yes')).ticket, 'RATIO_ORDER')).toBe('fine');
  });

  it('no opening to close is a fact: a plug of 0 cm2 is none', () => {
    expect(statusOf(pourWith(...type('plugArea', '0')).ticket, 'PLUG_FORCE')).toBe('fine');
    expect(statusOf(pourWith().ticket, 'PLUG_FORCE')).toBe('unknown');
  });

  it('tell what a finding of the batch tells once, not twice', () => {
    const { ticket } = pourWith(...type('pack', '2.4'), ...type('foamCup', '0.5'));
    const rows = batchChecks(ticket, cardOf(ticket))!.map(({ code }) => code);
    expect(rows).toContain('PACK_RANGE');
    for (const code of ['PACK_UNUSUAL', 'NO_CUP_TEST', 'CUPS_OVER_HANDS']) expect(rows).not.toContain(code);
    expect(new Set(rows).size).toBe(rows.length);
  });

  it('are no reason to work out the molds anew', () => {
    const { ticket } = poured();
    expect(moldsAskOf(step(ticket, ...fact('moldWater', 'none')))).toEqual(moldsAskOf(ticket));
  });
});

it('a new scan takes no shadow, no mold temperature and no dry mold of the last one, but the day and the cup', () => {
  const { ticket, desk } = pourWith(
    ...type('projected', '300'),
    ...type('moldTemp', '31'),
    ...type('bInCup', '80'),
    ...type('altitude', '500'),
    ...type('foamCup', '2'),
    ...fact('moldWater', 'confirmed dry'),
  );
  const { fields, pouring } = openBox(ticket, desk, 'b.stl');
  expect([fields.projected.text, fields.moldTemp.text, fields.bInCup.text]).toEqual(['', '', '']);
  expect(pouring.facts.moldWater).toBe('');
  expect([fields.altitude.text, fields.foamCup.text]).toEqual(['500', '2']);
});
