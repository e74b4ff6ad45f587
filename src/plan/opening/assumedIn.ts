import type { Assumption } from '../../estimate';
import type { Vector } from '../../geometry';
import { DEMOLD_RULES, RULES } from '../../yield';
import type { OpeningAsk } from './openingAsk';
import type { OpeningPlace } from './placeOpening';

/** What was taken for granted because it was not said. */
export function assumedIn(
  { ventMm, thinMm, pourUp, opening = {} }: OpeningAsk,
  place: OpeningPlace,
): Assumption[] {
  const written = (v: Vector): string => v.map((c) => Number(c.toFixed(3))).join(',');
  return [
    ...(opening.atMm === undefined
      ? [{ name: 'opening', value: place.placedBy, unit: '', from: 'assumed' as const }]
      : []),
    ...(pourUp === undefined
      ? [{ name: 'pour_up', value: written(place.usualUp), unit: '', from: 'assumed' as const }]
      : []),
    ...(ventMm === undefined
      ? [{ name: 'vent_diameter', value: RULES.ventDiameter.value, unit: 'mm', from: 'assumed' as const }]
      : []),
    ...(thinMm === undefined
      ? [{ name: 'thin', value: DEMOLD_RULES.castingStop.value, unit: 'mm', from: 'assumed' as const }]
      : []),
  ];
}
