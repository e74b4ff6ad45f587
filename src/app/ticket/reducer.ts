import type { UpAxis } from '../../geometry';
import type { Along, FileUnit } from '../../plan';
import type { Answers } from '../../worker/protocol';
import type { Ended, ScanSource } from '../../worker/engine';
import type { FactName } from '../../checks';
import type { SiliconeCard } from '../../yield';
import { textOf, type FieldName, type Fields, type FieldText } from './fields';
import { MADE_FIELDS, type MadeField } from './madeFields';
import { FACTS_OF_SCAN, withSilicone, type Molding } from './moldState';
import { POUR_FIELDS_OF_SCAN } from './pourFields';
import { POUR_FACTS_OF_SCAN, withPourWord, type PourWord } from './pourState';
import type { SampleCard } from './sampleCards';
import { newTicket, type Job, type Ticket } from './state';

/** What is asked about the open scan and the foam. */
export const JOBS = ['size', 'pour', 'mold', 'picture'] as const;
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
  | { do: 'silicone'; card: SiliconeCard };

export type Action =
  | Word
  | { do: 'still' }
  | { do: 'opening'; source: ScanSource }
  | { do: 'opened'; source: ScanSource; ended: Ended<Answers['open']> }
  | { do: 'start'; job: JobName; key: string }
  | { do: 'ended'; job: JobName; key: string; ended: Ended<Answers[JobName]> }
  | { do: 'progress'; job: JobName | 'opening'; share: number }
  | { do: 'cancel' }
  | { do: 'again' };

export function ticketReducer(ticket: Ticket, action: Action): Ticket {
  switch (action.do) {
    case 'still':
      return ticket.typing ? { ...ticket, typing: false } : ticket;
    case 'opening':
      return { ...cancelled(ticket), opening: { state: 'running', source: action.source } };
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
    return { ...resumed(ticket), opening: { state: 'failed', message: ended.message, source } };
  if (!ended.answer.ok)
    return { ...resumed(ticket), opening: { state: 'refused', problem: ended.answer.problem, source } };
  return {
    ...forgetScan(ticket),
    scan: { no: (ticket.scan?.no ?? 0) + 1, source, opened: ended.answer.value },
    opening: { state: 'answered', source },
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

function forgetScan(ticket: Ticket): Ticket {
  const { up, scaleWay, along, fileUnit, cut, keep, fields } = newTicket();
  return {
    ...ticket,
    up,
    scaleWay,
    along,
    fileUnit,
    cut,
    keep,
    fields: {
      ...ticket.fields,
      ...(Object.fromEntries(FIELDS_OF_SCAN.map((name) => [name, textOf(fields, name)])) as Partial<Fields>),
    } as Fields,
    molding: {
      ...ticket.molding,
      facts: {
        ...ticket.molding.facts,
        ...Object.fromEntries(FACTS_OF_SCAN.map((fact) => [fact, ''])),
      },
    },
    pouring: {
      ...ticket.pouring,
      facts: {
        ...ticket.pouring.facts,
        ...Object.fromEntries(POUR_FACTS_OF_SCAN.map((fact) => [fact, ''])),
      },
    },
  };
}

const FIELDS_OF_SCAN: readonly FieldName[] = [
  'tape',
  'cutHeight',
  'sculptMass',
  'measuredShrink',
  'barrierDry',
  'bondFace',
  ...POUR_FIELDS_OF_SCAN,
  ...[...MADE_FIELDS].filter(([, { isOfScan }]) => isOfScan).map(([name]) => name),
];

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

function progressed(ticket: Ticket, job: JobName | 'opening', share: number): Ticket {
  return ticket[job].state === 'running' ? { ...ticket, [job]: { ...ticket[job], share } } : ticket;
}

function cancelled(ticket: Ticket): Ticket {
  return {
    ...ticket,
    opening: { ...ticket.opening, ...stopped(ticket.opening) },
    size: stopped(ticket.size),
    pour: stopped(ticket.pour),
    mold: stopped(ticket.mold),
    picture: stopped(ticket.picture),
  };
}

const stopped = <T>(job: Job<T>): Job<T> =>
  job.state === 'running' ? { state: 'cancelled', ...(job.key === undefined ? {} : { key: job.key }) } : job;
