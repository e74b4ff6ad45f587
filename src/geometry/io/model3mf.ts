import type { Place } from '../../problem';
import { Refusal } from './refusal';
import { tooManyTriangles, TRIANGLE_LIMIT } from './scanFile';
import { intList, numberList, push, pushInt, type IntList, type NumberList } from './text';
import { decimalOf, transformOf, type Transform } from './transform3mf';
import { plain, xmlStream, type XmlStream } from './xmlStream';

/** One use of an object: in the build, or as a component of another object. */
export interface Use {
  /** The part the object stands in, where it is not the same one (production extension). */
  part: string | undefined;
  id: string;
  transform: Transform;
  line: number;
}

export interface Object3mf {
  /** "model", or another kind: support is no part of the piece. */
  type: string;
  points: NumberList;
  triangles: IntList;
  components: Use[];
}

export interface Model3mf {
  /** As written; the specification says millimeter where it is not. */
  unit: string;
  objects: Map<string, Object3mf>;
  items: Use[];
  /** Elements and attributes of the core that the specification does not know: how many, and the first of them. */
  unknown: { count: number; text: string };
}

/** Namespaces of the specification and of the extensions that add nothing to a shape, or only say where it stands. */
const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const PRODUCTION = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
const HARMLESS: readonly string[] = [
  CORE,
  PRODUCTION,
  'http://schemas.microsoft.com/3dmanufacturing/material/2015/02',
  'http://schemas.microsoft.com/3dmanufacturing/trianglesets/2021/07',
];

/** Where a known element may stand (3MF Core Specification 1.4.0, chapters 3 and 4). Whatever else stands there is passed over. */
const PARENT_OF: Readonly<Record<string, string>> = {
  resources: 'model',
  build: 'model',
  item: 'build',
  object: 'resources',
  mesh: 'object',
  components: 'object',
  component: 'components',
  vertices: 'mesh',
  triangles: 'mesh',
  vertex: 'vertices',
  triangle: 'triangles',
};

/** Elements of the core that add nothing to a shape (the same). */
const WITHOUT_SHAPE: readonly string[] = ['metadata', 'metadatagroup', 'basematerials', 'base'];

/** Elements that stand in theirs once: a second list would be counted from the start of the first. */
const ONCE: readonly string[] = ['resources', 'build', 'mesh', 'components', 'vertices', 'triangles'];

/**
 * Attributes of each element (the same), and two that slicers add (common practice, no source). Any other may be one of these with a slip in
 * its name.
 */
const VALUES_OF = new Map(
  Object.entries({
    model: 'unit requiredextensions recommendedextensions',
    resources: '',
    build: '',
    item: 'objectid transform partnumber printable',
    object: 'id type thumbnail partnumber name pid pindex instancescount',
    mesh: '',
    components: '',
    component: 'objectid transform',
    vertices: '',
    triangles: '',
    vertex: 'x y z',
    triangle: 'v1 v2 v3 p1 p2 p3 pid',
  }).map(([element, names]) => [element, new Set(names.split(' '))]),
);

/** Kinds of objects (the same, 4.1). */
const TYPES: readonly string[] = ['model', 'solidsupport', 'support', 'surface', 'other'];

interface State {
  model: Model3mf;
  object: Object3mf | undefined;
  /** Known elements we stand in. */
  path: string[];
  /** Elements we stand in below one that is passed over, itself included. */
  skipped: number;
  /** What core elements and production values have before their name. */
  corePrefix: string;
  pathName: string | undefined;
  triangles: number;
  /** Elements of ONCE that were met, with the object they are of. */
  met: Set<string>;
}

type Values = Readonly<Record<string, string>>;

/**
 * Reads one model part of a 3MF package as it is unpacked.
 * Throws a Refusal with its line: SYNTAX, BAD_NUMBER, BAD_INDEX, INDEX_OUT_OF_RANGE, BAD_REFERENCE, BAD_TRANSFORM, TOO_LARGE,
 * UNSUPPORTED_FEATURE, and those of the XML.
 */
export function model3mf(): XmlStream & { model: Model3mf } {
  const state: State = {
    model: { unit: 'millimeter', objects: new Map(), items: [], unknown: { count: 0, text: '' } },
    object: undefined,
    path: [],
    skipped: 0,
    corePrefix: '',
    pathName: undefined,
    triangles: 0,
    met: new Set(),
  };
  const stream = xmlStream({
    open: (name, values, line) => open(state, name, values, line),
    close: () => close(state),
  });
  return { ...stream, model: state.model };
}

function open(state: State, name: string, values: Values, line: number): void {
  if (state.skipped > 0) {
    state.skipped++;
    return;
  }
  if (state.path.length === 0) return openModel(state, name, values, line);
  const { corePrefix } = state;
  const local = name.startsWith(corePrefix) ? name.slice(corePrefix.length) : '';
  const isOther = values.xmlns !== undefined && values.xmlns !== CORE;
  const isCore = !isOther && local !== '' && !local.includes(':');
  if (!isCore || !Object.hasOwn(PARENT_OF, local)) {
    refuseShape(state, name, line);
    if (isCore && !WITHOUT_SHAPE.includes(local)) noteUnknown(state, name);
    state.skipped = 1;
    return;
  }
  if (PARENT_OF[local] !== state.path.at(-1))
    throw new Refusal(
      'SYNTAX',
      { expected: `what belongs in ${state.path.at(-1)}`, text: plain(name) },
      { line },
    );
  if (ONCE.includes(local)) onlyOnce(state, local, line);
  state.path.push(local);
  noteValues(state, local, values);
  OPENED[local]?.(state, values, line);
}

