import { bad, good, type Outcome } from '../../problem';
import type { Vector } from '../measure/planeFrame';
import type { MoldParameter, MoldSettings, MoldType } from './moldType';

/** What the user said; what is left out takes its default. */
export type MoldWish = Readonly<Record<string, number | string | undefined>>;

/**
 * Every parameter of a type with a value within its range. Errors: MOLD_PARAMETER (not a number, out of range, no such choice, no direction),
 * MOLD_PARAMETER_FOREIGN (a parameter that this type does not have).
 */
export function settleMold(type: MoldType, wish: MoldWish): Outcome<MoldSettings> {
  const settings: Record<string, number | string> = {};
  for (const [key, value] of Object.entries(wish)) {
    if (value === undefined || type.parameters.some((p) => p.key === key)) continue;
    const has = type.parameters.map((p) => p.label.toLowerCase()).join(', ');
    return bad('MOLD_PARAMETER_FOREIGN', { key, value, type: type.title, has });
  }
  for (const parameter of type.parameters) {
    const value = wish[parameter.key];
    if (value === undefined) {
      settings[parameter.key] = parameter.default;
      continue;
    }
    const fits = fitting(parameter, value);
    if (!fits.ok) return fits;
    settings[parameter.key] = fits.value;
  }
  return good(settings);
}

function fitting(parameter: MoldParameter, value: number | string): Outcome<number | string> {
  const { key, label, kind, low, high, choices } = parameter;
  const refused = (need: string): Outcome<never> =>
    bad('MOLD_PARAMETER', { key, label, value: shown(value), need });
  if (kind === 'choice') {
    const text = String(value);
    return choices?.includes(text) === true ? good(text) : refused(`one of ${choices?.join(', ')}`);
  }
  if (kind === 'pull') {
    const pull = value === 'best' ? 'best' : readPull(String(value));
    return pull === undefined
      ? refused('"best", an axis like +z, or a direction "x,y,z"')
      : good(String(value));
  }
  const unit = kind === 'angle' ? ' degrees' : kind === 'count' ? '' : ' mm';
  const range = `a number from ${low} to ${high}${unit}`;
  if (typeof value !== 'number' || !Number.isFinite(value)) return refused(range);
  if (low !== undefined && (value < low || value > high!)) return refused(range);
  if (kind === 'count' && !Number.isInteger(value)) return refused(`a whole number from ${low} to ${high}`);
  return good(value);
}

/** A number that is none has no figure to show. */
const shown = (value: number | string): number | string =>
  typeof value === 'string' ? `"${value}"` : Number.isFinite(value) ? value : 'what is no number';

/** A map, not an object: of an object any text finds something, as "constructor". */
const AXES: ReadonlyMap<string, Vector> = new Map([
  ['+x', [1, 0, 0]],
  ['-x', [-1, 0, 0]],
  ['+y', [0, 1, 0]],
  ['-y', [0, -1, 0]],
  ['+z', [0, 0, 1]],
  ['-z', [0, 0, -1]],
]);

/** A unit vector from an axis or "x,y,z"; undefined for anything else. */
export function readPull(text: string): Vector | undefined {
  const axis = AXES.get(text.length === 1 ? `+${text}` : text);
  if (axis !== undefined) return axis;
  const numbers = text.split(',').map((part) => (part.trim() === '' ? NaN : Number(part)));
  const length = Math.hypot(...numbers);
  if (numbers.length !== 3 || !Number.isFinite(length) || length === 0) return undefined;
  return [numbers[0]! / length, numbers[1]! / length, numbers[2]! / length];
}

export const numberIn = (settings: MoldSettings, key: string): number => {
  const value = settings[key];
  if (typeof value !== 'number') throw new Error(`numberIn: expected a number ${key}, got ${String(value)}`);
  return value;
};

export const partsIn = (settings: MoldSettings): 1 | 2 => (settings.parts === '1' ? 1 : 2);
