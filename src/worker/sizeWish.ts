import { boundsOf, placeMesh, type ScanFile } from '../geometry';
import { sizeScan, type SizeOptions } from '../plan';
import { good, type Outcome } from '../problem';
import type { Sized, SizeWish } from './protocol';
import { settleCut, type SettledCut } from './settleCut';

/** Sizes a scan as the page wishes it. Errors: those of `sizeScan` and `settleCut`. */
export function sizeWish(
  scan: ScanFile,
  wish: SizeWish,
  onProgress: (share: number) => void,
): Outcome<Sized> {
  const turned = placeMesh(scan.mesh, { up: wish.up ?? '+z', mmPerUnit: 1 });
  const { cut } = wish;
  const settled = cut === undefined ? undefined : settleCut(turned, { ...wish, cut });
  if (settled?.ok === false) return settled;
  const size = sizeScan(scan, { ...optionsOf(wish, settled?.value), onProgress });
  if (!size.ok) return size;
  const { mmPerUnit } = size.value.scale;
  const lowestMm = boundsOf(turned).min[2] * mmPerUnit;
  const at = settled?.value.plane;
  const top = size.value.floor?.topMm;
  return good({
    size: size.value,
    ...(at === undefined
      ? {}
      : { cut: { atUnits: at.atMm / mmPerUnit, heightMm: at.atMm - lowestMm, keep: at.keep } }),
    ...(top === undefined
      ? {}
      : { floor: { atUnits: top / mmPerUnit, topMm: top, heightMm: top - lowestMm } }),
  });
}

/** With a cut, the taped extent is known in file units: told as a distance, it is not sought a second time. */
function optionsOf({ up, taped, fileUnit }: SizeWish, settled: SettledCut | undefined): SizeOptions {
  const tapedUnits = settled?.tapedUnits;
  return {
    ...(up === undefined ? {} : { up }),
    ...(fileUnit === undefined ? {} : { fileUnit }),
    ...(settled === undefined ? {} : { cuts: [settled.plane] }),
    ...(taped === undefined
      ? {}
      : tapedUnits === undefined
        ? { taped: [taped] }
        : { span: { from: [0, 0, 0], to: [0, 0, tapedUnits], lengthMm: taped.lengthMm } }),
  };
}
