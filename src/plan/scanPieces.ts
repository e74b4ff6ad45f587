import {
  centerOf,
  extentsOf,
  type PieceWish,
  type ScanFile,
  type Shell,
  type SolidMeasure,
  type TriangleMesh,
  type Vector,
} from '../geometry';
import type { Outcome } from '../problem';
import { MM3_PER_CM3 } from './sizeDoubts';

/** As `PieceWish`, each piece named by one of its corners: file units on the file's own axes, to the last digit. */
export interface ScanPieceWish extends Omit<PieceWish, 'leaveOut'> {
  leaveOut?: readonly Vector[];
}

/** A solid of the scan that stands by itself and can be left out, or was. */
export interface ScanShell {
  isLeftOut: boolean;
  /** By itself: where it overlaps another, less than this goes with it. */
  holdsCm3: number;
  /** Wide, deep, tall, and its middle, of the placed piece. */
  extentsMm: [number, number, number];
  middleMm: [number, number, number];
  /** What names it in a wish; undefined where nothing does. */
  corner?: Vector;
}

/** What each decision changed of the volume, mm3; undefined where the scan has no volume without it. */
export interface PieceEffects {
  specks?: number | undefined;
  filled?: number | undefined;
  hollowed?: number | undefined;
  /** By the vertex that names the piece. */
  leftOut: ReadonlyMap<number, number | undefined>;
}

/** The wish by vertices of the mesh; a corner that is not in the file becomes -1. */
export function piecesOnMesh(mesh: TriangleMesh, wish: ScanPieceWish): PieceWish {
  const { leaveOut, ...rest } = wish;
  return leaveOut === undefined ? rest : { ...rest, leaveOut: leaveOut.map((at) => vertexAt(mesh, at)) };
}

function vertexAt({ positions: p }: TriangleMesh, [x, y, z]: Vector): number {
  for (let i = 0; i < p.length; i += 3) if (p[i] === x && p[i + 1] === y && p[i + 2] === z) return i / 3;
  return -1;
}

type Measure = (wish: PieceWish, from: number, to: number) => Outcome<SolidMeasure>;

/**
 * Measures with one decision after the other, so that what each changes adds up to what all of them change; once where nothing is
 * decided. `solid` is as it is wished. A measure is told which part of the progress is its own.
 */
export function measureDecisions(
  wish: PieceWish,
  measure: Measure,
): { solid: Outcome<SolidMeasure>; effects: PieceEffects; withoutLeaveOut: Outcome<SolidMeasure> } {
  const { leaveOut = [], ...flags } = wish;
  const rounds = 1 + Object.values(flags).filter((is) => is).length + leaveOut.length;
  let round = 0;
  let told: PieceWish = {};
  const next = (): Outcome<SolidMeasure> => measure(told, round++ / rounds, round / rounds);
  let solid = next();
  const add = (more: PieceWish): number | undefined => {
    const before = solid;
    told = { ...told, ...more };
    solid = next();
    return before.ok && solid.ok ? solid.value.volumeMm3 - before.value.volumeMm3 : undefined;
  };
  const changed: Omit<PieceEffects, 'leftOut'> = {
    ...(flags.countSpecks === true ? { specks: add({ countSpecks: true }) } : {}),
    ...(flags.fillHollows === true ? { filled: add({ fillHollows: true }) } : {}),
    ...(flags.hollowInner === true ? { hollowed: add({ hollowInner: true }) } : {}),
  };
  const withoutLeaveOut = solid;
  const leftOut = new Map(leaveOut.map((vertex, n) => [vertex, add({ leaveOut: leaveOut.slice(0, n + 1) })]));
  return { solid, effects: { ...changed, leftOut }, withoutLeaveOut };
}

export const shellsInFile = ({ shells }: SolidMeasure, { mesh }: ScanFile): ScanShell[] =>
  shells.map((shell) => {
    const corner = cornerInFile(shell, mesh);
    return {
      isLeftOut: shell.isLeftOut,
      holdsCm3: shell.heldMm3 / MM3_PER_CM3,
      extentsMm: extentsOf(shell.bounds),
      middleMm: centerOf(shell.bounds),
      ...(corner === undefined ? {} : { corner }),
    };
  });

/** Placing and cutting keep the numbers of the file's vertices; those made by a cut come after them. */
export function cornerInFile({ corner }: Shell, { positions: p }: TriangleMesh): Vector | undefined {
  if (corner === undefined || corner < 0 || 3 * corner >= p.length) return undefined;
  return [p[3 * corner]!, p[3 * corner + 1]!, p[3 * corner + 2]!];
}
