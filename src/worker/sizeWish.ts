import { placedBounds, type ScanFile } from '../geometry';
import { sizeScan, type Cut, type SizeOptions } from '../plan';
import { good, type Outcome } from '../problem';
import type { CutWish, Sized, SizeWish } from './protocol';

/** Sizes a scan as the page wishes it. Errors: those of `sizeScan`. */
export function sizeWish(
  scan: ScanFile,
  wish: SizeWish,
  help: Pick<SizeOptions, 'onProgress' | 'crew'>,
): Outcome<Sized> {
  const size = sizeScan(scan, { ...optionsOf(wish), ...help });
  if (!size.ok) return size;
  const { mmPerUnit } = size.value.scale;
  const lowestMm = mmPerUnit * placedBounds(scan.mesh, { up: size.value.up, mmPerUnit: 1 }).min[2];
  const plane = size.value.cuts[0];
  const top = size.value.floor?.topMm;
  return good({
    size: size.value,
    ...(plane === undefined
      ? {}
      : { cut: { atUnits: plane.atMm / mmPerUnit, heightMm: plane.atMm - lowestMm, keep: plane.keep } }),
    ...(top === undefined
      ? {}
      : { floor: { atUnits: top / mmPerUnit, topMm: top, heightMm: top - lowestMm } }),
  });
}

function optionsOf({ up, taped, fileUnit, cut, offsetsMm, accuracy }: SizeWish): SizeOptions {
  return {
    ...(up === undefined ? {} : { up }),
    ...(fileUnit === undefined ? {} : { fileUnit }),
    ...(taped === undefined ? {} : { taped: [taped] }),
    ...(offsetsMm === undefined ? {} : { offsetsMm }),
    ...(accuracy === undefined ? {} : { accuracy }),
    ...(cut === undefined ? {} : { cuts: [cutOf(cut)] }),
  };
}

const cutOf = (cut: CutWish): Cut =>
  cut.by === 'floor'
    ? { axis: 2, keep: cut.keep, atUnits: cut.atUnits }
    : { axis: 2, keep: cut.keep, aboveLowestMm: cut.heightMm };
