import { bad, good, type Outcome } from '../../problem';
import { divergenceVolume } from '../measure/pieces';
import { COORDINATE_LIMIT, TRIANGLE_LIMIT, type ScanFile } from './scanFile';
import { isBelievable, isWhole, withSlips, type Slip } from './slips';
import { facetCount, FACET_BYTES, fitsBinaryStl, HEADER_BYTES, readFacets, type FacetRun } from './stlBinary';

/** Bytes of a facet that hold no shape: its attribute, at the end. */
const ATTRIBUTE_BYTES = 2;

/**
 * Binary STL: 80 bytes of header, a little-endian facet count, 50 bytes a facet (normal, three corners, attribute).
 * Stored normals and attributes are not used: the order of the corners says which side is out. Where count and length do not fit, the file is
 * read only if its facets prove themselves in one way alone and no further body can be missing, and a finding says in which.
 * Errors with their byte: TRUNCATED, COUNT_MISMATCH, and those of `readFacets`.
 */
export function readBinaryStl(bytes: Uint8Array): Outcome<ScanFile> {
  if (bytes.length < HEADER_BYTES) {
    return bad('TRUNCATED', { bytes: bytes.length, expectedBytes: HEADER_BYTES }, { byte: bytes.length });
  }
  const count = facetCount(bytes);
  if (fitsBinaryStl(bytes)) return readFacets(bytes, { count, little: true });
  const whole = waysToRead(bytes, count).flatMap(({ slip, ...run }) => {
    const scan = readFacets(bytes, run);
    return scan.ok && scan.value.mesh.positions.every(isBelievable) && isWhole(scan.value.mesh)
      ? [{ scan: scan.value, slip }]
      : [];
  });
  const volumes = whole.map(({ scan }) => divergenceVolume(scan.mesh));
  const [first] = whole;
  if (first === undefined) return misfit(bytes, count);
  // Two ways that both close and differ: which of them is meant cannot be told.
  if (volumes.some((volume) => volume !== volumes[0])) return misfit(bytes, count);
  if (first.slip.code === 'TRAILING_DATA' && goesOn(bytes, HEADER_BYTES + FACET_BYTES * count))
    return misfit(bytes, count);
  return good(withSlips(first.scan, new Map([[first.slip.code, { ...first.slip, count: 1 }]])));
}

/** What the file may mean: as many facets as announced, with more behind them; all there are; or all of them, big-endian. */
function waysToRead(bytes: Uint8Array, said: number): (FacetRun & { slip: Slip })[] {
  const body = bytes.length - HEADER_BYTES;
  const present = Math.floor((body + ATTRIBUTE_BYTES) / FACET_BYTES);
  const over = body - FACET_BYTES * present;
  const ways: (FacetRun & { slip: Slip })[] = [];
  if (said > 0 && FACET_BYTES * said < body) {
    const found = { bytes: body - FACET_BYTES * said };
    ways.push({ count: said, little: true, slip: slip('TRAILING_DATA', found) });
  }
  if (over > 0) return ways;
  const found = { facetsSaid: said, facetsPresent: present };
  if (!lacksBody(said, present))
    ways.push({
      count: present,
      little: true,
      slip: said === present ? slip('TRUNCATED', { bytes: -over }) : slip('COUNT_MISMATCH', found),
    });
  if (facetCount(bytes, false) === present)
    ways.push({ count: present, little: false, slip: slip('ENDIAN', { said: LITTLE, is: BIG }) });
  return ways;
}

/** The fewest facets that close a body: those of a tetrahedron. */
const FEWEST_OF_BODY = 4;

/** May a whole body be cut off, however well the rest closes? A count of more than is ever read stands for none. */
const lacksBody = (said: number, present: number): boolean =>
  said >= present + FEWEST_OF_BODY && said <= TRIANGLE_LIMIT;

/**
 * Does what follows the facets announced read as another file, or half of it or more as facets? Then something of the piece may be in it. Of bytes
 * that mean something else few read so. Chosen here.
 */
function goesOn(bytes: Uint8Array, from: number): boolean {
  const rest = bytes.subarray(from);
  if (fitsBinaryStl(rest)) return true;
  const view = new DataView(rest.buffer, rest.byteOffset, rest.byteLength);
  let [facets, others] = [0, 0];
  for (let at = 12; at + 36 <= rest.length; at += FACET_BYTES)
    if (isFacet(view, at)) facets++;
    else others++;
  return facets > 0 && facets >= others;
}

/** Three corners in three places, none of them unbelievable? */
function isFacet(view: DataView, at: number): boolean {
  const corners = [0, 12, 24].map((k) => [0, 4, 8].map((axis) => view.getFloat32(at + k + axis, true)));
  if (!corners.every((corner) => corner.every((x) => isBelievable(x) && Math.abs(x) <= COORDINATE_LIMIT)))
    return false;
  return new Set(corners.map((corner) => corner.join(' '))).size === 3;
}

const [LITTLE, BIG] = ['little-endian', 'big-endian'];

const slip = (code: Slip['code'], found: Slip['found']): Slip => ({ code, values: found, found });

function misfit(bytes: Uint8Array, count: number): Outcome<never> {
  const expectedBytes = HEADER_BYTES + FACET_BYTES * count;
  const facetsPresent = (bytes.length - HEADER_BYTES) / FACET_BYTES;
  const code =
    expectedBytes > bytes.length && facetsPresent < count && count < 1e8 ? 'TRUNCATED' : 'COUNT_MISMATCH';
  return bad(
    code,
    { bytes: bytes.length, expectedBytes, facetsSaid: count, facetsPresent: Math.floor(facetsPresent) },
    { byte: code === 'TRUNCATED' ? bytes.length : Math.min(expectedBytes, 80) },
  );
}
