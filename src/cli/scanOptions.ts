import { bad, good, type Outcome } from '../problem';
import { SCAN_FORMATS, UP_AXES, type UpAxis } from '../geometry';
import {
  ACCURACIES,
  FILE_UNITS,
  type Accuracy,
  type Cut,
  type Along,
  type FileUnit,
  type SizeOptions,
  type Span,
  type TapedExtent,
} from '../plan';
import { keyOf, listOf, nameOfFlags, textOf, type OptionSpec, type OptionValues } from './command';
import { quantityOption } from './quantity';

/** The options that say how a scan is to be taken; shared by every command that reads one. */
export const SCAN_OPTIONS: readonly OptionSpec[] = [
  { flags: '--file-unit <unit>', about: 'length of one unit in the file', choices: Object.keys(FILE_UNITS) },
  { flags: '--tall <length>', about: 'taped extent along up (bare number: mm); sets unit and scale' },
  { flags: '--wide <length>', about: 'taped extent along x' },
  { flags: '--deep <length>', about: 'taped extent along y' },
  { flags: '--span <points>', about: 'two points of the file, "x,y,z:x,y,z", in file units' },
  { flags: '--is <length>', about: 'how far apart the points of --span are' },
  { flags: '--up <axis>', about: 'axis of the file that is up as poured (assumed +z)', choices: UP_AXES },
  {
    flags: '--cut <plane>',
    about:
      'keep the side above a plane, "z=12mm" ("z<=12mm": below; "z=0.5 units": file units); on the file\'s own zero, turned up',
    repeat: true,
  },
  {
    flags: '--format <format>',
    about: 'kind of file, for stdin or an odd name',
    choices: SCAN_FORMATS.map((f) => f.key),
  },
];

/** The options of the distance field, for commands that measure offsets. */
export const FIELD_OPTIONS: readonly OptionSpec[] = [
  {
    flags: '--offset <length>',
    about: 'also the volume grown (or, negative, shrunk) by this distance all round (bare number: mm)',
    repeat: true,
  },
  {
    flags: '--accuracy <level>',
    about: 'how fine the grid is that offsets, walls and molds are measured on (assumed normal)',
    choices: ACCURACIES,
  },
  { flags: '--voxel <length>', about: 'fixes the edge of a voxel, a cell of that grid (bare number: mm)' },
  { flags: '--workers <count>', about: 'threads that fill that grid (all cores, up to four)' },
  { flags: '--surface <file>', about: 'also writes the surface of the one offset asked for (.stl, .3mf)' },
];

/** The first option that was given though there is no scan it could be about. */
export const scanOptionGiven = (options: OptionValues): string | undefined =>
  SCAN_OPTIONS.map(({ flags }) => nameOfFlags(flags)).find((name) => options[keyOf(name)] !== undefined);

/** Offsets of one call: more would be a slip, and each costs time. Chosen here, like the threads. */
const MOST_OFFSETS = 24;
const MOST_WORKERS = 64;

export interface FieldWish {
  offsetsMm: number[];
  accuracy?: Accuracy;
  voxelMm?: number;
  workers?: number;
}

export function fieldOptions(options: OptionValues): Outcome<FieldWish> {
  const offsetsMm: number[] = [];
  for (const text of listOf(options, 'offset')) {
    const [, sign, rest] = /^\s*([+\-\u2212]?)\s*(.*)$/.exec(text)!;
    const length = quantityOption('--offset', rest!, 'length', 'mm', true);
    if (!length.ok) return length;
    offsetsMm.push(sign === '' || sign === '+' ? length.value : -length.value);
  }
  if (offsetsMm.length > MOST_OFFSETS)
    return bad('BAD_CALL', {
      text: `${offsetsMm.length} offsets are more than the ${MOST_OFFSETS} of one call.`,
      hint: 'Ask for them in several calls.',
    });
  const voxel = textOf(options, 'voxel');
  const voxelMm = voxel === undefined ? undefined : quantityOption('--voxel', voxel, 'length', 'mm');
  if (voxelMm !== undefined && !voxelMm.ok) return voxelMm;
  const workers = textOf(options, 'workers');
  const count = workers === undefined ? undefined : Number(workers);
  if (count !== undefined && !(Number.isInteger(count) && count >= 1 && count <= MOST_WORKERS))
    return bad('BAD_CALL', {
      text: `--workers "${workers}" is not a number of threads.`,
      hint: `Give a whole number from 1 to ${MOST_WORKERS}; 1 works without helpers.`,
    });
  const accuracy = textOf(options, 'accuracy') as Accuracy | undefined;
  return good({
    offsetsMm,
    ...(accuracy === undefined ? {} : { accuracy }),
    ...(voxelMm === undefined ? {} : { voxelMm: voxelMm.value }),
    ...(count === undefined ? {} : { workers: count }),
  });
}

