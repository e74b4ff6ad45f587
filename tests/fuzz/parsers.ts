import { zipSync, type Zippable } from 'fflate';
import { readScan, type ScanFile } from '../../src/geometry';
import { sizeScan, type Size } from '../../src/plan';
import { hasWords, say } from '../../src/words/say';
import type { Outcome, Problem } from '../../src/problem';
import { everyNumber } from '../support/everyNumber';
import { mutateBytes, mutateText } from './mutate';
import { OBJ, PACKAGES, PLY, STL_ASCII, STL_BINARY, type Package } from './seeds';
import { strictObj } from './strict/obj';
import { strictPly } from './strict/ply';
import { measure, NotStrict, type StrictMeasure, type StrictShape } from './strict/shape';
import { strictStlAscii, strictStlBinary } from './strict/stl';
import { strict3mf } from './strict/threemf';
import { pick, whole, type Target, type Verdict } from './target';

type Parse = (bytes: Uint8Array) => StrictShape;

/** Is the file, or what size says of it, ever wrong without a word? The reader and `size`, held against a strict parser. */
function parser(
  name: string,
  ending: string,
  parse: Parse,
  make: Target<Uint8Array>['make'],
): Target<Uint8Array> {
  return {
    name,
    make,
    check: (bytes) => verdictOn(bytes, ending, parse),
    fileOf: (bytes) => ({ ending, bytes }),
  };
}

/** One time in two the count is made to fit again, as else most would be refused for their length. */
function countedFacets(random: () => number): Uint8Array {
  const mutant = mutateBytes(pick(random, STL_BINARY), random, pick(random, STL_BINARY));
  if (random() < 0.5 || mutant.length < 84) return mutant;
  const count = Math.floor((mutant.length - 84) / 50);
  const fitting = mutant.slice(0, 84 + 50 * count);
  new DataView(fitting.buffer).setUint32(80, count, true);
  return fitting;
}

/** Three in five times word by word, else byte by byte. */
const textFrom =
  (seeds: readonly Uint8Array[]): Target<Uint8Array>['make'] =>
  (random) =>
    (random() < 0.6 ? mutateText : mutateBytes)(pick(random, seeds), random, pick(random, seeds));

export const PARSERS: readonly Target<Uint8Array>[] = [
  parser('stl-binary', 'stl', strictStlBinary, countedFacets),
  parser('stl-ascii', 'stl', strictStlAscii, textFrom(STL_ASCII)),
  parser('obj', 'obj', strictObj, textFrom(OBJ)),
  parser('ply', 'ply', strictPly, textFrom(PLY)),
  parser('3mf', '3mf', strict3mf, packedMutant),
];

/** What comes of a file, by the ending of its name. */
export function verdictOnFile(bytes: Uint8Array, name: string): Verdict {
  const ending = name.split('.').pop()!;
  const isText = ending === 'stl' && Buffer.from(bytes.subarray(0, 5)).toString('latin1') === 'solid';
  const strict = {
    stl: isText ? strictStlAscii : strictStlBinary,
    obj: strictObj,
    ply: strictPly,
    '3mf': strict3mf,
  };
  return verdictOn(bytes, ending, strict[ending as keyof typeof strict]);
}

/** In the packed bytes one time in three, else in the model or, seldom, in the relations, and packed again. */
function packedMutant(random: () => number): Uint8Array {
  const one = pick(random, PACKAGES);
  if (random() < 0.33) return mutateBytes(packed(one), random, packed(pick(random, PACKAGES)));
  const key = random() < 0.85 ? 'model' : 'relations';
  const mutate = random() < 0.6 ? mutateText : mutateBytes;
  return packed({ ...one, [key]: mutate(one[key], random, pick(random, PACKAGES)[key]) }, whole(random, 2));
}

function packed({ relations, model, more = {} }: Package, deflate = 1): Uint8Array {
  const level = deflate === 1 ? 6 : 0;
  const parts: Zippable = { '_rels/.rels': relations, '3D/3dmodel.model': model, ...more };
  return zipSync(parts, { level, mtime: new Date(2026, 0, 1) });
}

function verdictOn(bytes: Uint8Array, ending: string, parse: Parse): Verdict {
  const strict = strictly(bytes, parse);
  const scan = readScan({ bytes, name: `mutant.${ending}` });
  if (!scan.ok) return onRefusal(scan.problem, strict);
  const { mesh } = scan.value;
  for (const x of mesh.positions) if (!Number.isFinite(x)) return failed(`a coordinate is ${x}`);
  for (const v of mesh.triangles)
    if (v < 0 || 3 * v >= mesh.positions.length) return failed(`a corner is vertex ${v}`);
  // An open surface takes a hundred times as long as a closed one: where both agree on it, one in eight is measured.
  if (typeof strict !== 'string' && !strict.isClosed && bytes.reduce((sum, byte) => sum + byte, 0) % 8 !== 0)
    return onReading(strict, scan.value) ?? { answer: 'read' };
  const size = sizeScan(scan.value, {
    up: '+z',
    ...(scan.value.unit === undefined ? { fileUnit: 'mm' } : {}),
  });
  const odd = oddSize(size);
  if (odd !== undefined) return failed(odd);
  return typeof strict === 'string' ? onLenience(strict, scan.value, size) : onBoth(strict, scan.value, size);
}

const failed = (fault: string): Verdict => ({ answer: 'read', fault });

function strictly(bytes: Uint8Array, parse: Parse): StrictMeasure | string {
  try {
    return measure(parse(bytes));
  } catch (e) {
    if (e instanceof NotStrict) return e.message;
    throw e;
  }
}

