import { describe, expect, it } from 'vitest';
import { liveSilicone, thicknessIn } from '../../src/app/mold/liveSilicone';
import { againstWords, needKg, nextWords, siliconeWords, toBuyWords } from '../../src/app/mold/liveWords';
import { typeRows } from '../../src/app/mold/typeRows';
import { chosenNow } from '../../src/app/mold/chosen';
import { buyKg } from '../../src/words/buyKg';
import { moldField } from '../../src/app/ticket/madeFields';
import { typeOf } from '../../src/app/ticket/moldState';
import type { Ticket } from '../../src/app/ticket/state';
import { expectClose } from '../support/close';
import { poured, settle, step, type } from './pageEngine';

/** A box of 100 x 100 x 200 mm in a poured block: the wall w takes ((100 + 2 w)^2 (200 + 12) - 2e6) mm3, with 12 mm over the top. */
const blockCm3 = (wallMm: number): number => ((100 + 2 * wallMm) ** 2 * 212 - 2e6) / 1000;

const { ticket: bare, desk } = poured();
const inBlock = step(
  bare,
  { do: 'molding', molding: { type: 'block' } },
  { do: 'kits', text: '1.1 kg=30, 5.5 kg=130' },
  ...type('siliconeDensity', '1.1'),
  ...type('siliconeWaste', '0 %'),
  ...type('cupLoss', '0'),
);
const look = { do: 'look', how: { ladder: true } } as const;
const told = settle(step(inBlock, look), desk, { withMolds: true });
const wall = moldField(typeOf(told.molding), thicknessIn(told)!.parameter);
const moved = (mm: string): Ticket => step(told, ...type(wall, mm));

const toldOf = (ticket: Ticket) => {
  const live = liveSilicone(ticket);
  if (live.state !== 'told') throw new Error(`expected silicone that is told, got ${live.state}`);
  return live;
};

