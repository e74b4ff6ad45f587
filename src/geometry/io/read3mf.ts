import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { model3mf, tooMany, type Model3mf, type Object3mf, type Use } from './model3mf';
import { Refusal, refusing } from './refusal';
import { COORDINATE_LIMIT, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { float32Step } from './stlBinary';
import { both, UNMOVED, volumeFactor, type Transform } from './transform3mf';
import { weldPoints } from './weld';
import { plain, xmlStream } from './xmlStream';
import { partKey, zipDirectory, type ZipEntry } from './zipDirectory';
import { unpackPart } from './zipPart';

/** Units of the specification (3MF Core Specification 1.4.0, 3.4). A micron is no unit of ours: its lengths are made mm. */
const UNITS: Readonly<Record<string, { unit: NonNullable<ScanFile['unit']>; factor: number }>> = {
  micron: { unit: 'mm', factor: 1e-3 },
  millimeter: { unit: 'mm', factor: 1 },
  centimeter: { unit: 'cm', factor: 1 },
  inch: { unit: 'in', factor: 1 },
  foot: { unit: 'ft', factor: 1 },
  meter: { unit: 'm', factor: 1 },
};

/** Type of the relationship that names the model to start with (the same, 2.1). */
const MODEL_TYPE = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';

/** Uses of objects, empty ones among them, and how deep they may lie in one another. Chosen here. */
const USE_LIMIT = 100_000;
const DEPTH_LIMIT = 100;

/** Kinds of objects that hold a print up and are no part of the piece (the same, 4.1). */
const SUPPORTS: readonly string[] = ['support', 'solidsupport'];

interface Package {
  bytes: Uint8Array;
  entries: ReadonlyMap<string, ZipEntry>;
  /** Model parts read so far, by their key. */
  models: Map<string, Model3mf>;
  findings: Problem[];
}

/** An object at its place in the build. */
interface Placed {
  object: Object3mf;
  transform: Transform;
}

/**
 * 3MF: what the build places, as one mesh in the unit of the file. Parts are looked up in the archive by name, and no name is ever taken for
 * a path. Counts are known before anything is copied.
 * Errors: NOT_A_MESH, CORRUPT_ARCHIVE, UNSAFE_ARCHIVE, UNSAFE_XML, UNSUPPORTED_ENCODING, UNSUPPORTED_FORMAT, UNSUPPORTED_FEATURE, SYNTAX,
 * BAD_UNIT, BAD_NUMBER, BAD_INDEX, INDEX_OUT_OF_RANGE, BAD_REFERENCE, BAD_TRANSFORM, CYCLE, COORD_RANGE, NO_TRIANGLES, TOO_LARGE.
 */
export const read3mf = (bytes: Uint8Array): Outcome<ScanFile> => refusing(() => readPackage(bytes));

function readPackage(bytes: Uint8Array): Outcome<ScanFile> {
  const entries = new Map(zipDirectory(bytes).map((entry) => [partKey(entry.name), entry]));
  const file: Package = { bytes, entries, models: new Map(), findings: [] };
  const first = firstPart(file);
  const model = modelAt(file, first);
  const unit = Object.hasOwn(UNITS, model.unit) ? UNITS[model.unit] : undefined;
  if (unit === undefined) return bad('BAD_UNIT', { text: plain(model.unit) });
  const placed = placedObjects(file, first, model);
  if (placed.length === 0) return bad('NO_TRIANGLES', { vertices: 0 });
  const { positions, triangles, largest } = merged(placed, unit.factor);
  return good({
    mesh: { positions, triangles },
    format: '3mf',
    unit: unit.unit,
    trianglesRead: triangles.length / 3,
    coordinateStep: float32Step(largest),
    findings: [...file.findings, ...unknownFinding(file), ...mirroredFinding(placed)],
  });
}

/** The model part that the package names; where it names none, the only one there is, and that is said. */
function firstPart(file: Package): string {
  const relations = file.entries.get('_rels/.rels');
  if (relations === undefined) {
    const models = [...file.entries.keys()].filter((name) => name.endsWith('.model'));
    if (models.length !== 1)
      throw new Refusal('NOT_A_MESH', { what: 'a zip archive that names no 3D model' });
    file.findings.push(finding('BAD_REFERENCE', 'look', { part: 'unnamed' }));
    return models[0]!;
  }
  let target: string | undefined;
  let isRoot = true;
  const stream = xmlStream({
    open: (name, values) => {
      if (isRoot && !isRelations(name, values))
        file.findings.push(finding('BAD_REFERENCE', 'look', { part: 'relations' }));
      isRoot = false;
      if (/^(\w+:)?Relationship$/.test(name) && values.Type === MODEL_TYPE) target ??= values.Target;
    },
    close: () => undefined,
  });
  unpackPart(file.bytes, relations, stream.write);
  stream.end();
  if (target === undefined) throw new Refusal('NOT_A_MESH', { what: 'a zip archive that names no 3D model' });
  return partKey(target);
}

/** The root of the part that names the first model (ECMA-376 part 2, 6.5, from memory). */
const isRelations = (name: string, values: Readonly<Record<string, string>>): boolean =>
  /^(\w+:)?Relationships$/.test(name) &&
  Object.keys(values).some((key) => /^xmlns(:|$)/.test(key) && values[key] === RELATIONS);

const RELATIONS = 'http://schemas.openxmlformats.org/package/2006/relationships';

/** A model part, read once. */
function modelAt(file: Package, part: string, line?: number): Model3mf {
  const known = file.models.get(part);
  if (known !== undefined) return known;
  const entry = file.entries.get(part);
  if (entry === undefined)
    throw new Refusal(
      'BAD_REFERENCE',
      { part: 'model', text: plain(part) },
      line === undefined ? undefined : { line },
    );
  const { write, end, model } = model3mf();
  unpackPart(file.bytes, entry, write);
  end();
  file.models.set(part, model);
  return model;
}

/** Uses and triangles that one use of an object comes to. */
interface Count {
  uses: number;
  triangles: number;
}

/** Every object with triangles at every place the build gives it, counted before it is listed. */
function placedObjects(file: Package, first: string, model: Model3mf): Placed[] {
  const counting: Counting = { file, known: new Map(), inside: new Set() };
  const total = { uses: 0, triangles: 0 };
  for (const item of model.items) addTo(total, countOf(counting, first, item));
  if (total.uses > USE_LIMIT)
    throw new Refusal('TOO_LARGE', { part: 'copies', count: total.uses, limit: USE_LIMIT });
  if (total.triangles > TRIANGLE_LIMIT) throw tooMany(total.triangles);
  const placed: Placed[] = [];
  let supports = 0;
  const empty: string[] = [];
  const place = (part: string, use: Use, outer: Transform): void => {
    const { object, part: own } = objectOf(file, part, use);
    if (SUPPORTS.includes(object.type)) {
      supports++;
      return;
    }
    const transform = both(use.transform, outer);
    if (object.triangles.length > 0) placed.push({ object, transform });
    else if (object.components.length === 0) empty.push(plain(use.id));
    for (const component of object.components) place(own, component, transform);
  };
  for (const item of model.items) place(first, item, UNMOVED);
  if (empty.length > 0)
    file.findings.push(
      finding('IGNORED_ELEMENTS', 'look', { part: 'empty', count: empty.length, text: empty[0]! }),
    );
  if (supports > 0)
    file.findings.push(
      finding('IGNORED_ELEMENTS', 'look', { part: 'support', count: supports, text: 'support' }),
    );
  return placed;
}

interface Counting {
  file: Package;
  known: Map<Object3mf, Count>;
  /** Objects we stand in: meeting one again is a cycle. */
  inside: Set<Object3mf>;
}

function countOf(counting: Counting, part: string, use: Use): Count {
  const { known, inside } = counting;
  const { object, part: own } = objectOf(counting.file, part, use);
  const before = known.get(object);
  if (before !== undefined) return before;
  if (inside.has(object)) throw new Refusal('CYCLE', { text: plain(use.id) }, { line: use.line });
  if (inside.size >= DEPTH_LIMIT)
    throw new Refusal(
      'TOO_LARGE',
      { part: 'depth', count: inside.size + 1, limit: DEPTH_LIMIT },
      { line: use.line },
    );
  inside.add(object);
  const count = { uses: 1, triangles: object.triangles.length / 3 };
  for (const component of object.components) addTo(count, countOf(counting, own, component));
  inside.delete(object);
  known.set(object, count);
  return count;
}

function addTo(sum: Count, { uses, triangles }: Count): void {
  sum.uses += uses;
  sum.triangles += triangles;
}

function objectOf(
  file: Package,
  part: string,
  { id, part: other, line }: Use,
): { object: Object3mf; part: string } {
  const own = other === undefined ? part : partKey(other);
  const object = modelAt(file, own, line).objects.get(id);
  if (object === undefined) throw new Refusal('BAD_REFERENCE', { part: 'object', text: plain(id) }, { line });
  return { object, part: own };
}

function merged(
  placed: readonly Placed[],
  factor: number,
): { positions: Float64Array; triangles: Int32Array; largest: number } {
  const points = new Float64Array(placed.reduce((sum, { object }) => sum + object.points.length, 0));
  const corners = new Int32Array(placed.reduce((sum, { object }) => sum + object.triangles.length, 0));
  let largest = 0;
  let [p, c] = [0, 0];
  for (const { object, transform: m } of placed) {
    const firstVertex = p / 3;
    const { data, length } = object.points;
    for (let v = 0; v < length; v += 3) {
      for (let k = 0; k < 3; k++) {
        const x =
          factor * (data[v]! * m[k]! + data[v + 1]! * m[3 + k]! + data[v + 2]! * m[6 + k]! + m[9 + k]!);
        points[p++] = x;
      }
    }
    const isMirrored = volumeFactor(m) < 0;
    for (let t = 0; t < object.triangles.length; t += 3) {
      for (let k = 0; k < 3; k++) {
        const v = firstVertex + object.triangles.data[t + (isMirrored ? 2 - k : k)]!;
        corners[c++] = v;
        for (let axis = 0; axis < 3; axis++) largest = Math.max(largest, Math.abs(points[3 * v + axis]!));
      }
    }
  }
  if (!(largest <= COORDINATE_LIMIT))
    throw new Refusal('COORD_RANGE', {
      text: Number.isFinite(largest) ? largest.toExponential(2) : 'more than can be told',
      limit: COORDINATE_LIMIT,
    });
  const { positions, index } = weldPoints(points);
  return { positions, triangles: corners.map((v) => index[v]!), largest };
}

/** What the specification does not know may be a slip in the name of what it does. */
function unknownFinding({ models }: Package): Problem[] {
  const unknown = [...models.values()].map((model) => model.unknown).filter(({ count }) => count > 0);
  if (unknown.length === 0) return [];
  const count = unknown.reduce((sum, one) => sum + one.count, 0);
  return [finding('IGNORED_ELEMENTS', 'look', { part: 'unknown', count, text: unknown[0]!.text })];
}

/** A transform that mirrors turns every triangle inside out; they were turned back. */
function mirroredFinding(placed: readonly Placed[]): Problem[] {
  const count = placed.filter(({ transform }) => volumeFactor(transform) < 0).length;
  return count === 0 ? [] : [finding('MIRRORED', 'fine', { count })];
}
