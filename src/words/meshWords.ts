import type { MeshCode } from '../problem';
import type { FileUnit } from '../plan';
import { disagreeWords, unreachedWords } from './scaleWords';
import { UNIT_NAMES } from './unitNames';
import { amount, counted, percent, unitsText, type Sentence, type Values } from './sentence';

const unitWords = (unit: string): string => (unit in UNIT_NAMES ? UNIT_NAMES[unit as FileUnit].one : unit);

const cm3 = (value: number | string | undefined): string => `${amount(value)} cm³`;

/** Sentences about the surface: why there is no volume, or what was found and done on the way to it. */
export const MESH_WORDS: Partial<Record<MeshCode, (v: Values) => Sentence>> = {
  NOT_CLOSED: notClosed,
  WELDED: (v) => ({
    text: `Neighbors do not share their corners: ${counted(v.cornersMoved, 'corner')} moved by ${amount(v.meanMoveMm, 2)} mm on average, those within ${amount(v.toleranceMm, 2)} mm of a common place merged. That could change the volume by ± ${cm3(v.effectCm3)}.`,
    hint: 'Nothing to do if the range is narrow enough. Else have the program that made the scan merge them.',
  }),
  ZERO_VOLUME: (v) => ({
    text: `The surface encloses nothing (${counted(v.pieces ?? 1, 'piece')}).`,
    hint: 'Check that the scan is of a solid piece and not of one flat side.',
  }),
  DEGENERATE_ONLY: (v) => ({
    text: `${counted(v.collapsed, 'triangle')}, all collapsed to a line or a point.`,
    hint: 'Export the scan again, without rounding its coordinates.',
  }),
  TOO_SMALL: (v) => ({
    text: `The piece is ${amount(v.longestMm)} mm long: nothing can be told of it.`,
    hint: 'Check the unit of the file.',
  }),
  NOT_ORIENTED: (v) =>
    v.part === 'turned'
      ? {
          text: `${counted(v.count, 'facet')} faced the wrong way and ${v.count === 1 ? 'was' : 'were'} turned.`,
          hint: 'Nothing to do: the area of each patch decided.',
        }
      : {
          text: `The surface has no inside: at ${counted(v.oneSidedEdges ?? v.count, 'edge')} it turns over on itself.`,
          hint: 'Have the scanner program remake the mesh there.',
        },
  DUPLICATE_FACES: (v) => ({
    text: `${counted(v.count, 'facet')} came more than once${Number(v.cancelled) > 0 ? `; ${amount(v.cancelled)} of them face to face, which bound nothing` : ''}.`,
    hint: 'Each counts once.',
  }),
  DEGENERATE_FACES: (v) => ({
    text: `${counted(v.count, 'facet')} collapsed to a line or a point and left out.`,
    hint: 'They hold no volume.',
  }),
  NON_MANIFOLD: (v) => ({
    text: `At ${counted(v.count, 'edge')} three or more facets meet.`,
    hint: 'Fins and inner walls bound nothing and add nothing; look there if the piece should be simple.',
  }),
  NON_PLANAR: (v) => ({
    text: `${counted(v.count, 'face')} with four or more corners ${v.count === 1 ? 'is' : 'are'} not flat.`,
    hint: 'They were cut into triangles; another cut would change the volume a little.',
  }),
  INSIDE_OUT: (v) => ({
    text: `${counted(v.count, 'piece')} faced inward and ${v.count === 1 ? 'was' : 'were'} turned over.`,
    hint: 'A piece inside no other must hold something. If it is the wall of a hollow, the volume is too large.',
  }),
  MULTI_SHELL: multiShell,
  NESTED_SHELL: nestedShell,
  THIN: (v) => ({
    text: `Walls of about ${amount(v.areaCm2, 2)} cm² are thinner than two voxels of ${amount(v.voxelMm, 2)} mm, the thinnest ${amount(v.thinnestMm, 2)} mm.`,
    hint: 'The volume holds them exactly. Offsets of a few voxels are not sure there, and their range says so; a smaller voxel shows them better.',
  }),
  SELF_INTERSECT: (v) =>
    v.part === 'layers'
      ? {
          text: 'The surface lies on itself in more layers than can be counted: it has no inside to measure offsets from.',
          hint: 'Have the scanner program remake the mesh as one closed surface.',
        }
      : v.part === 'check'
        ? {
            text: `Measured a second way, by the distance field, the piece holds ${cm3(v.fieldCm3)}: the two differ by ${cm3(Math.abs(Number(v.differenceCm3)))}, more than they should.`,
            hint: 'A fold or an inner wall may lie between the lines that look for them. Smaller voxels (--voxel) tell more.',
          }
        : {
            text: `Shells overlap or fold: ${cm3(v.doubledCm3)} counted twice${Number(v.negativeCm3) > 1e-9 ? `, ${cm3(v.negativeCm3)} counted below zero` : ''}.`,
            hint:
              v.effectCm3 === 0
                ? 'Too little to change the volume; the range covers it. The area counts the walls inside as well.'
                : 'What is inside two shells counts once. The plain sum would be wrong. The area counts the walls inside as well.',
          },
  PRECISION: (v) => ({
    text: `The coordinates are too coarse for the size: rounding could change the volume by ${percent(v.doubtShare)}.`,
    hint: 'Move the piece near zero before exporting it.',
  }),
  FAR_FROM_ORIGIN: (v) => ({
    text: `The piece lies ${amount(Number(v.distanceMm) / 1000)} m from the zero of the file.`,
    hint: 'Fine here; other programs may lose digits.',
  }),
  UNITS_SUSPECT: (v) =>
    v.part === 'disagree'
      ? disagreeWords(v)
      : v.part === 'unreached'
        ? unreachedWords(v)
        : {
            text: `The longest side is ${amount(v.longestMm)} mm: ${Number(v.longestMm) < 25 ? 'smaller' : 'larger'} than a sculpt usually is.`,
            hint: `Is one unit of the file really ${unitWords(String(v.unit))}? Tape one side and say it.`,
          },
};

