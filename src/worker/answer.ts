import { readScan, type Crew, type ScanFile } from '../geometry';
import { planPour, type SizeOptions } from '../plan';
import { good, type Outcome } from '../problem';
import { drawPicture } from './picture';
import type { Answers, Kind, Opened, Request, SizeWish } from './protocol';
import { sizeWish } from './sizeWish';

/** The one thing a worker remembers: the last scan that could be read. */
export interface Desk {
  scan?: ScanFile;
  /** Threads that help with offsets; asked for only when there are some to measure. */
  crew?: () => Crew | undefined;
}

/** Answers one request. Runs the same in a worker and in a test. */
export function answer(desk: Desk, request: Request, onProgress: (share: number) => void): Answers[Kind] {
  switch (request.kind) {
    case 'open':
      return open(desk, request);
    case 'size':
      return sizeWish(scanOf(desk), request.wish, helpFor(desk, request.wish, onProgress));
    case 'pour':
      return planPour(request.inputs);
    case 'picture':
      return drawPicture(scanOf(desk), request.place);
  }
}

function helpFor(
  desk: Desk,
  { offsetsMm = [] }: SizeWish,
  onProgress: (share: number) => void,
): Pick<SizeOptions, 'onProgress' | 'crew'> {
  const crew = offsetsMm.length > 0 ? desk.crew?.() : undefined;
  return { onProgress, ...(crew === undefined ? {} : { crew }) };
}

/** A file that cannot be read leaves the scan before it on the desk. */
function open(desk: Desk, { name, bytes }: { name: string; bytes: ArrayBuffer }): Outcome<Opened> {
  const scan = readScan({ bytes: new Uint8Array(bytes), name });
  if (!scan.ok) return scan;
  desk.scan = scan.value;
  return good({
    format: scan.value.format,
    triangles: scan.value.trianglesRead,
    findings: scan.value.findings,
  });
}

function scanOf(desk: Desk): ScanFile {
  if (desk.scan === undefined) throw new Error('answer: expected an open scan, got none');
  return desk.scan;
}
