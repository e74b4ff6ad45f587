import { useMemo } from 'react';
import type { MmSeat } from '../../viewer/shown';
import type { Picture, Shells } from '../../worker/protocol';
import { boxWith, sculptBox } from './boxes';
import type { BoxMm } from './cutControls';

/** Bounds of the sculpt, and of it with the mold around it. */
export function useBoxes(
  picture: Picture | undefined,
  seat: MmSeat | undefined,
  shells: Shells | undefined,
): { sculpt: BoxMm | undefined; box: BoxMm | undefined } {
  const sculpt = useMemo(
    () => (picture === undefined || seat === undefined ? undefined : sculptBox(picture, seat)),
    [picture, seat],
  );
  const box = useMemo(() => (sculpt === undefined ? undefined : boxWith(sculpt, shells)), [sculpt, shells]);
  return { sculpt, box };
}
