import { placedBounds, type ScanFile } from '../geometry';
import { openMoldBench, type Cut, type MoldBench, type Size, type SizeOptions } from '../plan';
import { good, type Outcome } from '../problem';
import type { CutWish, Sized, SizeWish } from './protocol';

/** Threads, progress and a way to stop. */
export type Help = Pick<SizeOptions, 'onProgress' | 'crew' | 'shouldStop'>;

/** A scan as one wish has it: its size, and the bench that its molds are measured on. */
export interface Measured {
  sized: Sized;
  bench: MoldBench;
}

/** Sizes a scan as the page wishes it. Errors: those of `sizeScan`. */
export function sizeWish(scan: ScanFile, wish: SizeWish, help: Help): Outcome<Measured> {
  const opened = openMoldBench(scan, { ...optionsOf(wish), ...help });
  if (!opened.ok) return opened;
  const { size, bench } = opened.value;
  return good({ sized: sizedOf(scan, size), bench });
}

function sizedOf(scan: ScanFile, size: Size): Sized {
  const { mmPerUnit } = size.scale;
  const { min, max } = placedBounds(scan.mesh, { up: size.up, mmPerUnit: 1 });
  const lowestMm = mmPerUnit * min[2];
  const plane = size.cuts[0];
  const top = size.floor?.topMm;
  return {
    size,
    whole: { lowestUnits: min[2], tallMm: mmPerUnit * (max[2] - min[2]) },
    ...(plane === undefined
      ? {}
      : { cut: { atUnits: plane.atMm / mmPerUnit, heightMm: plane.atMm - lowestMm, keep: plane.keep } }),
    ...(top === undefined
      ? {}
      : { floor: { atUnits: top / mmPerUnit, topMm: top, heightMm: top - lowestMm } }),
  };
}

function optionsOf({ cut, taped, second, ...wish }: SizeWish): SizeOptions {
  const extents = [taped, second].filter((one) => one !== undefined && 'along' in one);
  return {
    ...wish,
    ...(extents.length === 0 ? {} : { taped: extents }),
    ...(second === undefined || 'along' in second ? {} : { span: second }),
    ...(cut === undefined ? {} : { cuts: [cutOf(cut)] }),
  };
}

const cutOf = (cut: CutWish): Cut =>
  cut.by === 'floor'
    ? { axis: 2, keep: cut.keep, atUnits: cut.atUnits }
    : { axis: 2, keep: cut.keep, aboveLowestMm: cut.heightMm };
