import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { hasOddSlashes, splitLine, vertexNumber } from './objText';
import { POLYGON_LIMIT } from './polygon';
import { cutFaces, type PolygonMesh } from './polygonMesh';
import { tooManyTriangles, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { goodIfWhole, noteSlip, type Slips } from './slips';
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

/**
 * Statements of curves and free-form surfaces, those of before among them, and of a file to read here: a shape we would lose (Wavefront, "Object
 * Files", appendix B1, from memory).
 */
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
  'call',
  'bsp',
  'bzp',
  'cdc',
  'cdp',
  'res',
];

/** Statements that add nothing to the surface (Wavefront, "Object Files", appendix B1, from memory). Any other is said. */
const HARMLESS =
  'vt vn g s o mg usemtl mtllib usemap maplib lod bevel c_interp d_interp shadow_obj trace_obj p l'.split(
    ' ',
  );

interface ObjState extends PolygonMesh {
  bytes: Uint8Array;
  /** Largest vertex number named so far, and the byte where: checked at the end, as a face may stand before it. */
  highest: { vertex: number; at: number };
  /** Statements that are none of an OBJ: how many, and the first of them. */
  unknown: { count: number; text: string };
  slips: Slips;
  /** Why the numbers of a vertex cannot be read, by its number: an error where a face names it. */
  unread: Map<number, Problem>;
}

/** More vertices without numbers than these are no strays any more. Chosen here. */
const UNREAD_LIMIT = 1000;

/**
 * Wavefront OBJ: vertices and polygons (`v`, `f` with v, v/vt, v//vn, v/vt/vn, negative numbers, line continuation).
 * Colors, texture and normal indices, groups, names and material files are passed over; no file named in it is opened.
 * Strict in what makes the shape: a bad number, a missing vertex is an error with its line. A face of fewer than three, a bad number that no face
 * names, a curved shape or a slash too many is read past where the faces prove that all of them are there, and said; else it is an error, too.
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
    unknown: { count: 0, text: '' },
    slips: new Map(),
    unread: new Map(),
  };
  const scan = readStatements(state);
  if (scan.ok) return goodIfWhole(scan.value, state.slips);
  // What comes first in the file is its error.
  const [first] = state.slips.values();
  return first === undefined ? scan : bad(first.code, first.values, first.at);
}

function readStatements(state: ObjState): Outcome<ScanFile> {
  const { bytes } = state;
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
  const unread = state.corners.length === 0 ? undefined : unreadCorner(state);
  if (unread !== undefined) return { ok: false, problem: withLine(bytes, unread) };
  for (const { code, values, at } of state.unread.values()) slipAt(state, code, values, at!.byte!);
  if (state.corners.length === 0) return bad('NO_TRIANGLES', { vertices: state.points.length / 3 });
  const cut = cutFaces(state);
  if (!cut.ok) return { ok: false, problem: withLine(bytes, cut.problem) };
  const { mesh, largest, findings } = cut.value;
  return good({
    mesh,
    format: 'obj',
    trianglesRead: mesh.triangles.length / 3,
    coordinateStep: float32Step(largest),
    findings: [...findings, ...unknownFinding(state)],
  });
}

function unknownFinding({ unknown: { count, text } }: ObjState): Problem[] {
  return count === 0 ? [] : [finding('IGNORED_ELEMENTS', 'look', { part: 'unknown', count, text })];
}

/** v and f. */
const LETTERS: readonly number[] = [118, 102];

function readStatement(s: ObjState, fields: number[]): Problem | undefined {
  if (fields.length === 0) return undefined;
  const [from, to] = [fields[0]!, fields[1]!];
  const length = to - from;
  if (length === 1 && LETTERS.includes(s.bytes[from]! | 32)) {
    const letter = s.bytes[from]! | 32;
    // Statements are written small; V and F have no meaning of their own.
    if (letter !== s.bytes[from])
      slipAt(s, 'SYNTAX', { expected: String.fromCharCode(letter), text: excerpt(s.bytes, from, to) }, from);
    return letter === LETTERS[0] ? readVertex(s, fields) : readFace(s, fields);
  }
  if (length < 7 && FREE_FORM.some((word) => isWord(s.bytes, from, to, word))) {
    slipAt(s, 'UNSUPPORTED_FEATURE', { text: excerpt(s.bytes, from, to) }, from);
    return undefined;
  }
  if (HARMLESS.some((word) => isWord(s.bytes, from, to, word))) return undefined;
  const text = excerpt(s.bytes, from, to);
  // The rest of a statement that was torn in two; or a face with a slip in its word, and a body may be made of such.
  if (/^[-+.\df]/i.test(text)) return refuse('SYNTAX', { expected: 'a statement', text }, from);
  if (s.unknown.count++ === 0) s.unknown.text = text;
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
    if (!Number.isFinite(x)) {
      const problem = refuse('BAD_NUMBER', { text: excerpt(s.bytes, from, to) }, from);
      if (s.unread.size >= UNREAD_LIMIT) return problem;
      const vertex = Math.floor(s.points.length / 3) - (k < 3 ? 0 : 1);
      s.unread.set(vertex, problem);
      // Its place stays taken: the vertices behind it keep their numbers.
      while (s.points.length < 3 * vertex + 3) push(s.points, 0);
      return undefined;
    }
    if (k === 3 && count === 4 && x !== 1)
      return refuse('UNSUPPORTED_FEATURE', { text: `weight ${x}` }, from);
    if (k < 3) push(s.points, x);
  }
  return undefined;
}

/** Appends `count, byte, v0, v1, ...` to `corners`; polygons are cut once every vertex is known. */
function readFace(s: ObjState, fields: number[]): Problem | undefined {
  const count = fields.length / 2 - 1;
  if (count < 3) {
    slipAt(s, 'SYNTAX', { expected: '3 or more vertices', text: `${count}` }, fields[0]!);
    return undefined;
  }
  if (count > POLYGON_LIMIT)
    return refuse('BAD_POLYGON', { corners: count, limit: POLYGON_LIMIT }, fields[0]!);
  if (++s.faces > TRIANGLE_LIMIT) return tooManyTriangles(s.faces, { byte: fields[0]! }).problem;
  pushInt(s.corners, count);
  pushInt(s.corners, fields[0]!);
  for (let k = 1; k <= count; k++) {
    const [from, to] = [fields[2 * k]!, fields[2 * k + 1]!];
    const vertex = vertexNumber(s.bytes, from, to, s.points.length / 3);
    if (Number.isNaN(vertex)) return refuse('BAD_INDEX', { text: excerpt(s.bytes, from, to) }, from);
    if (hasOddSlashes(s.bytes, from, to)) slipAt(s, 'BAD_INDEX', { text: excerpt(s.bytes, from, to) }, from);
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

/** Why a vertex that a face names has no place, if there is one. */
function unreadCorner({ unread, corners }: ObjState): Problem | undefined {
  if (unread.size === 0) return undefined;
  for (let i = 0; i < corners.length; i += 2 + corners.data[i]!) {
    for (let c = i + 2; c < i + 2 + corners.data[i]!; c++) {
      const problem = unread.get(corners.data[c]!);
      if (problem !== undefined) return problem;
    }
  }
  return undefined;
}

function slipAt(s: ObjState, code: Problem['code'], values: Problem['values'], byte: number): void {
  // Its line is looked up for the first of its kind only: that walks the file.
  const at = s.slips.has(code) ? undefined : { line: lineAt(s.bytes, byte), byte };
  noteSlip(s.slips, { code, values, found: values, ...(at === undefined ? {} : { at }) });
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
