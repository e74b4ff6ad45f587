import { RULES } from '../../../yield';
import type { AirStep } from '../air';
import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { HERE, input, type OpenedFigure, type OpenedInput } from './openedFigure';

/** The free rise of the card, the air of the day, and the free rise in it. */
export function airFigures({ air }: PreparedPour, ask: PourAsk): OpenedFigure[] {
  const card = cardFigure(ask);
  if (air === undefined) return [card];
  const { correction } = air;
  const isPressure = correction.applied.includes('pressure');
  return [
    card,
    ...(isPressure ? [stationFigure(air, ask)] : []),
    {
      key: 'free_rise_kg_m3',
      title: 'Free rise in the air of the day',
      value: correction.freeRiseKgM3.value,
      unit: 'kg/m3',
      formula:
        '1 / (1 / liquid density + (1 / free rise of the card - 1 / liquid density) x (p_card / p) x (T / T_card))',
      inputs: [
        ...input('free rise of the card', air.cardKgM3, 'kg/m3', ask.pour.freeRiseKgM3.from),
        ...(ask.pour.liquidKgM3 === undefined
          ? input('liquid density', RULES.liquidDensity.value, 'kg/m3', {
              from: RULES.liquidDensity.from,
              isAssumed: true,
            })
          : input('liquid density', ask.pour.liquidKgM3.value, 'kg/m3', ask.pour.liquidKgM3.from)),
        ...input('p_card, air of the card', correction.thenKPa.value, 'kPa', airFrom(correction.thenKPa.by)),
        ...input(
          'p, air of the day',
          (isPressure ? correction.stationKPa : correction.thenKPa).value,
          'kPa',
          isPressure ? airFrom(correction.stationKPa.by) : 'as on the card: not corrected for',
        ),
        ...input('T_card, gas at gel', RULES.gasTemperature.value, 'K', RULES.gasTemperature.from),
        ...input('T, gas at gel today', RULES.gasTemperature.value + warmerK(air, ask), 'K', HERE),
      ],
      source:
        'ideal gas law, derived; pressure by altitude: US Standard Atmosphere 1976 (ISO 2533); range by warmth: up to 1 % a degree, common practice, no source',
    },
  ];
}

/** Nothing is reckoned of it: it is what was said. */
function cardFigure({ pour: { freeRiseKgM3 } }: PourAsk): OpenedFigure {
  const { value, from } = freeRiseKgM3;
  return {
    key: 'card_kg_m3',
    title: 'Free rise of the card',
    value,
    unit: 'kg/m3',
    formula: 'foam / the volume it fills when it rises in the open; taken as it was said',
    inputs: input('free rise', value, 'kg/m3', from),
    source: 'definition of the free-rise density; test method: ASTM D7487, cup test',
  };
}

/** How an air pressure is known, as the page says it. */
export const airFrom = (
  by: AirStep['correction']['stationKPa']['by'],
): Pick<OpenedInput, 'from' | 'isAssumed'> =>
  by === 'sea level'
    ? { from: 'as at the sea, for want of a height', isAssumed: true }
    : { from: by === 'altitude' ? 'by the height above the sea' : 'barometer' };

/** By how much the parts are warmer than the card's density holds for, where that was corrected for. */
function warmerK({ correction }: AirStep, { ingredientsC, roomC, foam }: PourAsk): number {
  if (!correction.applied.includes('warmth')) return 0;
  return (ingredientsC ?? roomC ?? 0) - (foam?.timesAtC ?? 0);
}

function stationFigure({ correction: { stationKPa } }: AirStep, { air }: PourAsk): OpenedFigure {
  const figure = { key: 'station_kpa', title: 'Air pressure at the bench', unit: 'kPa' };
  if (stationKPa.by === 'barometer')
    return {
      ...figure,
      value: stationKPa.value,
      formula: 'as read, not reduced to sea level',
      inputs: input('barometer', stationKPa.value, 'kPa', 'given'),
      source: 'the reading',
    };
  return {
    ...figure,
    value: stationKPa.value,
    formula: '101.325 x (1 - 0.0065 x H / 288.15)^5.25588',
    inputs: input('H, height above the sea', air?.altitudeM, 'm', 'given'),
    source: 'US Standard Atmosphere 1976 (ISO 2533), the weather left out',
  };
}
