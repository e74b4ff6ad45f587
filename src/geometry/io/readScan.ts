import type { Outcome } from '../../problem';
import { readScanWith, type ScanBytes } from './formats';
import { read3mf } from './read3mf';
import type { ScanFile } from './scanFile';

/** Reads a scan of any format: see `readScanWith`, which this is with the reader of 3MF at hand. */
export const readScan = (file: ScanBytes): Outcome<ScanFile> => readScanWith(read3mf, file);