describe('silicone while the thickness is moved', () => {
  it('is told at once, by the measured rungs, while the mold itself is still worked out', () => {
    const ticket = moved('9');
    expect(chosenNow(ticket)).toEqual({ state: 'working' });
    const { need, mm } = toldOf(ticket);
    expect(mm).toBe(9);
    // The wall's curve is of the second degree: the ladder meets it to far below the step of the scale.
    expectClose(need.totalG, 1.1 * blockCm3(9), 1e-3, 'grams at 9 mm');
    expectClose(need.baseG + need.catalystG, need.totalG, 1e-12, 'base and catalyst');
  });

  it('is another at every move, and never that of before', () => {
    const grams = ['8', '8.5', '9', '20'].map((mm) => toldOf(moved(mm)).need.totalG);
    expect([...new Set(grams)].sort((a, b) => a - b)).toEqual(grams);
  });

  it('meets what the mold then says, when it stands still', () => {
    const still = settle(moved('9'), desk, { withMolds: true });
    const exact = chosenNow(still).answer!.silicone;
    expectClose(toldOf(moved('9')).need.totalG, exact.totalG, 1e-3, 'grams');
    expect(toldOf(moved('9')).need.purchase?.kits).toEqual(exact.purchase?.kits);
  });

  it('says what a thinner or thicker wall saves or adds, against the ladder itself', () => {
    const { need, mm, at } = toldOf(moved('10'));
    const kg = (wallMm: number): string =>
      Number(((1.1 * Math.abs(blockCm3(wallMm) - blockCm3(10))) / 1000).toFixed(2)).toString();
    expect(nextWords(mm, need.totalG, at)).toBe(`About: 8 mm saves ${kg(8)} kg, 12 mm adds ${kg(12)} kg.`);
    expect(againstWords(need.totalG, { massG: at(12)!, mm: 12 })).toBe(`${kg(12)} kg less than at 12 mm`);
  });

  it('says base and catalyst in words, and the kits with their price', () => {
    const { need } = toldOf(moved('10'));
    expect(siliconeWords(need)).toMatch(
      /^\(1\.\d\d to 1\.\d\d kg\): 1\.\d\d kg of base, 0\.\d\d kg of catalyst$/,
    );
    const leftKg = Number((2.2 - need.totalG / 1000).toPrecision(3));
    expect(toBuyWords(need)).toBe(`To buy: 2 × 1.1 kg for 60, ${leftKg} kg left over`);
    const stocked = step(moved('10'), ...type('stockBase', '6 kg'), ...type('stockCatalyst', '0.6 kg'));
    expect(toBuyWords(toldOf(stocked).need)).toBe('Nothing to buy: the stock is enough');
  });

  it('has base and catalyst that add up to the whole as it is shown, at every mass', () => {
    const { need } = toldOf(moved('10'));
    for (let totalG = 60; totalG < 3000; totalG += 7) {
      const catalystG = totalG / 11;
      const mixed = {
        ...need,
        totalG,
        rangeG: [totalG, totalG] as const,
        baseG: totalG - catalystG,
        catalystG,
      };
      const words = siliconeWords(mixed);
      const [base, catalyst] = [...words.matchAll(/([\d.]+) kg of/g)].map(([, kg]) => Number(kg));
      expectClose(base! + catalyst!, Number(needKg(mixed).value), 1e-9, words);
      const placeKg = totalG >= 1000 ? 0.01 : 0.001;
      expect(Math.abs(catalyst! - catalystG / 1000), words).toBeLessThanOrEqual(placeKg);
    }
  });

  it('never names less to buy than is mixed', () => {
    // 14.314 kg to the nearest tenth would leave 14 g to be found elsewhere.
    expect([14.314, 1.384, 0.3, 0.3001, 2].map(buyKg)).toEqual([
      '14.32 kg',
      '1.39 kg',
      '0.3 kg',
      '0.301 kg',
      '2 kg',
    ]);
  });

  it('follows a box of the silicone too, without a new ladder', () => {
    const heavier = step(moved('9'), ...type('siliconeDensity', '1.3'));
    expectClose(toldOf(heavier).need.totalG, 1.3 * blockCm3(9), 1e-3, 'grams of a heavier one');
  });
});

describe('where no ladder stands', () => {
  it('says that it is being measured, and the mold has its figures without it', () => {
    expect(liveSilicone(step(inBlock, look)).state).toBe('coming');
    expect(liveSilicone(inBlock).state).toBe('none');
  });

  it('tells nothing for another type, for a thickness out of range, for a body that is another', () => {
    expect(liveSilicone(step(told, { do: 'molding', molding: { type: 'skin' } })).state).toBe('coming');
    expect(liveSilicone(moved('300'))).toMatchObject({
      state: 'refused',
      problem: { code: 'INPUT_OUT_OF_BOUNDS' },
    });
    expect(liveSilicone(step(told, ...type('tape', '210'))).state).not.toBe('told');
  });
});

describe('the rows of the types', () => {
  const names = (ticket: Ticket): string[] => typeRows(ticket).map(({ name }) => name);

  it('have a cost where each kit has a price, and only there', () => {
    expect(names(told)).toContain('Cost of what to buy');
    expect(names(step(told, { do: 'kits', text: '1.1 kg=30, 5.5 kg' }))).not.toContain('Cost of what to buy');
    const cost = typeRows(told).find(({ name }) => name === 'Cost of what to buy')!;
    const mold = chosenNow(told).answer!;
    expect(cost.cell(mold)).toBe(String(mold.silicone.purchase!.price));
  });

  it('say how much is here: 6 kg of base and 0.6 of catalyst make 6.6 kg at 10:1', () => {
    const stocked = step(
      told,
      ...type('siliconeBase', '10'),
      ...type('siliconeCatalyst', '1'),
      ...type('stockBase', '6 kg'),
      ...type('stockCatalyst', '0.6 kg'),
    );
    expect(names(stocked)).toContain('To buy beyond the 6.6 kg here');
    expect(names(told)).toContain('To buy');
  });
});
