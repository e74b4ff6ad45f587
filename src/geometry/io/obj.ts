import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { splitLine, vertexNumber } from './objText';
import { cutPolygon, outOfPlane, POLYGON_LIMIT } from './polygon';
import { COORDINATE_LIMIT, type ScanFile } from './scanFile';
import { float32Step } from './stlBinary';
import { afterByteOrderMark, excerpt, isWord, lineAt, numberIn, numberList, push } from './text';
import { weldPoints } from './weld';

/** Statements of curves and free-form surfaces: a shape we would lose, so the file is refused. */
const FREE_FORM = [
  'vp',
  'deg',
  'bmat',
  'step',
  'cstype',
  'curv',
  'curv2',
  'surf',
  'parm',
  'trim',
  'hole',
  'scrv',
  'sp',
  'end',
];

interface ObjState {
  bytes: Uint8Array;
  points: ReturnType<typeof numberList>;
  corners: number[];
  triangles: number[];
  /** Largest vertex number named so far, and the byte where: checked at the end, as a face may stand before it. */
  highest: { vertex: number; at: number };
  nonPlanar: { count: number; worst: number };
}

/**
 * Wavefront OBJ: vertices and polygons (`v`, `f` with v, v/vt, v//vn, v/vt/vn, negative numbers, line continuation).
 * Colors, texture and normal indices, groups, names and material files are passed over; no file named in it is opened.
 * Strict: a bad number, a missing vertex, a face of fewer than three is an error with its line.
 * Errors: SYNTAX, BAD_NUMBER, COORD_RANGE, BAD_INDEX, INDEX_OUT_OF_RANGE, BAD_POLYGON, UNSUPPORTED_FEATURE, NO_TRIANGLES.
 */
export function readObj(bytes: Uint8Array): Outcome<ScanFile> {
  const state: ObjState = {
    bytes,
    points: numberList(),
    corners: [],
    triangles: [],
    highest: { vertex: -1, at: 0 },
    nonPlanar: { count: 0, worst: 0 },
  };
  const fields: number[] = [];
  for (let at = afterByteOrderMark(bytes); at < bytes.length;) {
    at = splitLine(bytes, at, fields);
    const problem = readStatement(state, fields);
    if (problem !== undefined) return { ok: false, problem: withLine(bytes, problem) };
  }
  if (state.highest.vertex >= state.points.length / 3) {
    return bad(
      'INDEX_OUT_OF_RANGE',
      { index: state.highest.vertex + 1, vertices: state.points.length / 3 },
      { line: lineAt(bytes, state.highest.at), byte: state.highest.at },
    );
  }
  if (state.corners.length === 0) return bad('NO_TRIANGLES', { vertices: state.points.length / 3 });
  const cut = cutFaces(state);
  if (cut !== undefined) return { ok: false, problem: withLine(bytes, cut) };
  return good(scanFileOf(state));
}

function readStatement(s: ObjState, fields: number[]): Problem | undefined {
  if (fields.length === 0) return undefined;
  const [from, to] = [fields[0]!, fields[1]!];
  const length = to - from;
  if (length === 1 && s.bytes[from] === 118) return readVertex(s, fields);
  if (length === 1 && s.bytes[from] === 102) return readFace(s, fields);
  if (length > 1 && length < 7 && FREE_FORM.some((word) => isWord(s.bytes, from, to, word))) {
    return refuse('UNSUPPORTED_FEATURE', { text: excerpt(s.bytes, from, to) }, from);
  }
  return undefined;
}

/** x y z, then nothing, or w = 1, or a color of three or four numbers. */
function readVertex(s: ObjState, fields: number[]): Problem | undefined {
  const count = fields.length / 2 - 1;
  if (count !== 3 && count !== 4 && count !== 6 && count !== 7) {
    return refuse('SYNTAX', { expected: '3 numbers', text: `${count} numbers` }, fields[0]!);
  }
  for (let k = 0; k < count; k++) {
    const [from, to] = [fields[2 * k + 2]!, fields[2 * k + 3]!];
    const x = numberIn(s.bytes, from, to);
    if (!Number.isFinite(x)) return refuse('BAD_NUMBER', { text: excerpt(s.bytes, from, to) }, from);
    if (k === 3 && count === 4 && x !== 1)
      return refuse('UNSUPPORTED_FEATURE', { text: `weight ${x}` }, from);
    if (k < 3) push(s.points, x);
  }
  return undefined;
}

