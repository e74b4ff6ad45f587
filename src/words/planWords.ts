import { FILE_UNITS, type FileUnit } from '../plan';
import type { CallCode, PlanCode } from '../problem';
import { PIECE_WORDS } from './pieceWords';
import { measureWords } from './scaleWords';
import { amount, unitsText, type Sentence, type Values } from './sentence';
import { UNIT_NAMES } from './unitNames';

/** The units a scan is told in, from the smallest. */
const TOLD: readonly FileUnit[] = ['mm', 'cm', 'in', 'ft', 'm'];

export const PLAN_WORDS: Record<PlanCode | CallCode, (v: Values) => Sentence> = {
  SCALE_UNKNOWN: (v) => ({
    text: `The file names no unit. As it stands it is ${amount(v.tallUnits)} units tall, ${amount(v.wideUnits)} wide and ${amount(v.deepUnits)} deep: ${TOLD.map((unit) => underUnit(unit, v)).join('; ')}.`,
    hint: 'Say the unit (--file-unit), or tape one side of the piece (--tall "290 mm").',
  }),
  SCALE_UNREACHED: (v) => ({
    text: `No scale fits the ${measureWords(v.by)} that was given.`,
    hint: 'Check that measure, and that the cut leaves something of the piece.',
  }),
  CUT_AWAY: cutAway,
  CUT_EMPTY: () => ({
    text: 'The cut leaves nothing of the scan.',
    hint: 'Move the plane, or keep its other side.',
  }),
  FLOOR_FOUND: (v) => ({
    text: `A level floor of ${amount(v.areaCm2)} cm² lies under the piece, its top at z = ${amount(v.topMm)} mm${Number(v.tiltDegrees) > 0.3 ? `, tilted by ${amount(v.tiltDegrees, 2)}°; a level cut above it takes a wedge of the piece along` : ''}.`,
    hint: `If it is the table, cut it off: --cut "z=${unitsText(v.topUnits)} units".`,
  }),
  ...PIECE_WORDS,
  STOPPED: () => ({ text: 'Stopped before it was done.', hint: 'Nothing was changed; ask again.' }),
  VOXEL_TOO_SMALL: (v) => ({
    text: `Voxels of ${amount(v.voxelMm, 2)} mm would be ${amount(Number(v.voxels) / 1e6, 2)} million for this piece and its offsets: more than the memory is planned for.`,
    hint: `Take voxels of ${amount(v.smallestMm, 2)} mm or more; distances are exact in any case.`,
  }),
  VOXEL_TOO_LARGE: (v) => ({
    text: `Voxels of ${amount(v.voxelMm, 2)} mm are too coarse for this piece: its range would not be right.`,
    hint: `Take voxels of ${amount(v.largestMm, 2)} mm or less.`,
  }),
  CORE_OUTSIDE: (v) => ({
    text: `The core sticks out of the outer surface by ${amount(v.outsideMm, 2)} mm.`,
    hint: 'Check that both scans have the same zero, up and unit; move or shrink the core.',
  }),
  CORE_WALL: (v) => ({
    text: `The thinnest wall between core and outer surface is ${amount(v.thinnestMm, 3)} mm.`,
    hint:
      Number(v.thinnestMm) < Number(v.stopMm)
        ? `Foam under ${amount(v.stopMm)} mm tears on the way out (common practice, no source): make the core smaller or move it.`
        : Number(v.thinnestMm) < Number(v.lookMm)
          ? `Under ${amount(v.lookMm)} mm it is weak: free it before the pull.`
          : 'Thick enough.',
  }),
  BAD_CALL: (v) => ({ text: String(v.text), hint: String(v.hint ?? 'See --help.') }),
  CANNOT_READ_FILE: (v) => ({
    text: `The file cannot be opened: ${v.why} (${v.file}).`,
    hint: 'Check the name and the folder.',
  }),
  CANNOT_WRITE_FILE: (v) => ({
    text: `${v.file} cannot be written: ${v.why}.`,
    hint: `Check the folder, its rights and the room on the disk, or run it again with another ${v.instead ?? 'place'}.`,
  }),
  SHOP_FILE: (v) => ({
    text: `The shop file ${v.file} cannot be used: ${v.why}.`,
    hint: 'Write a fresh one with: risewright sample DIR.',
  }),
  CARD_UNKNOWN: (v) => ({ text: `There is no card called "${v.name}".`, hint: `The shop has: ${v.known}.` }),
};

function cutAway(v: Values): Sentence {
  const keptCm3 = Number(v.keptCm3);
  if (v.effectCm3 === undefined) {
    return {
      text: `Cut: ${amount(keptCm3)} cm³ are left. What was cut off could not be measured.`,
      hint: 'The cut is closed flat.',
    };
  }
  const takenCm3 = -Number(v.effectCm3);
  if (Math.abs(takenCm3) < 1e-6 * keptCm3)
    return {
      text: 'The plane misses the piece: nothing is cut off.',
      hint: 'Check its height and its zero.',
    };
  const text = `Cut: ${amount(takenCm3)} cm³ went, ${amount(keptCm3)} cm³ are left.`;
  return {
    text,
    hint:
      takenCm3 > keptCm3 ? 'That is more than is left: is it the side you meant?' : 'The cut is closed flat.',
  };
}

function underUnit(unit: FileUnit, v: Values): string {
  const tallMm = Number(v.tallUnits) * FILE_UNITS[unit];
  return `in ${UNIT_NAMES[unit].many} ${tallMm >= 10000 ? `${amount(tallMm / 1000, 3)} m` : `${amount(tallMm, 3)} mm`} (${amount(tallMm / 25.4, 3)} in) tall`;
}
