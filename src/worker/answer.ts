import { readScan, type Crew, type ScanFile } from '../geometry';
import { good, type Outcome } from '../problem';
import { moldsWish, type KnownMolds } from './molds';
import { bestUpWish, openingWish } from './opening';
import { drawPicture } from './picture';
import { pourWish } from './pour';
import type { Answers, Kind, Opened, Request, SizeWish } from './protocol';
import { sizeWish, type Help, type Measured } from './sizeWish';

/** What a worker remembers: the last scan that could be read, and what was measured of it for the last wish. */
export interface Desk {
  scan?: ScanFile;
  measured?: Measured & { wish: string; known: KnownMolds };
  /** Threads that help with offsets and molds; asked for only when there are some to measure. */
  crew?: () => Crew | undefined;
}

/** Answers one request. Runs the same in a worker and in a test. */
export function answer(
  desk: Desk,
  request: Request,
  onProgress: (share: number) => void,
  shouldStop?: () => boolean,
): Answers[Kind] {
  const help: Help = { onProgress, ...(shouldStop === undefined ? {} : { shouldStop }) };
  switch (request.kind) {
    case 'open':
      return open(desk, request);
    case 'size': {
      const measured = measure(desk, request.wish, help);
      return measured.ok ? good(measured.value.sized) : measured;
    }
    case 'pour':
      return pourWish(request.ask);
    case 'mold': {
      const measured = measure(desk, request.wish, {});
      return measured.ok ? moldsWish(measured.value, request.ask, withCrew(desk, help)) : measured;
    }
    case 'opening': {
      const measured = measure(desk, request.wish, {});
      return measured.ok ? openingWish(measured.value, request.ask, withCrew(desk, help)) : measured;
    }
    case 'bestUp': {
      const measured = measure(desk, request.wish, {});
      return measured.ok ? bestUpWish(measured.value, request.ask, withCrew(desk, help)) : measured;
    }
    case 'picture':
      return drawPicture(scanOf(desk), request.place);
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
  desk.measured = { ...measured.value, wish: key, known: new Map() };
  return good(desk.measured);
}

function withCrew(desk: Desk, help: Help): Help {
  const crew = desk.crew?.();
  return crew === undefined ? help : { ...help, crew };
}

/** A file that cannot be read leaves the scan before it on the desk. */
function open(desk: Desk, { name, bytes }: { name: string; bytes: ArrayBuffer }): Outcome<Opened> {
  const scan = readScan({ bytes: new Uint8Array(bytes), name });
  if (!scan.ok) return scan;
  desk.scan = scan.value;
  delete desk.measured;
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
