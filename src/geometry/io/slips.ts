import {
  bad,
  finding,
  good,
  type Code,
  type Outcome,
  type Place,
  type Problem,
  type Status,
} from '../../problem';
import { divergenceVolume } from '../measure/pieces';
import { pairEdges } from '../repair/edges';
import type { TriangleMesh } from '../triangleMesh';
import type { ScanFile } from './scanFile';

/** A place where a file is not as its format asks, though what it means can be told. */
export interface Slip {
  code: Code;
  /** Of the error, where nothing proves that the rest is all there. */
  values: Problem['values'];
  /** Of the finding, where the rest proves itself. */
  found: Problem['values'];
  at?: Place;
}

/** The first slip of each code, in the order met, and how many of it there are. */
export type Slips = Map<Code, Slip & { count: number }>;

export function noteSlip(slips: Slips, slip: Slip): void {
  const before = slips.get(slip.code);
  if (before === undefined) slips.set(slip.code, { ...slip, count: 1 });
  else before.count++;
}

/**
 * A scan read past slips is good only where its surface proves itself, and then a finding says what was read past. Else the first slip
 * is the error of the file.
 */
export function goodIfWhole(scan: ScanFile, slips: Slips): Outcome<ScanFile> {
  const [first] = slips.values();
  if (first === undefined) return good(scan);
  if (!isWhole(scan.mesh)) return bad(first.code, first.values, first.at);
  return good(withSlips(scan, slips));
}

/** The scan with a finding for what was read past. */
export function withSlips(scan: ScanFile, slips: Slips): ScanFile {
  const found = [...slips.values()].map(({ code, found: values, count, at }) =>
    finding(code, statusOf(code), { ...values, part: 'read past', count }, at),
  );
  return { ...scan, findings: [...scan.findings, ...found] };
}

/** A shape that was not read is missing from the volume, however whole the rest is. */
const statusOf = (code: Code): Status => (code === 'UNSUPPORTED_FEATURE' ? 'stop' : 'look');

/**
 * Does the surface prove that nothing of it is missing and nothing too much: every edge between two facets that agree about outside, around
 * some volume? A facet lost, added or torn by a slip leaves an edge that does not. A whole body lost leaves none: where a slip may hold one, the
 * reader must refuse the file.
 */
export function isWhole({ positions, triangles }: TriangleMesh): boolean {
  const whole = { positions, triangles: withoutCollapsed(triangles) };
  const { openCount, conflictCount, shared } = pairEdges(whole);
  return openCount === 0 && conflictCount === 0 && shared.length === 0 && divergenceVolume(whole) !== 0;
}

function withoutCollapsed(triangles: Int32Array): Int32Array {
  const kept = new Int32Array(triangles.length);
  let length = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    if (a === b || b === c || c === a) continue;
    kept[length++] = a;
    kept[length++] = b;
    kept[length++] = c;
  }
  return kept.subarray(0, length);
}

/** No scan has a coordinate so near zero that is not zero: bytes read the wrong way round have. Chosen here. */
const SMALLEST = 1e-20;

export const isBelievable = (coordinate: number): boolean =>
  coordinate === 0 || Math.abs(coordinate) >= SMALLEST;