function close(state: State): void {
  if (state.skipped > 0) {
    state.skipped--;
    return;
  }
  if (state.path.pop() === 'mesh') checkCorners(state.object!);
}

function openModel(state: State, name: string, values: Values, line: number): void {
  const mark = Object.keys(values).find((key) => values[key] === CORE && /^xmlns(:|$)/.test(key));
  state.corePrefix = mark === undefined || mark === 'xmlns' ? '' : `${mark.slice(6)}:`;
  if (mark === undefined || name !== `${state.corePrefix}model`)
    throw new Refusal('SYNTAX', { expected: 'the model of a 3MF', text: plain(name) }, { line });
  const production = Object.keys(values).find(
    (key) => values[key] === PRODUCTION && key.startsWith('xmlns:'),
  );
  if (production !== undefined) state.pathName = `${production.slice(6)}:path`;
  for (const prefix of (values.requiredextensions ?? '').split(/\s+/).filter((word) => word !== '')) {
    if (!HARMLESS.includes(values[`xmlns:${prefix}`] ?? ''))
      throw new Refusal('UNSUPPORTED_FEATURE', { part: 'extension', text: plain(prefix) }, { line });
  }
  state.model.unit = values.unit ?? state.model.unit;
  state.path.push('model');
  noteValues(state, 'model', values);
}

/** Elements of extensions that hold a shape inside an object: passed over, it would be missing from the piece. */
function refuseShape({ path }: State, name: string, line: number): void {
  const local = name.slice(name.indexOf(':') + 1);
  if (path.includes('object') && /^(beamlattice|booleanshape|levelset|displacementmesh)$/.test(local))
    throw new Refusal('UNSUPPORTED_FEATURE', { part: 'extension', text: plain(name) }, { line });
}

const OPENED: Readonly<Record<string, (state: State, values: Values, line: number) => void>> = {
  object: (state, values, line) => {
    const { objects } = state.model;
    const id = needed(values, 'id', line);
    if (objects.has(id)) throw new Refusal('BAD_REFERENCE', { part: 'twice', text: plain(id) }, { line });
    const { type = 'model' } = values;
    if (!TYPES.includes(type))
      throw new Refusal('SYNTAX', { expected: 'a type of object', text: plain(type) }, { line });
    state.object = {
      type,
      points: numberList(64),
      triangles: intList(64),
      components: [],
    };
    objects.set(id, state.object);
  },
  vertex: (state, values, line) => {
    for (const axis of ['x', 'y', 'z']) {
      const value = decimalOf(needed(values, axis, line));
      if (!Number.isFinite(value)) throw new Refusal('BAD_NUMBER', { text: plain(values[axis]!) }, { line });
      push(state.object!.points, value);
    }
  },
  triangle: (state, values, line) => {
    if (++state.triangles > TRIANGLE_LIMIT) throw tooMany(state.triangles, { line });
    for (const corner of ['v1', 'v2', 'v3']) {
      const text = needed(values, corner, line);
      if (!/^\s*\d{1,10}\s*$/.test(text)) throw new Refusal('BAD_INDEX', { text: plain(text) }, { line });
      // A number of ten digits may not fit; it is out of range anyway.
      pushInt(state.object!.triangles, Math.min(Number(text), 2 ** 31 - 1));
    }
  },
  component: (state, values, line) => void state.object!.components.push(useOf(state, values, line)),
  item: (state, values, line) => void state.model.items.push(useOf(state, values, line)),
};

function onlyOnce({ met, model, path }: State, name: string, line: number): void {
  const key = `${path.includes('object') ? model.objects.size : 0} ${name}`;
  if (met.has(key))
    throw new Refusal('SYNTAX', { expected: `the end of the ${path.at(-1)}`, text: name }, { line });
  met.add(key);
}

function noteUnknown({ model: { unknown } }: State, name: string): void {
  if (unknown.count++ === 0) unknown.text = plain(name);
}

/** Attributes with a prefix are of extensions. */
function noteValues(state: State, element: string, values: Values): void {
  const known = VALUES_OF.get(element)!;
  for (const name in values)
    if (!known.has(name) && name !== 'xmlns' && !name.includes(':')) noteUnknown(state, name);
}

export const tooMany = (triangles: number, at?: Place): Refusal => {
  const { code, values } = tooManyTriangles(triangles).problem;
  return new Refusal(code, values, at);
};

const useOf = ({ pathName }: State, values: Values, line: number): Use => ({
  id: needed(values, 'objectid', line),
  part: pathName === undefined ? undefined : values[pathName],
  transform: transformOf(values.transform, { line }),
  line,
});

function needed(values: Values, name: string, line: number): string {
  const value = values[name];
  if (value === undefined) throw new Refusal('SYNTAX', { expected: name, text: 'nothing' }, { line });
  return value;
}

function checkCorners({ points, triangles }: Object3mf): void {
  const vertices = points.length / 3;
  for (let c = 0; c < triangles.length; c++) {
    const index = triangles.data[c]!;
    if (index >= vertices) throw new Refusal('INDEX_OUT_OF_RANGE', { part: 'from zero', index, vertices });
  }
}