export function scanOptions(options: OptionValues): Outcome<SizeOptions> {
  const taped: TapedExtent[] = [];
  for (const along of ['tall', 'wide', 'deep'] as readonly Along[]) {
    const text = textOf(options, along);
    if (text === undefined) continue;
    const length = quantityOption(`--${along}`, text, 'length', 'mm');
    if (!length.ok) return length;
    taped.push({ along, lengthMm: length.value });
  }
  const span = spanOption(options);
  if (!span.ok) return span;
  const cuts = cutOptions(listOf(options, 'cut'));
  if (!cuts.ok) return cuts;
  const fileUnit = textOf(options, 'fileUnit') as FileUnit | undefined;
  const up = textOf(options, 'up') as UpAxis | undefined;
  return good({
    taped,
    cuts: cuts.value,
    ...(span.value === undefined ? {} : { span: span.value }),
    ...(fileUnit === undefined ? {} : { fileUnit }),
    ...(up === undefined ? {} : { up }),
  });
}

function spanOption(options: OptionValues): Outcome<Span | undefined> {
  const [span, is] = [textOf(options, 'span'), textOf(options, 'is')];
  if (span === undefined && is === undefined) return good(undefined);
  if (span === undefined || is === undefined) {
    return bad('BAD_CALL', {
      text: '--span and --is belong together.',
      hint: 'Give both: --span "0,0,0:0,0,11.4" --is "290 mm".',
    });
  }
  const points = span
    .split(':')
    .map((point) => point.split(',').map((x) => (x.trim() === '' ? NaN : Number(x))));
  if (points.length !== 2 || points.some((p) => p.length !== 3 || !p.every(Number.isFinite))) {
    return bad('BAD_CALL', {
      text: `--span "${span}" is not two points.`,
      hint: 'Write "x,y,z:x,y,z", in the units of the file.',
    });
  }
  const length = quantityOption('--is', is, 'length', 'mm');
  if (!length.ok) return length;
  const [from, to] = points as [number[], number[]];
  return good({ from: [from[0]!, from[1]!, from[2]!], to: [to[0]!, to[1]!, to[2]!], lengthMm: length.value });
}

/** "z=12mm" and "z>=12mm" keep the side above, "z<=12mm" the side below; "z=0.5 units" is in units of the file. */
function cutOptions(texts: readonly string[]): Outcome<Cut[]> {
  const cuts: Cut[] = [];
  for (const text of texts) {
    const match = /^\s*([xyz])\s*(<=|>=|=)\s*([+-]?)\s*(\S.*)$/.exec(text);
    if (match === null) {
      return bad('BAD_CALL', {
        text: `--cut "${text}" is not a plane.`,
        hint: 'Write an axis and a height: "z=12mm", or "z<=12mm" to keep the lower side.',
      });
    }
    const [, axis, sense, sign, place] = match;
    const side = {
      axis: 'xyz'.indexOf(axis!) as 0 | 1 | 2,
      keep: sense === '<=' ? 'below' : 'above',
    } as const;
    const inUnits = /^([\d.,].*?)\s*units?$/.exec(place!);
    const at =
      inUnits === null
        ? quantityOption('--cut', place!, 'length', 'mm', true)
        : quantityOption('--cut', inUnits[1]!, 'plain', undefined, true);
    if (!at.ok) return at;
    const value = sign === '-' ? -at.value : at.value;
    cuts.push(inUnits === null ? { ...side, atMm: value } : { ...side, atUnits: value });
  }
  return good(cuts);
}
