import {
  hollowCavity,
  sizeScan,
  type HollowCavity,
  type HollowWish,
  type Size,
  type SizeOptions,
} from '../plan';
import { bad, good, type Outcome } from '../problem';
import { flagOf } from './batchOptions';
import { textOf, type OptionValues } from './command';
import type { Io } from './io';
import { measureScan, openScan } from './measureScan';
import { defined } from './moldFigures';
import { fieldOptions } from './scanOptions';

interface PourScan {
  /** Its path. */
  scan: string;
  options: OptionValues;
  io: Io;
  armatureCm3: number | undefined;
  coreOffsetMm: number | undefined;
}

/** The scan that is poured for: its size, and what stands in its cavity. Errors: BAD_CALL, those of the scan and of its core. */
export function measuredForPour({
  scan: path,
  options,
  io,
  armatureCm3,
  coreOffsetMm,
}: PourScan): Outcome<{ size: Size; hollow?: HollowCavity }> {
  const field = fieldOptions(options);
  if (!field.ok) return field;
  const corePath = textOf(options, 'core');
  if (corePath === '-')
    return bad('BAD_CALL', {
      text: 'A core cannot come from stdin.',
      hint: 'Name its file; the outer scan may come from stdin.',
    });
  const needsField = corePath !== undefined || coreOffsetMm !== undefined;
  const stray = ['accuracy', 'voxel', 'workers'].find((option) => options[option] !== undefined);
  if (!needsField && stray !== undefined)
    return bad('BAD_CALL', {
      text: `${flagOf(stray)} is about the field around a core, and there is none.`,
      hint: `Leave ${flagOf(stray)} out, or give --core SCAN or --core-offset "20 mm".`,
    });
  const around = needsField ? { ...field.value, offsetsMm: [] } : undefined;
  return measureScan(path, { options, io, field: around, needsField }, (scan, how) => {
    const wish = { ...how, ...shadowOf(options) };
    if (!needsField && armatureCm3 === undefined) return sizedOf(sizeScan(scan, wish));
    const core =
      corePath === undefined ? undefined : openScan(corePath, { ...options, format: undefined }, io);
    if (core?.ok === false) return core;
    return hollowOf(hollowCavity(scan, wish, hollowWish({ core: core?.value, coreOffsetMm, armatureCm3 })));
  });
}

function shadowOf(options: OptionValues): Pick<SizeOptions, 'shadowAlong'> {
  const opens = textOf(options, 'opens');
  return opens === undefined ? {} : { shadowAlong: opens.slice(1) as 'x' | 'y' | 'z' };
}

const hollowWish = (wish: { [K in keyof HollowWish]: HollowWish[K] | undefined }): HollowWish =>
  defined(wish);

const hollowOf = (hollow: Outcome<HollowCavity>): Outcome<{ size: Size; hollow?: HollowCavity }> =>
  hollow.ok ? good({ size: hollow.value.size, hollow: hollow.value }) : hollow;

const sizedOf = (size: Outcome<Size>): Outcome<{ size: Size; hollow?: HollowCavity }> =>
  size.ok ? good({ size: size.value }) : size;
