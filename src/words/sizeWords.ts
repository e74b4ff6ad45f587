import type { FileUnit, Size } from '../plan';
import { formatLength, type Show } from '../units';
import { offsetBecause } from './offsetWords';
import { say } from './say';
import { amount, counted, percent } from './sentence';
import { UNIT_NAMES } from './unitNames';

/** Why the size is what it is, one line each: method, what is left out, scale, what the range is made of, area. */
export function sizeBecause(size: Size, show: Show = 'both'): string[] {
  return [
    methodLine(size),
    ...leftOutLine(size),
    scaleLine(size),
    rangeLine(size, show),
    ...areaLine(size),
    ...(size.offsets === undefined ? [] : offsetBecause(size.offsets, show)),
  ];
}

function methodLine({ method, closed, rims, findings }: Size): string {
  if (findings.some((f) => f.code === 'NOT_CLOSED' && f.values.part === 'winding'))
    return 'The facets do not join: the volume is the flux through them about their middle, checked by how they wind about places in and around the piece.';
  if (method === 'field')
    return 'Shells overlap: the plain sum less what lies inside more than one of them, by winding number along lines.';
  if (closed)
    return rims.length === 0
      ? 'The surface is closed: its volume is exact by the divergence theorem, as far as the file goes.'
      : 'The surface is closed, flat at the cut: its volume follows from the divergence theorem.';
  return 'The open rims are closed by cones; the volume of the closed surface follows from the divergence theorem.';
}

function leftOutLine({ findings }: Size): string[] {
  return [...sheetLine(findings), ...decidedLine(findings)];
}

/** What was decided against the rule. */
function decidedLine(findings: Size['findings']): string[] {
  const out = findings.filter(({ code }) => code === 'PIECE_LEFT_OUT').length;
  return [
    ...(out === 0
      ? []
      : [`${counted(out, 'separate piece')} ${out === 1 ? 'is' : 'are'} left out, as you said.`]),
    ...findings.filter(({ code }) => code === 'PIECES_TAKEN').map((taken) => say(taken).text),
  ];
}

function sheetLine(findings: Size['findings']): string[] {
  const sheets = findings.find(({ code, values }) => code === 'NOT_CLOSED' && values.part === 'sheets');
  if (sheets === undefined) return [];
  const { count } = sheets.values;
  return [
    `${counted(count, 'loose sheet')} ${count === 1 ? 'is' : 'are'} left out: the volume holds nothing of ${count === 1 ? 'it' : 'them'}.`,
  ];
}

/** Where shells overlap or fold, facets of one lie inside another. */
function areaLine({ findings }: Size): string[] {
  return findings.some(({ code }) => code === 'SELF_INTERSECT')
    ? ['The area counts the walls inside as well.']
    : [];
}

function scaleLine({ scale }: Size): string {
  const unit = `one unit of the file is ${amount(scale.mmPerUnit, 5)} mm`;
  if (scale.from === 'given') return `You said so: ${unit}.`;
  if (scale.from === 'file') return `The file states it: ${unit}.`;
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
    ['merging corners', doubts.weld],
  ] as const;
  const told = parts
    .filter(([, half]) => half > 0)
    .map(([what, half]) => `${what} \u00b1 ${amount(half, 2)}`);
  const [wide, deep, tall] = extentsMm.map((mm) => formatLength(mm, show)) as [string, string, string];
  return `The piece is ${wide} wide, ${deep} deep, ${tall} tall. Range, cm\u00b3: ${told.length === 0 ? 'nothing in doubt' : told.join(', ')}.`;
}
