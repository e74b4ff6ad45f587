import type { Vector } from '../../geometry';
import type { Along } from '../../plan';
import type { Fields } from './fields';

/** A second distance: another side, or between two points of the surface. */
export type SecondBy = Along | 'points';

/** What was said on Measure beside what has a place of its own. */
export interface Measuring {
  /** Undefined while nobody wants a second distance. */
  secondBy: SecondBy | undefined;
  /** Picked so far, at most two: file units on the file's own axes. */
  points: readonly Vector[];
  /** The second distance sets the scale, and the first checks it. */
  isSecondScale: boolean;
  /** Decided against the rule, see `ScanPieceWish`. */
  pieces: Pieces;
}

interface Pieces {
  leaveOut: readonly Vector[];
  countSpecks: boolean;
  fillHollows: boolean;
  hollowInner: boolean;
}

export type PieceRule = Exclude<keyof Pieces, 'leaveOut'>;

export const newMeasuring = (): Measuring => ({
  secondBy: undefined,
  points: [],
  isSecondScale: false,
  pieces: { leaveOut: [], countSpecks: false, fillHollows: false, hollowInner: false },
});

/** What the user says on Measure, beside what is typed. */
export type MeasuringWord =
  | { do: 'second'; by: SecondBy | undefined }
  | { do: 'pickPoint'; at: Vector }
  | { do: 'clearPoints' }
  | { do: 'scaleFrom'; which: 'first' | 'second' }
  | { do: 'leaveOut'; corner: Vector }
  | { do: 'putBack'; corner: Vector }
  /** Of those left out, only these. */
  | { do: 'leaveOutOnly'; corners: readonly Vector[] }
  | { do: 'pieceRule'; rule: PieceRule; isOff: boolean };

interface Said {
  measuring: Measuring;
  fields: Fields;
}

export function withMeasuringWord({ measuring, fields }: Said, word: MeasuringWord): Said {
  const { pieces, points } = measuring;
  switch (word.do) {
    case 'second':
      return anotherDistance({ measuring: { ...measuring, secondBy: word.by }, fields });
    case 'pickPoint':
      return points.length < 2
        ? { measuring: { ...measuring, secondBy: 'points', points: [...points, word.at] }, fields }
        : anotherDistance({ measuring: { ...measuring, secondBy: 'points', points: [word.at] }, fields });
    case 'clearPoints':
      return anotherDistance({ measuring: { ...measuring, points: [] }, fields });
    case 'scaleFrom':
      return { measuring: { ...measuring, isSecondScale: word.which === 'second' }, fields };
    case 'leaveOut':
      return withPieces({ measuring, fields }, { leaveOut: [...pieces.leaveOut, word.corner] });
    case 'putBack':
      return withPieces(
        { measuring, fields },
        { leaveOut: pieces.leaveOut.filter((corner) => !isAt(corner, word.corner)) },
      );
    case 'leaveOutOnly':
      return withPieces({ measuring, fields }, { leaveOut: word.corners });
    case 'pieceRule':
      return withPieces({ measuring, fields }, { [word.rule]: word.isOff });
  }
}

/** What was typed was the length of something else: kept in silence, it would be held against the wrong distance. */
const anotherDistance = ({ measuring, fields }: Said): Said => ({
  measuring: { ...measuring, isSecondScale: false },
  fields: { ...fields, checkLength: { text: '', unit: fields.checkLength.unit } },
});

const withPieces = ({ measuring, fields }: Said, pieces: Partial<Pieces>): Said => ({
  measuring: { ...measuring, pieces: { ...measuring.pieces, ...pieces } },
  fields,
});

/** The side that was taped first can not be taped once more as its own check. */
export const withFirstSide = (measuring: Measuring, along: Along): Measuring =>
  measuring.secondBy === along ? { ...measuring, secondBy: undefined, isSecondScale: false } : measuring;

const isAt = (one: Vector, other: Vector): boolean => one.every((x, k) => x === other[k]);
