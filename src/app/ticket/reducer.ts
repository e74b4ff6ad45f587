import type { Answers } from '../../worker/protocol';
import type { Ended } from '../../worker/engine';
import { isSame } from '../../job/json';
import { merge } from '../../job/merge';
import type { Piece } from '../../job/piece';
import { forgetScan } from './forgetScan';
import { NO_HISTORY, runEnded, stepped, withStep, type What } from './history';
import type { KeptSource } from './keptSource';
import { isTyped, isWord, runOf, said, type Word } from './said';
import { wordsOfPiece } from './record';
import { withScanIn } from './sizingState';
import { newTicket, type Job, type Looking, type OpenScan, type Ticket } from './state';
import { wordsOf, type Words } from './words';

/** What is asked about the open scan and the foam. */
export const JOBS = [
  'size',
  'pour',
  'mold',
  'opening',
  'bestUp',
  'picture',
  'ladder',
  'shells',
  'cutFaces',
  'paint',
] as const;
export type JobName = (typeof JOBS)[number];

export type Action = Word | Act;

/** What is done to the ticket, beside what is said on it. */
type Act =
  | { do: 'still' }
  | { do: 'opening'; source: KeptSource }
  | { do: 'opened'; source: KeptSource; ended: Ended<Answers['open']> }
  | { do: 'reopened'; source: KeptSource; ended: Ended<Answers['open']> }
  /** A kept piece is taken up. */
  | { do: 'load'; piece: Piece }
  /** This is what is kept now, by this tab or another. */
  | { do: 'adopt'; piece: Piece; wrote?: Wrote }
  | { do: 'undo' }
  | { do: 'redo' }
  /** What is typed next is undone by itself. */
  | { do: 'pause' }
  | { do: 'start'; job: JobName; key: string }
  | { do: 'ended'; job: JobName; key: string; ended: Ended<Answers[JobName]> }
  | { do: 'progress'; job: JobName | 'reading'; share: number }
  | { do: 'cancel' }
  | { do: 'wantOpening' }
  /** What of the molds is looked at: nothing is worked out for eyes that are elsewhere. */
  | { do: 'look'; how: Partial<Looking> }
  | { do: 'searchUp'; on: string }
  | { do: 'again' };

/** What this tab itself has written: what it had said, upon what it knew to be kept. */
interface Wrote {
  base: Piece;
  mine: Piece;
}

export const ticketReducer = (ticket: Ticket, action: Action): Ticket =>
  isWord(action) ? heard(ticket, action) : acted(ticket, action);

function acted(ticket: Ticket, action: Act): Ticket {
  switch (action.do) {
    case 'still':
      return ticket.typing ? { ...ticket, typing: false } : ticket;
    case 'opening':
      return { ...cancelled(ticket), reading: { state: 'running', source: action.source } };
    case 'opened':
      return opened(ticket, action.source, action.ended);
    case 'reopened':
      return reopened(ticket, action.source, action.ended);
    case 'load':
      return { ...loaded(ticket, wordsOfPiece(action.piece).words), base: action.piece };
    case 'adopt':
      return adopted(ticket, action.piece, action.wrote);
    case 'undo':
    case 'redo':
      return wentBack(ticket, action.do);
    case 'pause':
      return { ...ticket, history: runEnded(ticket.history) };
    case 'start':
      return { ...ticket, [action.job]: started<unknown>(ticket[action.job], action.key) };
    case 'ended':
      return { ...ticket, [action.job]: endedJob<unknown>(ticket[action.job], action) };
    case 'progress':
      return progressed(ticket, action.job, action.share);
    case 'cancel':
      return cancelled(ticket);
    case 'wantOpening':
      return {
        ...ticket,
        venting: { ...ticket.venting, isWanted: true },
        opening: askedAnew(ticket.opening),
      };
    case 'look':
      return { ...ticket, looking: { ...ticket.looking, ...action.how } };
    case 'searchUp':
      return {
        ...ticket,
        venting: { ...ticket.venting, searchFor: action.on },
        bestUp: askedAnew(ticket.bestUp),
      };
    case 'again':
      return { ...ticket, attempt: ticket.attempt + 1 };
  }
}

/** What the user said, and how to take it back. */
function heard(ticket: Ticket, word: Word): Ticket {
  const now = { ...said(ticket, word), typing: isTyped(word), movedOn: true };
  const what: What = { do: word.do, ...('field' in word ? { field: word.field } : {}) };
  return withHistory(ticket, now, what, runOf(word));
}

const withHistory = (before: Ticket, now: Ticket, what: What, run?: string): Ticket => ({
  ...now,
  history: withStep(before.history, { what, run, before: wordsOf(before), after: wordsOf(now) }),
});

/** Another piece, or another casting of it: what the engine has read of the same scan stays. */
function loaded(ticket: Ticket, words: Words): Ticket {
  const isSameScan = words.scanId !== undefined && words.scanId === ticket.scan?.source.id;
  return isSameScan
    ? { ...ticket, ...words, history: NO_HISTORY, typing: false, movedOn: true }
    : { ...newTicket(), scanNo: ticket.scanNo, ...words };
}

/**
 * What is kept now, with what was said here since. Said since is what differs from what this ticket last knew to be kept; of its
 * own write, from what it wrote: a box typed back meanwhile to what stood there before would otherwise seem untouched.
 */
