import type { FileUnit, Size } from '../plan';
import { formatLength, type Show } from '../units';
import { amount, percent } from './sentence';
import { UNIT_NAMES } from './unitNames';

/** Why the size is what it is, one line each: method, scale, and what the range is made of. */
export function sizeBecause(size: Size, show: Show = 'both'): string[] {
  return [methodLine(size), scaleLine(size), rangeLine(size, show)];
}

function methodLine({ method, closed, rims }: Size): string {
  if (method === 'field')
    return 'Shells overlap: the plain sum less what lies inside more than one of them, by winding number along lines.';
  if (closed)
    return rims.length === 0
      ? 'The surface is closed: its volume is exact by the divergence theorem, as far as the file goes.'
      : 'The surface is closed, flat at the cut: its volume follows from the divergence theorem.';
  return 'The open rims are closed by cones; the volume of the closed surface follows from the divergence theorem.';
}

function scaleLine({ scale }: Size): string {
  const unit = `one unit of the file is ${amount(scale.mmPerUnit, 5)} mm`;
  if (scale.from === 'given') return `You said so: ${unit}.`;
  const named = scale.fileUnit in UNIT_NAMES ? UNIT_NAMES[scale.fileUnit as FileUnit].one : undefined;
  return `By your tape ${unit}${named === undefined ? '' : `, ${named} within 1 %`}; a tape is off by up to ${percent(scale.doubtShare)} here.`;
}

function rangeLine({ doubts, extentsMm }: Size, show: Show): string {
  const parts = [
    ['closing the holes', doubts.caps],
    ['the tape', doubts.scale],
    ['the height of the cut', doubts.cut],
    ['specks left out', doubts.islands],
    ['overlaps', doubts.overlaps],
    ['rounding in the file', doubts.coordinates],
  ] as const;
  const told = parts
    .filter(([, half]) => half > 0)
    .map(([what, half]) => `${what} \u00b1 ${amount(half, 2)}`);
  const [wide, deep, tall] = extentsMm.map((mm) => formatLength(mm, show)) as [string, string, string];
  return `The piece is ${wide} wide, ${deep} deep, ${tall} tall. Range, cm\u00b3: ${told.length === 0 ? 'nothing in doubt' : told.join(', ')}.`;
}
