import { boundsOf, readScanWith, upLooks, type Crew, type ScanFile } from '../geometry';
import { good, type Outcome } from '../problem';
import { bodyWish } from './bodyWish';
import { coreWish } from './core';
import { ladderWish } from './ladder';
import { moldsWish, type KnownMolds } from './molds';
import { bestUpWish, openingWish } from './opening';
import { paintWish } from './paint';
import { pickOn } from './pick';
import { drawPicture, picturePoints } from './picture';
import { pourWish } from './pour';
import type { Answers, Kind, Opened, Request, SizeWish } from './protocol';
import { cutFacesWish, shellsWish } from './shells';
import { sizeWish, type Help, type Measured } from './sizeWish';

/** What a worker remembers: the last scan that could be read, and what was measured of it for the last wish. */
export interface Desk {
  scan?: ScanFile;
  measured?: Measured & { wish: string; body: string; known: KnownMolds };
  /** Threads that help with offsets and molds; asked for only when there are some to measure. */
  crew?: () => Crew | undefined;
  /** The reader of 3MF, once an archive was given: it is fetched only then. */
  read3mf?: (bytes: Uint8Array) => Outcome<ScanFile>;
}

/** Answers one request. Runs the same in a worker and in a test. */
export function answer(
  desk: Desk,
  request: Request,
  onProgress: (share: number) => void,
  shouldStop?: () => boolean,
): Answers[Kind] {
  const help: Help = { onProgress, ...(shouldStop === undefined ? {} : { shouldStop }) };
  /** Most works take what was measured, what is asked of it, and who helps. */
  const asked = <A, T>(
    { wish, ask }: { wish: SizeWish; ask: A },
    work: (measured: NonNullable<Desk['measured']>, ask: A, crewed: Help) => Outcome<T>,
  ): Outcome<T> => onBench(desk, wish, help, (measured, crewed) => work(measured, ask, crewed));
  switch (request.kind) {
    case 'open':
      return open(desk, request);
    case 'size': {
      const measured = measure(desk, request.wish, help);
      return measured.ok ? good(measured.value.sized) : measured;
    }
    case 'pour':
      return pourWish(request.ask);
    case 'mold':
      return asked(request, moldsWish);
    case 'opening':
      return asked(request, openingWish);
    case 'bestUp':
      return asked(request, bestUpWish);
    case 'core':
      return onBench(desk, request.wish, help, (measured, crewed) =>
        coreWish(measured, readOn(desk, request), crewed),
      );
    case 'picture':
      return drawPicture(scanOf(desk), request.place);
    case 'ladder':
      return asked(request, ladderWish);
    case 'shells':
      return asked(request, shellsWish);
    case 'cutFaces':
      return asked(request, cutFacesWish);
    case 'paint':
      return onBench(desk, request.wish, help, (measured, crewed) => {
        // On the very points that are drawn: a picture is drawn the same whenever it is asked for.
        const points = picturePoints(scanOf(desk), request.place);
        return points.ok ? paintWish(measured, points.value, crewed, request.base) : points;
      });
    case 'pick':
      return pickOn(scanOf(desk), request.ray, request.place);
  }
}

/** Measured once for a wish: its molds, and another thickness of them, are worked out on the same bench. */
function measure(desk: Desk, wish: SizeWish, help: Help): Outcome<NonNullable<Desk['measured']>> {
  const scan = scanOf(desk);
  const key = JSON.stringify(wish);
  if (desk.measured?.wish === key) return good(desk.measured);
  const hasOffsets = (wish.offsetsMm ?? []).length > 0;
  const measured = sizeWish(scan, wish, hasOffsets ? withCrew(desk, help) : help);
  if (!measured.ok) return measured;
  const body = JSON.stringify(bodyWish(wish));
  const { sized, bench } = measured.value;
  // Another check of the scale leaves the body as it was, and all that was worked out on it.
  const before = desk.measured?.body === body ? desk.measured : { bench, known: new Map() };
  desk.measured = { sized, bench: before.bench, known: before.known, wish: key, body };
  return good(desk.measured);
}

/** What was measured of the same body, whatever checks its scale. */
function benchOf(desk: Desk, wish: SizeWish): Outcome<NonNullable<Desk['measured']>> {
  const isSame = desk.measured?.body === JSON.stringify(bodyWish(wish));
  return isSame ? good(desk.measured!) : measure(desk, wish, {});
}

/** Works on what was measured of a body, with every thread that helps. Errors: those of the size, and of the work. */
function onBench<T>(
  desk: Desk,
  wish: SizeWish,
  help: Help,
  work: (measured: NonNullable<Desk['measured']>, crewed: Help) => Outcome<T>,
): Outcome<T> {
  const measured = benchOf(desk, wish);
  return measured.ok ? work(measured.value, withCrew(desk, help)) : measured;
}

function withCrew(desk: Desk, help: Help): Help {
  const crew = desk.crew?.();
  return crew === undefined ? help : { ...help, crew };
}

/** A file that cannot be read leaves the scan before it on the desk. */
function open(desk: Desk, { name, bytes }: { name: string; bytes: ArrayBuffer }): Outcome<Opened> {
  const scan = readOn(desk, { name, bytes });
  if (!scan.ok) return scan;
  desk.scan = scan.value;
  delete desk.measured;
  return good({
    format: scan.value.format,
    ...(scan.value.unit === undefined ? {} : { ownUnit: scan.value.unit }),
    triangles: scan.value.trianglesRead,
    findings: scan.value.findings,
    boundsUnits: boundsOf(scan.value.mesh),
    looks: upLooks(scan.value.mesh),
  });
}

function readOn(
  { read3mf = missing3mf }: Desk,
  { name, bytes }: { name: string; bytes: ArrayBuffer },
): Outcome<ScanFile> {
  return readScanWith(read3mf, { bytes: new Uint8Array(bytes), name });
}

function missing3mf(): never {
  throw new Error('answer: expected the reader of 3MF for an archive, got none');
}

function scanOf(desk: Desk): ScanFile {
  if (desk.scan === undefined) throw new Error('answer: expected an open scan, got none');
  return desk.scan;
}
