import { resolve } from 'node:path';
import { MESH_WRITERS, writerFor } from '../geometry/solids';
import { offsetSurface } from '../plan/offsetSurface';
import { bad, good, type Outcome } from '../problem';
import { textOf, type OptionValues } from './command';
import type { Io } from './io';
import { coarserWords } from '../words/surfaceWords';
import { orCannotWrite } from './report';
import { openScan, settingsOf } from './measureScan';
import { scanOptions, type FieldWish } from './scanOptions';

/** Is a surface wanted, and is the call one that can have it: one scan, one offset? */
export function wantsSurface(
  options: OptionValues,
  { offsetsMm }: FieldWish,
  operands: readonly string[],
): Outcome<boolean> {
  const target = textOf(options, 'surface');
  if (target === undefined) return good(false);
  if (!writerFor(target).ok)
    return bad('BAD_CALL', {
      text: `--surface "${target}" names no kind of mesh file that is written.`,
      hint: `Give it one of these endings: ${MESH_WRITERS.flatMap((w) => w.extensions).join(', ')}.`,
    });
  if (operands.some((file) => resolve(file) === resolve(target)))
    return bad('BAD_CALL', {
      text: `--surface "${target}" is the scan itself.`,
      hint: 'Give the surface another name.',
    });
  if (offsetsMm.length === 1 && operands.length === 1 && operands[0] !== '-') return good(true);
  return bad('BAD_CALL', {
    text: '--surface writes the surface of one offset of one scan file.',
    hint: 'Give one scan by its name and one --offset (0mm is the body itself).',
  });
}

/** Writes the surface of the offset asked for. Errors: those of `offsetSurface`. Throws CannotWrite. */
export async function writeSurface(
  file: string,
  options: OptionValues,
  { io, field }: { io: Io; field: FieldWish },
): Promise<Outcome<true>> {
  const target = textOf(options, 'surface')!;
  const wanted = scanOptions(options);
  if (!wanted.ok) return wanted;
  const scan = openScan(file, options, io);
  if (!scan.ok) return scan;
  const offsetMm = field.offsetsMm[0]!;
  const bytes = await offsetSurface(scan.value, {
    ...wanted.value,
    ...settingsOf(field),
    offsetMm,
    fileName: target,
    onCoarser: (edgeMm) => io.note(coarserWords(target, edgeMm)),
  });
  if (!bytes.ok) return bytes;
  orCannotWrite(target, '--surface', () => io.writeFile(target, bytes.value));
  return good(true);
}
