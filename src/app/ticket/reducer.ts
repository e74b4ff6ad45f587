import type { UpAxis } from '../../geometry';
import type { Along, FileUnit } from '../../plan';
import type { Answers } from '../../worker/protocol';
import type { Ended, ScanSource } from '../../worker/engine';
import type { FactName } from '../../checks';
import type { SiliconeCard } from '../../yield';
import { textOf, type FieldName, type FieldText } from './fields';
import type { MadeField } from './madeFields';
import { forgetScan } from './forgetScan';
import { withSilicone, type Molding } from './moldState';
import { withPourWord, type PourWord } from './pourState';
import type { SampleCard } from './sampleCards';
import type { Job, Ticket } from './state';
import { withVentingWord, type VentingWord } from './ventingState';

/** What is asked about the open scan and the foam. */
export const JOBS = ['size', 'pour', 'mold', 'opening', 'bestUp', 'picture'] as const;
export type JobName = (typeof JOBS)[number];

/** What the user says. */
type Word =
  | { do: 'type'; field: FieldName; text: string }
  | { do: 'unit'; field: FieldName; unit: string }
  | { do: 'pick'; field: FieldName; text: string; value: number }
  | { do: 'up'; axis: UpAxis }
  | { do: 'scaleWay'; way: Ticket['scaleWay'] }
  | { do: 'along'; along: Along }
  | { do: 'fileUnit'; unit: FileUnit }
  | { do: 'cut'; cut: Ticket['cut'] }
  | { do: 'keep'; keep: Ticket['keep'] }
  | { do: 'foam'; foam: Partial<Ticket['foam']> }
  | { do: 'card'; card: SampleCard }
  | { do: 'molding'; molding: Partial<Molding> }
  | { do: 'kits'; text: string }
  | { do: 'moldPick'; field: MadeField; value: string }
  | { do: 'fact'; fact: FactName; value: string }
  | PourWord
  | VentingWord
  | { do: 'silicone'; card: SiliconeCard };

export type Action =
  | Word
  | { do: 'still' }
  | { do: 'opening'; source: ScanSource }
  | { do: 'opened'; source: ScanSource; ended: Ended<Answers['open']> }
  | { do: 'start'; job: JobName; key: string }
  | { do: 'ended'; job: JobName; key: string; ended: Ended<Answers[JobName]> }
  | { do: 'progress'; job: JobName | 'reading'; share: number }
  | { do: 'cancel' }
  | { do: 'wantOpening' }
  | { do: 'searchUp'; on: string }
  | { do: 'again' };

export function ticketReducer(ticket: Ticket, action: Action): Ticket {
  switch (action.do) {
    case 'still':
      return ticket.typing ? { ...ticket, typing: false } : ticket;
    case 'opening':
      return { ...cancelled(ticket), reading: { state: 'running', source: action.source } };
    case 'opened':
      return opened(ticket, action.source, action.ended);
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
    case 'searchUp':
      return {
        ...ticket,
        venting: { ...ticket.venting, searchFor: action.on },
        bestUp: askedAnew(ticket.bestUp),
      };
    case 'again':
      return { ...ticket, attempt: ticket.attempt + 1 };
    case 'type':
    case 'unit':
    case 'pick':
    case 'up':
    case 'scaleWay':
    case 'along':
    case 'fileUnit':
    case 'cut':
    case 'keep':
    case 'foam':
    case 'card':
    case 'molding':
    case 'kits':
    case 'moldPick':
    case 'fact':
    case 'pouring':
    case 'past':
    case 'pourFact':
    case 'color':
    case 'pourWay':
    case 'takeUp':
    case 'addVents':
    case 'dropVent':
    case 'silicone':
      return { ...said(ticket, action), typing: isTyped(action), movedOn: true };
  }
}

/** Letter by letter: the engine is asked when the box has stood still. */
const isTyped = (action: Word): boolean =>
  ['type', 'kits', 'past'].includes(action.do) || (action.do === 'color' && action.color.name !== undefined);