function adopted(ticket: Ticket, piece: Piece, wrote: Wrote | undefined): Ticket {
  if (ticket.base === undefined) return ticket;
  const known = wordsOfPiece(ticket.base).words;
  const base =
    wrote === undefined
      ? known
      : merge({ base: wordsOfPiece(wrote.base).words, mine: wordsOfPiece(wrote.mine).words, theirs: known });
  const words = merge({ base, mine: wordsOf(ticket), theirs: wordsOfPiece(piece).words });
  return { ...spoken(ticket, isSame(words, wordsOf(ticket)) ? wordsOf(ticket) : words), base: piece };
}

function wentBack(ticket: Ticket, way: 'undo' | 'redo'): Ticket {
  const back = stepped(ticket.history, wordsOf(ticket), way);
  return back === undefined
    ? ticket
    : { ...spoken(ticket, back.words), history: back.history, typing: false, movedOn: true };
}

/** The ticket with other words. Where they are of another scan, what was worked out on this one is let go. */
function spoken(ticket: Ticket, words: Words): Ticket {
  const now = { ...ticket, ...words };
  return words.scanId === ticket.scanId
    ? now
    : { ...cancelled(now), scan: undefined, reading: { state: 'idle' }, ...IDLE };
}

/**
 * A new scan takes nothing that was measured on the last one with it, under the same name neither: a file exported again can
 * have another unit, way up or zero, and a tape kept in silence would make grams of it. The foam and the shop's figures stay.
 */
function opened(ticket: Ticket, source: KeptSource, ended: Ended<Answers['open']>): Ticket {
  if (ended.how === 'dropped') return ticket;
  const scan = openScanOf(ticket, source, ended);
  if (scan === undefined) return { ...resumed(ticket), reading: readingOf(source, ended) };
  const now: Ticket = {
    ...forgetScan(ticket),
    sizing: withScanIn(ticket.sizing),
    scanId: source.id,
    scan,
    scanNo: scan.no,
    reading: { state: 'answered', source },
    ...IDLE,
    movedOn: false,
  };
  return withHistory(ticket, now, { do: 'scan' });
}

/** The scan of what stands on the ticket is read once more: nothing said is forgotten. */
function reopened(ticket: Ticket, source: KeptSource, ended: Ended<Answers['open']>): Ticket {
  if (ended.how === 'dropped') return ticket;
  const scan = openScanOf(ticket, source, ended);
  return {
    ...ticket,
    scan,
    scanNo: scan?.no ?? ticket.scanNo,
    reading: readingOf(source, ended),
    ...IDLE,
    movedOn: false,
  };
}

function openScanOf(
  { scanNo }: Ticket,
  source: KeptSource,
  ended: Ended<Answers['open']>,
): OpenScan | undefined {
  return ended.how === 'answered' && ended.answer.ok
    ? { no: scanNo + 1, source, opened: ended.answer.value }
    : undefined;
}

function readingOf(source: KeptSource, ended: Ended<Answers['open']>): Ticket['reading'] {
  if (ended.how === 'failed') return { state: 'failed', message: ended.message, source };
  if (ended.how === 'answered' && !ended.answer.ok)
    return { state: 'refused', problem: ended.answer.problem, source };
  return { state: 'answered', source };
}

/** Reading another file stopped what ran for this one: it is asked again. */
const resumed = (ticket: Ticket): Ticket => ({
  ...ticket,
  attempt: ticket.attempt + (wasStopped(ticket) ? 1 : 0),
  movedOn: false,
});

const IDLE = Object.fromEntries(JOBS.map((job) => [job, { state: 'idle' }])) as Record<
  JobName,
  { state: 'idle' }
>;

const wasStopped = (ticket: Ticket): boolean => JOBS.some((job) => ticket[job].state === 'cancelled');

function started<T>(job: Job<T>, key: string): Job<T> {
  const before = job.answer ?? job.before;
  return { state: 'running', key, ...(before === undefined ? {} : { before }) };
}

/** An answer to anything but the newest wish is no answer. */
function endedJob<T>(job: Job<T>, { key, ended }: { key: string; ended: Ended<Answers[JobName]> }): Job<T> {
  if (ended.how === 'dropped' || job.key !== key || job.state !== 'running') return job;
  if (ended.how === 'failed') return { state: 'failed', key, message: ended.message };
  if (!ended.answer.ok) return { state: 'refused', key, problem: ended.answer.problem };
  return { state: 'answered', key, answer: ended.answer.value as T };
}

function progressed(ticket: Ticket, job: JobName | 'reading', share: number): Ticket {
  return ticket[job].state === 'running' ? { ...ticket, [job]: { ...ticket[job], share } } : ticket;
}

function cancelled(ticket: Ticket): Ticket {
  return {
    ...ticket,
    reading: { ...ticket.reading, ...stopped(ticket.reading) },
    ...stoppedJobs(ticket),
  };
}

const stoppedJobs = (ticket: Ticket): Pick<Ticket, JobName> =>
  Object.fromEntries(JOBS.map((job) => [job, stopped<unknown>(ticket[job])])) as unknown as Pick<
    Ticket,
    JobName
  >;

/** What was stopped or broke is asked again when it is wanted again. */
const askedAnew = <T>(job: Job<T>): Job<T> =>
  job.state === 'cancelled' || job.state === 'failed' ? { state: 'idle' } : job;

const stopped = <T>(job: Job<T>): Job<T> =>
  job.state === 'running' ? { state: 'cancelled', ...(job.key === undefined ? {} : { key: job.key }) } : job;
