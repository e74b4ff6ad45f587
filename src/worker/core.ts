import type { ScanFile } from '../geometry';
import { scannedCore, type Core } from '../plan';
import type { Outcome } from '../problem';
import type { Help, Measured } from './sizeWish';

/** A core from its own file, on the axes of the scan on the desk. Errors: those of the reader and of `scannedCore`. */
export function coreWish(
  { bench }: Pick<Measured, 'bench'>,
  scan: Outcome<ScanFile>,
  help: Help,
): Outcome<Core> {
  if (!scan.ok) return scan;
  const { crew, shouldStop } = help;
  return scannedCore(
    bench.settled,
    {
      accuracy: bench.accuracy,
      ...(crew === undefined ? {} : { crew }),
      ...(shouldStop === undefined ? {} : { shouldStop }),
    },
    scan.value,
  );
}
