import { bad, good, type Outcome } from '../../problem';
import { COORDINATE_LIMIT, tooManyTriangles, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { endWelding, startWelding, weldFacets } from './weld';

export const HEADER_BYTES = 84;
export const FACET_BYTES = 50;

/** Facets welded at a time: what is read is never held twice. */
const CHUNK_FACETS = 8192;

/** Is the file exactly as long as its facet count says? Then it is binary, whatever its header text claims. */
export function fitsBinaryStl(bytes: Uint8Array): boolean {
  return bytes.length >= HEADER_BYTES && HEADER_BYTES + FACET_BYTES * facetCount(bytes) === bytes.length;
}

/** Does the count stand for a file that somebody could have? 50 million facets are 2.5 GB. */
export const announcesFacets = (bytes: Uint8Array): boolean =>
  bytes.length >= HEADER_BYTES && facetCount(bytes) < 5e7;

/** What of a binary file is read as facets. */
export interface FacetRun {
  count: number;
  /** Little-endian, as STL asks. */
  little: boolean;
}

/**
 * So many facets from the end of the header on; the attribute of the last may be missing.
 * Errors with their byte: NO_TRIANGLES, TOO_LARGE, BAD_NUMBER, COORD_RANGE.
 */
export function readFacets(bytes: Uint8Array, { count, little }: FacetRun): Outcome<ScanFile> {
  if (count === 0) return bad('NO_TRIANGLES', {}, { byte: 80 });
  if (count > TRIANGLE_LIMIT) return tooManyTriangles(count, { byte: 80 });
  const welding = startWelding(3 * count);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const chunk = new Float32Array(9 * Math.min(count, CHUNK_FACETS));
  let largest = 0;
  for (let first = 0; first < count; first += CHUNK_FACETS) {
    const facets = Math.min(CHUNK_FACETS, count - first);
    for (let facet = first, q = 0; facet < first + facets; facet++) {
      const at = HEADER_BYTES + FACET_BYTES * facet + 12;
      for (let k = 0; k < 36; k += 4) {
        const x = view.getFloat32(at + k, little);
        const size = Math.abs(x);
        if (!(size <= COORDINATE_LIMIT)) {
          return bad(
            Number.isFinite(x) ? 'COORD_RANGE' : 'BAD_NUMBER',
            { text: String(x), facet: facet + 1, limit: COORDINATE_LIMIT },
            { byte: at + k },
          );
        }
        if (size > largest) largest = size;
        chunk[q++] = x;
      }
    }
    weldFacets(welding, new Int32Array(chunk.buffer, 0, 9 * facets));
  }
  return good({
    mesh: endWelding(welding),
    format: 'stl',
    trianglesRead: count,
    coordinateStep: float32Step(largest),
    findings: [],
  });
}

/** The count behind the header, as STL writes it or with its bytes the other way round. */
export function facetCount(bytes: Uint8Array, little = true): number {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(80, little);
}

/** Distance between neighboring float32 numbers of this size (IEEE 754: 24 bits of significand). */
export const float32Step = (size: number): number => (size > 0 ? 2 ** (Math.floor(Math.log2(size)) - 23) : 0);
