import { useEffect, useState } from 'react';
import type { CutPlane } from '../../worker/protocol';
import { middlePlane, type BoxMm } from './cutControls';

/** A slider says many planes; one that stands this long is asked for. Chosen here. */
const STILL_MS = 120;

export interface Cutting {
  plane: CutPlane | undefined;
  setPlane: (plane: CutPlane | undefined) => void;
}

/**
 * Where the picture is cut open: the mold from the start through its middle, since a closed jacket shows nothing, the sculpt alone only where it was asked
 * for. Told when it stands still.
 */
export function useCutting(
  isMold: boolean,
  sculpt: BoxMm | undefined,
  onCut: (plane: CutPlane | undefined) => void,
): Cutting {
  const [mold, setMold] = useState<CutPlane | 'none' | undefined>(undefined);
  const [alone, setAlone] = useState<CutPlane | undefined>(undefined);
  const [middle, setMiddle] = useState<CutPlane | undefined>(undefined);
  const now = sculpt === undefined ? undefined : middlePlane('y', sculpt);
  // One object as long as it lies where it lay.
  if (now?.atMm !== middle?.atMm) setMiddle(now);
  const plane = !isMold ? alone : mold === 'none' ? undefined : (mold ?? middle);
  useEffect(() => {
    const timer = setTimeout(() => onCut(plane), STILL_MS);
    return () => clearTimeout(timer);
  }, [plane, onCut]);
  return {
    plane,
    setPlane: (to) => (isMold ? setMold(to ?? 'none') : setAlone(to)),
  };
}