/** What the program says on purpose of files that are good by their format: limits of its own, and packed streams without their end mark. */
const OWN_LIMITS: readonly string[] = ['BAD_POLYGON', 'COORD_RANGE', 'UNSAFE_ARCHIVE', 'CORRUPT_ARCHIVE'];

function onRefusal(problem: Problem, strict: StrictMeasure | string): Verdict {
  const odd = oddProblem(problem);
  if (odd !== undefined) return { answer: 'refused', fault: odd };
  if (typeof strict === 'string') return { answer: 'refused' };
  const note = `good by its format, refused: ${problem.code}`;
  return OWN_LIMITS.includes(problem.code)
    ? { answer: 'refused', note }
    : { answer: 'refused', fault: `${note} ${JSON.stringify(problem)}` };
}

/** The strict parser refuses and ours reads: then it must have said something. */
function onLenience(strict: string, scan: ScanFile, size: Outcome<Size>): Verdict {
  if (scan.findings.length > 0)
    return { answer: 'read', note: `said by the reader: ${codesOf(scan.findings)}` };
  if (!size.ok) return { answer: 'read', note: `no volume: ${size.problem.code}` };
  const warned = warningsOf(size.value.findings).filter(({ code }) => !OF_THE_SHAPE.includes(code));
  if (warned.length === 0) return failed(`a number without a warning; the strict parser: ${strict}`);
  return { answer: 'read', note: `warned by size: ${codesOf(warned)}` };
}

/** Warnings that whole files earn, too: they say nothing of what was read past. */
const OF_THE_SHAPE: readonly string[] = [
  'MULTI_SHELL',
  'NESTED_SHELL',
  'FLOOR_FOUND',
  'UNITS_SUSPECT',
  'NON_PLANAR',
];

/** Both read: they must have read the same. */
function onReading(strict: StrictMeasure, scan: ScanFile): Verdict | undefined {
  if (scan.findings.some(({ code }) => code === 'WRONG_FORMAT'))
    return { answer: 'read', note: 'of two formats' };
  if (scan.trianglesRead !== strict.triangles)
    return failed(`${scan.trianglesRead} triangles, the strict parser has ${strict.triangles}`);
  const volume = volumeOf(scan);
  if (!(Math.abs(volume - strict.volume) <= 1e-9 * Math.abs(strict.volume) + strict.doubt))
    return failed(`plain volume ${volume}, the strict parser has ${strict.volume}`);
  return undefined;
}

/** A volume without a warning is that of the strict parser. */
function onBoth(strict: StrictMeasure, scan: ScanFile, size: Outcome<Size>): Verdict {
  const other = onReading(strict, scan);
  if (other !== undefined) return other;
  if (!size.ok || warningsOf(size.value.findings).length > 0) return { answer: 'read' };
  const { volumeCm3, findings, scale } = size.value;
  const unit = scale.mmPerUnit ** 3;
  const wanted = (Math.abs(strict.volume) * unit) / 1000;
  const slack = 1e-6 * wanted + (strict.doubt * unit) / 1000;
  const found = `a volume of ${volumeCm3.low} to ${volumeCm3.high} cm3 with ${codesOf(findings) || 'no finding'}`;
  if (!strict.isClosed)
    return findings.length > 0 ? { answer: 'read' } : failed(`${found}; the file is not closed`);
  // Facets listed twice count once, and in the plain sum twice.
  if (findings.some(({ code }) => code === 'DUPLICATE_FACES')) return { answer: 'read' };
  // With a finding that is fine the number stands for its range, without any for itself.
  const [low, high] =
    findings.length > 0 ? [volumeCm3.low, volumeCm3.high] : [volumeCm3.value, volumeCm3.value];
  return wanted >= low - slack && wanted <= high + slack
    ? { answer: 'read' }
    : failed(`${found}; the strict parser has ${wanted} cm3`);
}

const warningsOf = (findings: readonly Problem[]): Problem[] =>
  findings.filter(({ status }) => status !== 'fine');
const codesOf = (findings: readonly Problem[]): string =>
  [...new Set(findings.map(({ code }) => code))].sort().join();

/** Sum of signed tetrahedra over the mesh as it was read. */
function volumeOf({ mesh: { positions: p, triangles } }: ScanFile): number {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!];
    sum +=
      p[a]! * (p[b + 1]! * p[c + 2]! - p[b + 2]! * p[c + 1]!) +
      p[a + 1]! * (p[b + 2]! * p[c]! - p[b]! * p[c + 2]!) +
      p[a + 2]! * (p[b]! * p[c + 1]! - p[b + 1]! * p[c]!);
  }
  return sum / 6;
}

/** A problem that is no plain sentence, a number that is none. */
function oddSize(size: Outcome<Size>): string | undefined {
  if (!size.ok) return oddProblem(size.problem);
  const { volumeCm3, findings } = size.value;
  if (!(volumeCm3.low >= 0 && volumeCm3.low <= volumeCm3.value && volumeCm3.value <= volumeCm3.high))
    return `a volume of ${JSON.stringify(volumeCm3)}`;
  for (const [path, value] of everyNumber(size.value))
    if (!Number.isFinite(value)) return `size${path} is ${value}`;
  return findings.map(oddProblem).find((odd) => odd !== undefined);
}

function oddProblem(problem: Problem): string | undefined {
  if (!hasWords(problem.code)) return `no words for ${problem.code}`;
  const { text, hint } = say(problem);
  if (
    text === '' ||
    hint === '' ||
    /\b(NaN|undefined(?! entity)|Infinity|null)\b/.test(text.replace(/"[^"]*"/g, ''))
  )
    return `${problem.code} says: ${text} ${hint}`;
  for (const [path, value] of everyNumber({ ...problem.values, ...problem.at }))
    if (!Number.isFinite(value)) return `${problem.code}${path} is ${value}`;
  return undefined;
}
