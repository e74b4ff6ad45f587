import { describe, expect, it } from 'vitest';
import { figuresOf, preparePour, type OpenedFigure, type PourAsk } from '../../src/plan';
import { expectClose } from '../support/close';
import { BY_HAND, inputsOf, type Of } from '../support/figuresByHand';
import { FULL_POUR } from '../support/fullPour';
import { valueOf } from '../support/outcome';

/** The same pour, told otherwise; and by hand, where another formula holds then. */
interface Telling {
  told: string;
  ask: PourAsk;
  byHand?: Readonly<Record<string, (v: Of) => number>>;
}

const { moldC: _mold, ...ofNoMold } = FULL_POUR;
const { roomC: _room, ...ofNoRoom } = ofNoMold;

/** How much more than the air outside presses, as a share of it: the gas keeps its mass in what the liquid leaves of the mold. */
const idealShare = (pack: number, liquidShare: number): number =>
  (pack * (1 - liquidShare)) / (1 - pack * liquidShare) - 1;

const TELLINGS: readonly Telling[] = [
  {
    told: 'a barometer at the bench, a card of another height, a liquid of known density, parts warmer than the room',
    ask: {
      ...FULL_POUR,
      air: { stationKPa: 95, then: { altitudeM: 300 } },
      ingredientsC: 26,
      pour: {
        ...FULL_POUR.pour,
        freeRiseKgM3: { value: 96, low: 92, high: 101, from: 'data-sheet' },
        liquidKgM3: { value: 1120, from: 'data-sheet' },
      },
    },
    byHand: { station_kpa: (v) => v('barometer') },
  },
  {
    told: 'a peak that was measured once, and straps that are counted',
    ask: {
      ...FULL_POUR,
      clamp: {
        ...FULL_POUR.clamp,
        measuredPeak: { packFactor: 1.4, peakKPa: 32 },
        straps: { straps: 5, strapN: 260, strapFriction: 0.2, strapWrapDegrees: 90, strapLossShare: 0.1 },
      },
    },
    byHand: {
      pressure_kpa: (v) => {
        const liquidShare = v('free rise') / v('liquid density');
        const there = idealShare(v('pack it was measured at'), liquidShare);
        return (v('measured peak') * idealShare(v('pack factor'), liquidShare)) / there;
      },
      design_kpa: (v) => v('peak pressure'),
    },
  },
  {
    told: 'a mold as it is warmed, from a start of its own, until it is too cold to pour',
    ask: {
      ...ofNoMold,
      warm: {
        ...FULL_POUR.warm!,
        startTempC: 17,
        toTempC: 31,
        assumed: ['sides', 'surroundings', 'targetTempC'],
      },
    },
  },
  {
    told: 'a color of the whole mix, pigment as it was said with the mold, gas that leaves as it was weighed',
    ask: {
      ...FULL_POUR,
      pour: { ...FULL_POUR.pour, gasLossShare: { value: 0.012, from: 'weighed' } },
      colors: [{ name: 'Moss', share: 0.01, of: 'mix', weighedDrops: { drops: 40, dropsG: 1.4 } }],
      facts: { ...FULL_POUR.facts, pigmentShare: 0.03 },
    },
    byHand: {
      color_1_g: (v) => v('share') * (v('A') + v('B')),
      pigment_share: (v) => v('pigment'),
    },
  },
  {
    told: 'a bench whose warmth nobody knows',
    ask: ofNoRoom,
    byHand: { cream_s: (v) => v('time of the card'), open_min: (v) => v('time of the card') },
  },
];

describe.each(TELLINGS)('the same pour told by $told', ({ ask, byHand = {} }) => {
  const figures: OpenedFigure[] = figuresOf(valueOf(preparePour(ask)), ask);
  const worked = { ...BY_HAND, ...byHand };

  it('every figure follows from what is shown beside it', () => {
    let followed = 0;
    for (const figure of figures) {
      const { key, value } = figure;
      if (worked[key] === undefined) continue;
      followed += 1;
      // The error function by hand is good to seven digits, and that of a far tail to fewer.
      expectClose(value, worked[key](inputsOf(figure)), key === 'short_fill_chance' ? 1e-4 : 1e-6, key);
    }
    expect(followed).toBeGreaterThan(40);
  });

  it('and each of them has an origin', () => {
    for (const { key, inputs, source } of figures) {
      expect(source, key).not.toBe('');
      for (const { title, value, from } of inputs)
        expect(Number.isFinite(value) && from !== '', `${key}: ${title}`).toBe(true);
    }
  });
});

describe('what nobody has said is shown as assumed', () => {
  const inputOf = (ask: PourAsk, key: string, title: string) => {
    const figures = figuresOf(valueOf(preparePour(ask)), ask);
    return figures.find((one) => one.key === key)!.inputs.find((one) => one.title === title)!;
  };

  it.each([
    ['warm_heated_min', 'start'],
    ['pour_within_min', 'air of the room'],
  ])('%s: %s, in a bench whose warmth nobody knows', (key, title) => {
    expect(inputOf(ofNoRoom, key, title)).toMatchObject({ isAssumed: true });
    expect(inputOf(FULL_POUR, key, title)).toEqual({ title, value: 21, unit: 'C', from: 'given' });
  });

  it.each([
    ['faces in the air', 1],
    ['target', 36],
  ])('the %s of a wall that is warmed', (title, value) => {
    const guessed: PourAsk = {
      ...FULL_POUR,
      warm: { ...FULL_POUR.warm!, assumed: ['sides', 'surroundings', 'targetTempC'] },
    };
    expect(inputOf(guessed, 'warm_heated_min', title)).toMatchObject({ value, isAssumed: true });
    expect(inputOf(FULL_POUR, 'warm_heated_min', title)).not.toHaveProperty('isAssumed');
  });

  it('where a mold may cool to: half-way back to the room, unless it is said', () => {
    expectClose(inputOf(FULL_POUR, 'pour_within_min', 'may cool to').value, (36 + 21) / 2, 1e-12);
    const told: PourAsk = { ...FULL_POUR, warm: { ...FULL_POUR.warm!, toTempC: 31 } };
    expect(inputOf(told, 'pour_within_min', 'may cool to')).toMatchObject({ value: 31, from: 'given' });
  });
});
