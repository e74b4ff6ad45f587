import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { isOfType, plyBody, type PlyBody } from './plyBody';
import {
  PLY_BYTES,
  readPlyHeader,
  startsLikePly,
  type PlyElement,
  type PlyFormat,
  type PlyHeader,
  type PlyType,
} from './plyHeader';
import { POLYGON_LIMIT } from './polygon';
import { cutFaces, type PolygonMesh } from './polygonMesh';
import { Refusal, refusing } from './refusal';
import { tooManyTriangles, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { goodIfWhole, isBelievable, noteSlip, type Slips } from './slips';
import { float32Step } from './stlBinary';
import { intList, pushInt } from './text';

/** The list of a face that names its vertices, as it is called now and was called before. */
const FACE_LISTS: readonly string[] = ['vertex_indices', 'vertex_index'];

/**
 * PLY, ASCII or binary of either byte order: x, y, z of the element `vertex`, the vertex list of the element `face`. Other properties
 * are passed over; so are other elements, and that is said. Counts are held against the length of the file before anything is made.
 * Errors: SYNTAX, BAD_NUMBER, TRUNCATED, TRAILING_DATA, BAD_INDEX, INDEX_OUT_OF_RANGE, COORD_RANGE, BAD_POLYGON, NO_TRIANGLES,
 * TOO_LARGE, UNSUPPORTED_FEATURE (strips), ENDIAN, NOT_A_MESH.
 */
export function readPly(bytes: Uint8Array): Outcome<ScanFile> {
  if (!startsLikePly(bytes))
    return bad('NOT_A_MESH', { what: 'a file that does not start with "ply"' }, { byte: 0 });
  const header = readPlyHeader(bytes);
  if (!header.ok) return header;
  const scan = refusing(() => readBody(bytes, header.value));
  const other = OTHER_END[header.value.format];
  if (other === undefined || (scan.ok && scan.value.mesh.positions.every(isBelievable))) return scan;
  // Which byte order a file has shows when only the other one gives a mesh, and one that can be believed.
  const turned = refusing(() => readBody(bytes, { ...header.value, format: other }));
  if (!turned.ok || (scan.ok && !turned.value.mesh.positions.every(isBelievable))) return scan;
  const values = { said: ORDER_WORDS[header.value.format], is: ORDER_WORDS[other] };
  const slips: Slips = new Map();
  noteSlip(slips, { code: 'ENDIAN', values, found: values, at: { line: 2 } });
  return goodIfWhole(turned.value, slips);
}

const OTHER_END: Readonly<Record<PlyFormat, PlyFormat | undefined>> = {
  ascii: undefined,
  binary_little_endian: 'binary_big_endian',
  binary_big_endian: 'binary_little_endian',
};
const ORDER_WORDS: Readonly<Record<PlyFormat, string>> = {
  ascii: 'text',
  binary_little_endian: 'little-endian',
  binary_big_endian: 'big-endian',
};

function readBody(bytes: Uint8Array, header: PlyHeader): Outcome<ScanFile> {
  const refused = refusedAhead(bytes, header);
  if (refused !== undefined) return refused;
  const vertices = header.elements.find(({ name }) => name === 'vertex')!;
  const state: PolygonMesh = {
    points: { data: new Float64Array(3 * vertices.count), length: 0 },
    corners: intList(),
    faces: 0,
    firstVertex: 0,
  };
  const body = plyBody(bytes, header.end, header.format);
  for (const element of header.elements) {
    if (element === vertices) readVertices(body, element, state);
    else if (element.name === 'face') readFaces(body, element, state, vertices.count);
    else skipRows(body, element);
  }
  body.endFile();
  if (state.corners.length === 0) return bad('NO_TRIANGLES', { vertices: vertices.count });
  const cut = cutFaces(state);
  if (!cut.ok) return bad(cut.problem.code, cut.problem.values, body.placeOf(cut.problem.at?.byte ?? 0));
  const { mesh, largest, findings } = cut.value;
  return good({
    mesh,
    format: 'ply',
    trianglesRead: mesh.triangles.length / 3,
    coordinateStep: stepOf(vertices, header.format, largest),
    findings: [...findings, ...passedOver(header.elements)],
  });
}

/** What the header alone rules out: no faces, more rows than there are bytes for, more triangles than can be held. */
function refusedAhead(bytes: Uint8Array, { elements, format, end }: PlyHeader): Outcome<never> | undefined {
  const vertices = elements.filter(({ name }) => name === 'vertex');
  const faces = elements.filter(({ name }) => name === 'face');
  if (vertices.length > 1 || faces.length > 1)
    return bad('SYNTAX', { expected: 'one list of each kind', text: 'vertex or face twice' }, { byte: end });
  const strips = elements.find(({ name, count }) => name === 'tristrips' && count > 0);
  if (strips !== undefined)
    return bad('UNSUPPORTED_FEATURE', { part: 'strips', text: strips.name }, { byte: end });
  if (vertices.length === 0) return bad('NO_TRIANGLES', { vertices: 0 });
  const missing = ['x', 'y', 'z'].find((axis) => !vertices[0]!.properties.some((p) => isScalar(p, axis)));
  if (missing !== undefined)
    return bad(
      'SYNTAX',
      { expected: `property ${missing} of the vertices`, text: 'end_header' },
      { byte: end },
    );
  const bare = elements.find(({ count, properties }) => count > 0 && properties.length === 0);
  if (bare !== undefined)
    return bad('SYNTAX', { expected: `a property of ${bare.name}`, text: 'end_header' }, { byte: end });
  const least = elements.reduce((sum, element) => sum + leastBytes(element, format), 0);
  // The last row of a text needs no line end.
  const expectedBytes = end + least - (format === 'ascii' && least > 0 ? 1 : 0);
  if (expectedBytes > bytes.length)
    return bad('TRUNCATED', { bytes: bytes.length, expectedBytes }, { byte: bytes.length });
  if (faces.length === 0 || faces[0]!.count === 0)
    return bad('NO_TRIANGLES', { vertices: vertices[0]!.count });
  if (!hasFaces(faces[0]!))
    return bad(
      'SYNTAX',
      { expected: `a list ${FACE_LISTS[0]} of the faces`, text: 'end_header' },
      { byte: end },
    );
  if (faces[0]!.count > TRIANGLE_LIMIT) return tooManyTriangles(faces[0]!.count, { byte: end });
  return undefined;
}

/** Bytes that rows of this kind take at least: in text a digit and a blank for each value. */
function leastBytes({ count, properties }: PlyElement, format: PlyFormat): number {
  const row = properties.reduce(
    (sum, { type, countType }) => sum + (format === 'ascii' ? 2 : PLY_BYTES[countType ?? type]),
    0,
  );
  return count * row;
}

const isScalar = ({ name, countType }: PlyElement['properties'][number], axis: string): boolean =>
  name === axis && countType === undefined;

function readVertices(body: PlyBody, { count, properties }: PlyElement, { points }: PolygonMesh): void {
  const axes = properties.map((p) => (p.countType === undefined ? ['x', 'y', 'z'].indexOf(p.name) : -1));
  for (let row = 0; row < count; row++) {
    for (let k = 0; k < properties.length; k++) {
      const { type, countType } = properties[k]!;
      if (countType !== undefined) {
        skipList(body, type, countType);
        continue;
      }
      const axis = axes[k]!;
      if (axis < 0) {
        body.pass(type);
        continue;
      }
      const value = body.next(type);
      if (!isOfType(type, value))
        throw new Refusal('BAD_NUMBER', { text: body.text() }, body.placeOf(body.at));
      points.data[3 * row + axis] = value;
    }
    body.endRow();
  }
  points.length = 3 * count;
}

function readFaces(
  body: PlyBody,
  { count, properties }: PlyElement,
  mesh: PolygonMesh,
  vertices: number,
): void {
  const list = properties.findIndex((p) => p.countType !== undefined && FACE_LISTS.includes(p.name));
  for (let row = 0; row < count; row++) {
    for (let k = 0; k < properties.length; k++) {
      const { type, countType } = properties[k]!;
      if (countType === undefined) body.pass(type);
      else if (k === list) readFace(body, type, countType, mesh, vertices);
      else skipList(body, type, countType);
    }
    body.endRow();
  }
}

function readFace(
  body: PlyBody,
  type: PlyType,
  countType: PlyType,
  mesh: PolygonMesh,
  vertices: number,
): void {
  const corners = listLength(body, countType);
  const byte = body.at;
  if (corners < 3)
    throw new Refusal('SYNTAX', { expected: '3 or more vertices', text: `${corners}` }, body.placeOf(byte));
  // Told last, so that a list which runs over the end of the file is called cut off.
  const isTooLong = corners > POLYGON_LIMIT;
  if (!isTooLong) {
    pushInt(mesh.corners, corners);
    pushInt(mesh.corners, byte);
  }
  for (let k = 0; k < corners; k++) {
    const vertex = body.next(type);
    if (!Number.isInteger(vertex) || !isOfType(type, vertex))
      throw new Refusal('BAD_INDEX', { text: body.text() }, body.placeOf(body.at));
    if (vertex < 0 || vertex >= vertices)
      throw new Refusal(
        'INDEX_OUT_OF_RANGE',
        { part: 'from zero', index: vertex, vertices },
        body.placeOf(body.at),
      );
    if (!isTooLong) pushInt(mesh.corners, vertex);
  }
  if (isTooLong) throw new Refusal('BAD_POLYGON', { corners, limit: POLYGON_LIMIT }, body.placeOf(byte));
}

function skipRows(body: PlyBody, { count, properties }: PlyElement): void {
  for (let row = 0; row < count; row++) {
    for (const { type, countType } of properties) {
      if (countType === undefined) body.pass(type);
      else skipList(body, type, countType);
    }
    body.endRow();
  }
}

function skipList(body: PlyBody, type: PlyType, countType: PlyType): void {
  const length = listLength(body, countType);
  for (let k = 0; k < length; k++) body.pass(type);
}

function listLength(body: PlyBody, countType: PlyType): number {
  const length = body.next(countType);
  if (length < 0 || !isOfType(countType, length))
    throw new Refusal(
      'SYNTAX',
      { expected: 'the length of a list', text: body.text() },
      body.placeOf(body.at),
    );
  return length;
}

function passedOver(elements: readonly PlyElement[]): Problem[] {
  const others = elements.filter(({ name, count }) => count > 0 && name !== 'vertex' && name !== 'face');
  const rest = others.filter((element) => !hasFaces(element));
  return [...passed(others.filter(hasFaces), 'look', { part: 'unknown' }), ...passed(rest, 'fine')];
}

/** Faces, though their element may not be called so? */
const hasFaces = ({ properties }: PlyElement): boolean =>
  properties.some((p) => p.countType !== undefined && FACE_LISTS.includes(p.name));

function passed(
  elements: readonly PlyElement[],
  status: 'look' | 'fine',
  more: Problem['values'] = {},
): Problem[] {
  if (elements.length === 0) return [];
  const count = elements.reduce((sum, element) => sum + element.count, 0);
  const text = elements.map(({ name }) => name).join(', ');
  return [finding('IGNORED_ELEMENTS', status, { ...more, count, text })];
}

/** Smallest step of the coarsest axis: whole numbers step by 1, float64 has 29 bits more than float32 (IEEE 754). */
function stepOf({ properties }: PlyElement, format: PlyFormat, largest: number): number {
  const step = float32Step(largest);
  if (format === 'ascii') return step;
  const steps = properties
    .filter((p) => ['x', 'y', 'z'].some((axis) => isScalar(p, axis)))
    .map(({ type }) =>
      type.startsWith('float32') || type === 'float' ? step : PLY_BYTES[type] === 8 ? step / 2 ** 29 : 1,
    );
  return Math.max(...steps);
}