function said(ticket: Ticket, action: Word): Ticket {
  const { fields, molding, pouring } = ticket;
  switch (action.do) {
    case 'type':
      return withField(ticket, action.field, {
        ...unpicked(textOf(fields, action.field)),
        text: action.text,
      });
    case 'unit':
      return withField(ticket, action.field, {
        ...unpicked(textOf(fields, action.field)),
        unit: action.unit,
      });
    case 'pick':
      return withField(ticket, action.field, {
        ...textOf(fields, action.field),
        text: action.text,
        picked: action.value,
      });
    case 'up':
      return { ...ticket, up: { axis: action.axis, confirmed: true }, ...cutOfOtherUp(ticket, action.axis) };
    case 'scaleWay':
      return { ...ticket, scaleWay: action.way };
    case 'along':
      return { ...ticket, along: action.along };
    case 'fileUnit':
      return { ...ticket, scaleWay: 'unit', fileUnit: action.unit };
    case 'cut':
      return {
        ...ticket,
        cut: action.cut,
        ...(action.cut?.by === 'floor' ? { keep: 'above' as const } : {}),
      };
    case 'keep':
      return { ...ticket, keep: action.keep };
    case 'foam':
      return { ...ticket, foam: { ...ticket.foam, ...action.foam } };
    case 'card':
      return withCard(ticket, action.card);
    case 'molding':
      return { ...ticket, molding: { ...molding, ...action.molding } };
    case 'kits':
      return { ...ticket, molding: { ...molding, kits: action.text } };
    case 'moldPick':
      return {
        ...ticket,
        molding: { ...molding, picks: { ...molding.picks, [action.field]: action.value } },
      };
    case 'fact':
      return {
        ...ticket,
        molding: { ...molding, facts: { ...molding.facts, [action.fact]: action.value } },
      };
    case 'pouring':
    case 'past':
    case 'pourFact':
    case 'color':
      return { ...ticket, pouring: withPourWord(pouring, action) };
    case 'pourWay':
    case 'takeUp':
    case 'addVents':
    case 'dropVent':
      return { ...ticket, ...withVentingWord(ticket, action) };
    case 'silicone':
      return { ...ticket, ...withSilicone(molding, fields, action.card) };
  }
}

function withField(ticket: Ticket, name: FieldName, field: FieldText): Ticket {
  return { ...ticket, fields: { ...ticket.fields, [name]: field } };
}

const unpicked = ({ text, unit }: FieldText): FieldText => ({ text, unit });

/** A floor was found on one way up; on another it means nothing. */
function cutOfOtherUp(ticket: Ticket, axis: UpAxis): Partial<Ticket> {
  return ticket.cut?.by === 'floor' && axis !== ticket.up.axis ? { cut: undefined } : {};
}

function withCard(ticket: Ticket, card: SampleCard): Ticket {
  return {
    ...ticket,
    fields: { ...ticket.fields, ...card.texts },
    foam: { name: card.name, from: 'data-sheet', by: card.by, sample: card.key },
  };
}

/**
 * A new scan takes nothing that was measured on the last one with it, under the same name neither: a file exported again can
 * have another unit, way up or zero, and a tape kept in silence would make grams of it. The foam and the shop's figures stay.
 */
function opened(ticket: Ticket, source: ScanSource, ended: Ended<Answers['open']>): Ticket {
  if (ended.how === 'dropped') return ticket;
  if (ended.how === 'failed')
    return { ...resumed(ticket), reading: { state: 'failed', message: ended.message, source } };
  if (!ended.answer.ok)
    return { ...resumed(ticket), reading: { state: 'refused', problem: ended.answer.problem, source } };
  return {
    ...forgetScan(ticket),
    scan: { no: (ticket.scan?.no ?? 0) + 1, source, opened: ended.answer.value },
    reading: { state: 'answered', source },
    ...Object.fromEntries(JOBS.map((job) => [job, { state: 'idle' }])),
    movedOn: false,
  };
}

/** Reading another file stopped what ran for this one: it is asked again. */
const resumed = (ticket: Ticket): Ticket => ({
  ...ticket,
  attempt: ticket.attempt + (wasStopped(ticket) ? 1 : 0),
  movedOn: false,
});

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
    size: stopped(ticket.size),
    pour: stopped(ticket.pour),
    mold: stopped(ticket.mold),
    opening: stopped(ticket.opening),
    bestUp: stopped(ticket.bestUp),
    picture: stopped(ticket.picture),
  };
}

/** What was stopped or broke is asked again when it is wanted again. */
const askedAnew = <T>(job: Job<T>): Job<T> =>
  job.state === 'cancelled' || job.state === 'failed' ? { state: 'idle' } : job;

const stopped = <T>(job: Job<T>): Job<T> =>
  job.state === 'running' ? { state: 'cancelled', ...(job.key === undefined ? {} : { key: job.key }) } : job;
