import type { Vector } from '../../geometry';
import { bad, good, type Outcome } from '../../problem';
import { checkWithin, DEMOLD_BOUNDS, POUR_BOUNDS, type InputBounds } from '../../yield';
import type { OpeningAsk } from './openingAsk';

/** Widths and places are numbers of sense. Errors: INPUT_NOT_A_NUMBER, INPUT_OUT_OF_BOUNDS, DIRECTION_NONE. */
export function checkAsk({ opening = {}, pourUp, vents = [], ventMm, thinMm }: OpeningAsk): Outcome<true> {
  const checks: [number | undefined, InputBounds, string][] = [
    [opening.diameterMm, POUR_BOUNDS.sprueMm, 'sprueMm'],
    [opening.shareMost, POUR_BOUNDS.shareMost, 'shareMost'],
    [ventMm, POUR_BOUNDS.ventMm, 'ventMm'],
    [thinMm, DEMOLD_BOUNDS.thinMm, 'thinMm'],
  ];
  for (const [value, bounds, input] of checks) {
    const checked = value === undefined ? good(0) : checkWithin(value, bounds, input);
    if (!checked.ok) return checked;
  }
  const places = [...(opening.atMm === undefined ? [] : [opening.atMm]), ...vents];
  for (const place of places) {
    const checked = checkPlace(place);
    if (!checked.ok) return checked;
  }
  if (pourUp === undefined) return good(true);
  const length = Math.hypot(...pourUp);
  return length > 0 && length < Infinity ? good(true) : bad('DIRECTION_NONE', { text: pourUp.join(',') });
}

function checkPlace(place: Vector): Outcome<unknown> {
  const wrong = place.map((c) => checkWithin(c, DEMOLD_BOUNDS.placeMm, 'placeMm')).find((one) => !one.ok);
  return wrong ?? good(true);
}
