import { bad, good, type Outcome, type Problem } from '../../problem';
import { splitLine, vertexNumber } from './objText';
import { POLYGON_LIMIT } from './polygon';
import { cutFaces, type PolygonMesh } from './polygonMesh';
import { tooManyTriangles, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { float32Step } from './stlBinary';
import {
  afterByteOrderMark,
  excerpt,
  intList,
  isWord,
  lineAt,
  numberIn,
  numberList,
  push,
  pushInt,
} from './text';

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

interface ObjState extends PolygonMesh {
  bytes: Uint8Array;
  /** Largest vertex number named so far, and the byte where: checked at the end, as a face may stand before it. */
  highest: { vertex: number; at: number };
}

/**
 * Wavefront OBJ: vertices and polygons (`v`, `f` with v, v/vt, v//vn, v/vt/vn, negative numbers, line continuation).
 * Colors, texture and normal indices, groups, names and material files are passed over; no file named in it is opened.
 * Strict: a bad number, a missing vertex, a face of fewer than three is an error with its line.
 * Errors: SYNTAX, BAD_NUMBER, COORD_RANGE, BAD_INDEX, INDEX_OUT_OF_RANGE, BAD_POLYGON, UNSUPPORTED_FEATURE, NO_TRIANGLES, TOO_LARGE.
 */
export function readObj(bytes: Uint8Array): Outcome<ScanFile> {
  const state: ObjState = {
    bytes,
    points: numberList(),
    corners: intList(),
    faces: 0,
    firstVertex: 1,
    highest: { vertex: -1, at: 0 },
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
  if (!cut.ok) return { ok: false, problem: withLine(bytes, cut.problem) };
  const { mesh, largest, findings } = cut.value;
  return good({
    mesh,
    format: 'obj',
    trianglesRead: mesh.triangles.length / 3,
    coordinateStep: float32Step(largest),
    findings,
  });
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
  if (++s.faces > TRIANGLE_LIMIT) return tooManyTriangles(s.faces, { byte: fields[0]! }).problem;
  pushInt(s.corners, count);
  pushInt(s.corners, fields[0]!);
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
    pushInt(s.corners, vertex);
  }
  return undefined;
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
