import { decimal, refuse, type StrictShape } from './shape';
import { strictXml, type Xml } from './xml';
import { strictZip } from './zip';

/**
 * 3MF by its core specification 1.4.0 and its production extension: what stands in a core element is of the core, or in a namespace of
 * its own, and every attribute without a namespace is one that the specification knows.
 */

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const PRODUCTION = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
const RELATIONS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const START = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';

/** Children and attributes of the core, as the schema of the specification has them. */
const KNOWN: Readonly<Record<string, { children: string; values: string }>> = {
  model: {
    children: 'metadata resources build',
    values: 'unit requiredextensions recommendedextensions',
  },
  metadata: { children: '', values: 'name type preserve' },
  resources: { children: 'basematerials object', values: '' },
  basematerials: { children: 'base', values: 'id' },
  base: { children: '', values: 'name displaycolor' },
  object: {
    children: 'metadatagroup mesh components',
    values: 'id type thumbnail partnumber name pid pindex',
  },
  metadatagroup: { children: 'metadata', values: '' },
  mesh: { children: 'vertices triangles', values: '' },
  vertices: { children: 'vertex', values: '' },
  vertex: { children: '', values: 'x y z' },
  triangles: { children: 'triangle', values: '' },
  triangle: { children: '', values: 'v1 v2 v3 p1 p2 p3 pid' },
  components: { children: 'component', values: '' },
  component: { children: '', values: 'objectid transform' },
  build: { children: 'item', values: '' },
  item: { children: 'metadatagroup', values: 'objectid transform partnumber' },
};

/** Elements that hold one child of a kind at most. */
const ONCE: Readonly<Record<string, string>> = {
  model: 'resources build',
  object: 'mesh components',
  mesh: 'vertices triangles',
};

/** To millimeters only where the program does so: what it gives is in the unit of the file. */
const FACTORS: Readonly<Record<string, number>> = {
  micron: 0.001,
  millimeter: 1,
  centimeter: 1,
  inch: 1,
  foot: 1,
  meter: 1,
};

interface Model {
  unit: string;
  objects: Map<string, Xml>;
  items: Xml[];
}

export function strict3mf(bytes: Uint8Array): StrictShape {
  const parts = strictZip(bytes);
  const models = new Map<string, Model>();
  const modelAt = (name: string): Model => {
    const key = name.replace(/^\/+/, '').toLowerCase();
    const known = models.get(key) ?? modelOf((parts.get(key) ?? refuse(`no part ${key}`))());
    models.set(key, known);
    return known;
  };
  const start = startOf((parts.get('_rels/.rels') ?? refuse('no relations'))());
  const first = modelAt(start);
  const factor = Object.hasOwn(FACTORS, first.unit) ? FACTORS[first.unit]! : refuse(`unit ${first.unit}`);
  const shape: StrictShape = { points: [], faces: [] };
  const place = (part: string, use: Xml, transforms: number[][], depth: number): void => {
    if (depth > 100) refuse('objects in themselves');
    const own = use.others.get(`${PRODUCTION} path`) ?? part;
    const object =
      modelAt(own).objects.get(use.values.get('objectid') ?? '') ?? refuse('an object that is not there');
    if (/^(solid)?support$/.test(object.values.get('type') ?? 'model')) return;
    const all = use.values.has('transform')
      ? [transformOf(use.values.get('transform')!), ...transforms]
      : transforms;
    addMesh(shape, object, all, factor);
    for (const component of childrenOf(object, 'components', 'component'))
      place(own, component, all, depth + 1);
  };
  for (const item of first.items) place(start, item, [], 1);
  return shape;
}

function startOf(bytes: Uint8Array): string {
  const root = strictXml(bytes);
  if (root.space !== RELATIONS || root.name !== 'Relationships') refuse('no relations');
  const one = root.children.filter(
    ({ name, values }) => name === 'Relationship' && values.get('Type') === START,
  );
  return one[0]?.values.get('Target') ?? refuse('no model is named');
}