/** Appends `count, byte, v0, v1, ...` to `corners`; polygons are cut once every vertex is known. */
function readFace(s: ObjState, fields: number[]): Problem | undefined {
  const count = fields.length / 2 - 1;
  if (count < 3) return refuse('SYNTAX', { expected: '3 or more vertices', text: `${count}` }, fields[0]!);
  if (count > POLYGON_LIMIT)
    return refuse('BAD_POLYGON', { corners: count, limit: POLYGON_LIMIT }, fields[0]!);
  s.corners.push(count, fields[0]!);
  for (let k = 1; k <= count; k++) {
    const [from, to] = [fields[2 * k]!, fields[2 * k + 1]!];
    const vertex = vertexNumber(s.bytes, from, to, s.points.length / 3);
    if (Number.isNaN(vertex)) return refuse('BAD_INDEX', { text: excerpt(s.bytes, from, to) }, from);
    if (vertex < 0)
      return refuse(
        'INDEX_OUT_OF_RANGE',
        { text: excerpt(s.bytes, from, to), vertices: s.points.length / 3 },
        from,
      );
    if (vertex > s.highest.vertex) s.highest = { vertex, at: from };
    s.corners.push(vertex);
  }
  return undefined;
}

function cutFaces(s: ObjState): Problem | undefined {
  const points = s.points.data;
  for (let i = 0; i < s.corners.length;) {
    const count = s.corners[i]!;
    const ring = s.corners.slice(i + 2, i + 2 + count);
    const far = ring.find((v) => isFar(points, v));
    if (far !== undefined) {
      return refuse('COORD_RANGE', { text: `vertex ${far + 1}`, limit: COORDINATE_LIMIT }, s.corners[i + 1]!);
    }
    const triangles = cutPolygon(points, ring);
    if (triangles === undefined)
      return refuse('BAD_POLYGON', { corners: count, limit: POLYGON_LIMIT }, s.corners[i + 1]!);
    if (count > 3) noteFlatness(s, points, ring);
    for (const v of triangles) s.triangles.push(v);
    i += 2 + count;
  }
  return undefined;
}

/** Only vertices that faces use count: scanners leave strays behind. */
const isFar = (p: Float64Array, v: number): boolean =>
  Math.max(Math.abs(p[3 * v]!), Math.abs(p[3 * v + 1]!), Math.abs(p[3 * v + 2]!)) > COORDINATE_LIMIT;

/** A corner more than 1 % of the polygon's size off its plane makes the volume depend on where it is cut. */
function noteFlatness(s: ObjState, points: Float64Array, ring: number[]): void {
  const off = outOfPlane(points, ring);
  const [a, b] = [3 * ring[0]!, 3 * ring[2]!];
  const size = Math.hypot(
    points[a]! - points[b]!,
    points[a + 1]! - points[b + 1]!,
    points[a + 2]! - points[b + 2]!,
  );
  if (off <= 0.01 * size) return;
  s.nonPlanar.count++;
  s.nonPlanar.worst = Math.max(s.nonPlanar.worst, off);
}

function scanFileOf(s: ObjState): ScanFile {
  const { positions, index } = weldPoints(s.points.data.slice(0, s.points.length));
  const triangles = Int32Array.from(s.triangles, (v) => index[v]!);
  let largest = 0;
  for (const v of triangles)
    for (let k = 0; k < 3; k++) largest = Math.max(largest, Math.abs(positions[3 * v + k]!));
  const findings =
    s.nonPlanar.count === 0 ? [] : [finding('NON_PLANAR', 'look', { count: s.nonPlanar.count })];
  return {
    mesh: { positions, triangles },
    format: 'obj',
    trianglesRead: triangles.length / 3,
    coordinateStep: float32Step(largest),
    findings,
  };
}

const refuse = (code: Problem['code'], values: Problem['values'], byte: number): Problem => ({
  code,
  status: 'stop',
  values,
  at: { byte },
});

function withLine(bytes: Uint8Array, problem: Problem): Problem {
  const byte = problem.at?.byte ?? 0;
  return { ...problem, at: { line: lineAt(bytes, byte), byte } };
}
