import { readScan, SCAN_BYTES_LIMIT, SCAN_FORMATS, tooManyBytes, type ScanFile } from '../geometry';
import { sizeScan, type Size, type SizeOptions } from '../plan';
import { bad, type Outcome } from '../problem';
import { textOf, type OptionValues } from './command';
import { fileTrouble } from './fileTrouble';
import type { Io } from './io';
import { scanOptions, type FieldWish } from './scanOptions';

/** Opens a scan by its path, or from stdin for "-". Errors: CANNOT_READ_FILE, BAD_CALL, those of `readScan`. */
export function openScan(path: string, options: OptionValues, io: Io): Outcome<ScanFile> {
  const format = textOf(options, 'format');
  if (path === '-' && format === undefined)
    return bad('BAD_CALL', {
      text: 'A scan from stdin needs its kind.',
      hint: `Add --format with one of: ${SCAN_FORMATS.map((f) => f.key).join(', ')}.`,
    });
  let bytes: Uint8Array;
  try {
    const size = path === '-' ? 0 : io.fileBytes(path);
    if (size > SCAN_BYTES_LIMIT) return tooManyBytes(size);
    bytes = path === '-' ? io.readStdin() : io.readFile(path);
  } catch (e) {
    return bad('CANNOT_READ_FILE', { file: path, why: fileTrouble(e) });
  }
  return readScan({ bytes, name: path, format });
}

interface Measuring {
  options: OptionValues;
  io: Io;
  /** What the field is to be like; undefined: no option of it holds. */
  field?: FieldWish | undefined;
  /** Whether a field is built at all: only then do helping threads pay. */
  needsField: boolean;
}

/** Reads one scan and measures it by `measure`, with helping threads and, on a terminal, a line of progress. Errors: those of `openScan` and of `measure`. */
export function measureScan<T>(
  path: string,
  { options, io, field, needsField }: Measuring,
  measure: (scan: ScanFile, how: SizeOptions) => Outcome<T>,
): Outcome<T> {
  const wanted = scanOptions(options);
  if (!wanted.ok) return wanted;
  // Helpers start while the file is read.
  const crew = needsField && field?.workers !== 1 ? io.startCrew?.(field?.workers) : undefined;
  const scan = openScan(path, options, io);
  if (!scan.ok) return scan;
  const draws = io.isTerminal && options.quiet !== true;
  const measured = measure(scan.value, {
    ...wanted.value,
    ...(field === undefined ? {} : settingsOf(field)),
    ...(crew === undefined ? {} : { crew }),
    ...(draws ? { onProgress: (share: number) => io.note(`\rmeasuring ${Math.round(100 * share)} %`) } : {}),
  });
  if (draws) io.note('\r\u001b[K');
  return measured;
}

/** Sizes one scan. `field` says what to measure beside its volume; a command without those options leaves it out. */
export const sizeOf = (path: string, options: OptionValues, io: Io, field?: FieldWish): Outcome<Size> =>
  measureScan(path, { options, io, field, needsField: (field?.offsetsMm.length ?? 0) > 0 }, sizeScan);

/** What the field options mean to the engine. */
export const settingsOf = ({ offsetsMm, accuracy, voxelMm }: FieldWish): SizeOptions => ({
  offsetsMm,
  ...(accuracy === undefined ? {} : { accuracy }),
  ...(voxelMm === undefined ? {} : { voxelMm }),
});
