import type { Picture, Shells } from '../../worker/protocol';
import type { MmSeat } from '../../viewer/shown';
import type { BoxMm } from './cutControls';

/** Bounds of the sculpt, mm on the placed piece. */
export function sculptBox({ halfUnits, middleUnits }: Picture, { mmPerUnit }: MmSeat): BoxMm {
  const along = (sign: 1 | -1): [number, number, number] => {
    const [x, y, z] = middleUnits.map((middle, k) => (middle + sign * halfUnits[k]!) * mmPerUnit);
    return [x!, y!, z!];
  };
  return { min: along(-1), max: along(1) };
}

/** Bounds of all that is drawn. */
export function boxWith(sculpt: BoxMm, shells: Shells | undefined): BoxMm {
  const min: [number, number, number] = [...sculpt.min];
  const max: [number, number, number] = [...sculpt.max];
  for (const { surface } of shells?.parts ?? [])
    for (let i = 0; i < surface.positions.length; i++) {
      const [k, c] = [i % 3, surface.positions[i]!];
      if (c < min[k]!) min[k] = c;
      if (c > max[k]!) max[k] = c;
    }
  return { min, max };
}

/** Half extents around the middle of the picture, in its units. */
export function halvesAround(box: BoxMm, { mmPerUnit, middleUnits }: MmSeat): [number, number, number] {
  const [x, y, z] = middleUnits.map((middle, k) =>
    Math.max(box.max[k]! / mmPerUnit - middle, middle - box.min[k]! / mmPerUnit),
  );
  return [x!, y!, z!];
}