function modelOf(bytes: Uint8Array): Model {
  const root = strictXml(bytes);
  if (root.space !== CORE || root.name !== 'model') refuse('no model');
  check(root);
  if (root.values.has('requiredextensions')) refuse('extensions are not tested here');
  const objects = new Map<string, Xml>();
  for (const object of childrenOf(root, 'resources', 'object')) {
    const id = object.values.get('id') ?? refuse('an object without an id');
    if (objects.has(id)) refuse('an id twice');
    if (!/^(model|(solid)?support|surface|other)$/.test(object.values.get('type') ?? 'model'))
      refuse('a type');
    objects.set(id, object);
  }
  return {
    unit: root.values.get('unit') ?? 'millimeter',
    objects,
    items: childrenOf(root, 'build', 'item'),
  };
}

/** Everything of the core stands where it may, with nothing that is not known. */
function check(xml: Xml): void {
  const { children, values } = KNOWN[xml.name]!;
  for (const name of xml.values.keys())
    if (!values.split(' ').includes(name)) refuse(`${xml.name} has no ${name}`);
  for (const name of (ONCE[xml.name] ?? '').split(' '))
    if (xml.children.filter((child) => child.space === CORE && child.name === name).length > 1)
      refuse(`two ${name}`);
  for (const child of xml.children) {
    if (child.space === '') refuse(`${child.name} without a namespace`);
    if (child.space !== CORE) continue;
    if (!children.split(' ').includes(child.name)) refuse(`${child.name} in ${xml.name}`);
    check(child);
  }
}

const childrenOf = (xml: Xml, outer: string, inner: string): Xml[] =>
  xml.children
    .filter(({ space, name }) => space === CORE && name === outer)
    .flatMap(({ children }) => children.filter(({ space, name }) => space === CORE && name === inner));

function transformOf(text: string): number[] {
  const numbers = text
    .trim()
    .split(/[ \t\r\n]+/)
    .map(decimal);
  if (numbers.length !== 12 || !numbers.every((x) => Number.isFinite(x))) refuse('a transform');
  if (!(Math.abs(spread(numbers)) > 0)) refuse('a flat transform');
  return numbers;
}

/** Determinant of the turning part. */
const spread = (m: number[]): number =>
  m[0]! * (m[4]! * m[8]! - m[5]! * m[7]!) -
  m[1]! * (m[3]! * m[8]! - m[5]! * m[6]!) +
  m[2]! * (m[3]! * m[7]! - m[4]! * m[6]!);

function addMesh({ points, faces }: StrictShape, object: Xml, transforms: number[][], factor: number): void {
  const from = points.length;
  for (const mesh of object.children.filter(({ space, name }) => space === CORE && name === 'mesh')) {
    for (const { values } of childrenOf({ ...object, children: [mesh] }, 'mesh', 'vertices').flatMap(
      ({ children }) => children.filter(({ name }) => name === 'vertex'),
    )) {
      const point = ['x', 'y', 'z'].map((axis) => decimal(values.get(axis)?.trim()));
      if (!point.every((x) => Number.isFinite(x))) refuse('a number too large');
      points.push(transforms.reduce(moved, point).map((x) => x * factor));
    }
    const isTurned = transforms.reduce((sign, m) => sign * Math.sign(spread(m)), 1) < 0;
    for (const { values } of childrenOf({ ...object, children: [mesh] }, 'mesh', 'triangles').flatMap(
      ({ children }) => children.filter(({ name }) => name === 'triangle'),
    )) {
      const corners = ['v1', 'v2', 'v3'].map((key) => cornerOf(values.get(key), points.length - from) + from);
      faces.push(isTurned ? corners.reverse() : corners);
    }
  }
}

function cornerOf(text: string | undefined, points: number): number {
  if (text === undefined || !/^\s*\d+\s*$/.test(text) || Number(text) >= points) refuse(`corner ${text}`);
  return Number(text);
}

/** A row times the matrix (3MF core, 3.3). */
const moved = ([x, y, z]: number[], m: number[]): number[] =>
  [0, 1, 2].map((k) => x! * m[k]! + y! * m[3 + k]! + z! * m[6 + k]! + m[9 + k]!);