function notClosed(v: Values): Sentence {
  if (v.part === 'offsets')
    return {
      text: 'Offsets are not measured: the facets do not join, so there is no surface to measure them from.',
      hint: 'Have the scanner program remake the mesh as one closed surface.',
    };
  if (v.part === 'holes') {
    return {
      text: `${counted(v.count, 'hole')} closed: ${amount(v.areaCm2)} cm² in all, the longest rim ${amount(v.largestLengthMm)} mm and flat to ${amount(v.flatnessMm, 2)} mm. Closing otherwise could change the volume by ± ${cm3(v.effectCm3)}.`,
      hint: 'Look at the hole: if the piece is flat there, as where it stood on the board, the volume is right.',
    };
  }
  if (v.part === 'seams')
    return {
      text: `${counted(v.count, 'seam')} with no width, where neighbors do not share their points.`,
      hint: 'They hold no volume.',
    };
  if (v.part === 'loose')
    return {
      text: `${counted(v.count, 'loose facet')} left out, touching nothing.`,
      hint: 'Scan noise; alone a facet encloses nothing.',
    };
  if (v.part === 'sheets')
    return {
      text: `${counted(v.count, 'loose sheet')} left out.`,
      hint: 'A sheet encloses nothing. If it is part of the piece, thicken it before the scan is exported.',
    };
  if (v.part === 'cracks')
    return {
      text: `The surface was open all over, in cracks between neighbors. Closing them could change the volume by ± ${cm3(v.effectCm3)} (${percent(v.doubtShare)}).`,
      hint: 'The range covers it.',
    };
  if (v.part === 'winding')
    return {
      text: `The facets do not join, and merging corners did not close them. They do wind about an inside: the volume is in doubt by ± ${cm3(v.effectCm3)} (${percent(v.doubtShare)}).`,
      hint: 'Good for a first look. Have the scanner program close the surface before you pour on it.',
    };
  if (v.doubtShare !== undefined) {
    return {
      text: `No volume yet: the scan is too open. Ways of closing it differ by ± ${cm3(v.doubtCm3)} on ${cm3(v.volumeCm3)} (${percent(v.doubtShare)}). ${longestLoop(v)}`,
      hint:
        v.floorUnits === undefined
          ? 'Scan the missing side, or cut the ragged part off with a plane.'
          : `If it stands on a table, cut that off: --cut "z=${unitsText(v.floorUnits)} units".`,
    };
  }
  if (v.openShare !== undefined)
    return {
      text: `No volume yet: the facets do not join (${percent(v.openShare)} of their edges are open) and wind about no inside. ${longestLoop(v)}`,
      hint: 'Have the program that made the scan merge the corners of neighbors, or make the surface anew.',
    };
  return {
    text: `No volume yet: the surface is open (${counted(v.openEdges, 'open edge')}) and encloses nothing. ${longestLoop(v)}`,
    hint: 'Scan the missing sides. If nothing is missing, neighbors do not share their corners: have the program that made it merge them.',
  };
}

function longestLoop(v: Values): string {
  const tried =
    v.triedMm === undefined
      ? ''
      : ` Merging corners up to ${amount(v.triedMm, 2)} mm apart did not close it.`;
  return `The longest open loop is ${amount(v.longestLoopMm)} mm, ${percent(v.longestLoopShare)} of the size.${tried}`;
}

function multiShell(v: Values): Sentence {
  if (v.part === 'islands') {
    return {
      text: `${counted(v.count, 'floating speck')} left out, ${cm3(Math.abs(Number(v.effectCm3)))} in all.`,
      hint: 'Scan noise. The range covers them.',
    };
  }
  return {
    text: `The scan holds ${counted(v.count, 'separate piece')}; all count.`,
    hint: 'If one of them is the table or a stand, cut it off.',
  };
}

function nestedShell(v: Values): Sentence {
  if (v.part === 'void') {
    return {
      text: `The scan is hollow: ${counted(v.count, 'inner surface')} take${v.count === 1 ? 's' : ''} off ${cm3(Math.abs(Number(v.effectCm3)))}.`,
      hint: `If it should be filled, the outer shell holds ${cm3(v.envelopeCm3)}.`,
    };
  }
  return {
    text: `${counted(v.count, 'piece')} inside a solid count${v.count === 1 ? 's' : ''} for nothing.`,
    hint: `If it should be a hollow, the volume is ${cm3(v.hollowCm3)}.`,
  };
}
