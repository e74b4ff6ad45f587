import type { UpAxis } from '../../geometry';
import type { Along, FileUnit } from '../../plan';
import type { Answers, Kind } from '../../worker/protocol';
import type { Ended, ScanSource } from '../../worker/engine';
import type { FieldName, FieldText } from './fields';
import type { SampleCard } from './sampleCards';
import { newTicket, type Job, type Ticket } from './state';

export type Action =
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
  | { do: 'opening'; source: ScanSource }
  | { do: 'opened'; source: ScanSource; ended: Ended<Answers['open']> }
  | { do: 'start'; job: Exclude<Kind, 'open'> }
  | { do: 'ended'; job: Exclude<Kind, 'open'>; ended: Ended<Answers[Exclude<Kind, 'open'>]> }
  | { do: 'forget'; job: Exclude<Kind, 'open'> }
  | { do: 'progress'; job: Kind; share: number }
  | { do: 'cancel' }
  | { do: 'again' };

export function ticketReducer(ticket: Ticket, action: Action): Ticket {
  switch (action.do) {
    case 'type':
      return withField(ticket, action.field, { ...unpicked(ticket.fields[action.field]), text: action.text });
    case 'unit':
      return withField(ticket, action.field, { ...unpicked(ticket.fields[action.field]), unit: action.unit });
    case 'pick':
      return withField(ticket, action.field, {
        ...ticket.fields[action.field],
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
    case 'opening':
      return { ...cancelled(ticket), opening: { state: 'running', source: action.source } };
    case 'opened':
      return opened(ticket, action.source, action.ended);
    case 'start':
      return { ...ticket, [action.job]: started<unknown>(ticket[action.job]) };
    case 'ended':
      return { ...ticket, [action.job]: endedJob<unknown>(ticket[action.job], action.ended) };
    case 'forget':
      return { ...ticket, [action.job]: { state: 'idle' } };
    case 'progress':
      return progressed(ticket, action.job, action.share);
    case 'cancel':
      return cancelled(ticket);
    case 'again':
      return { ...ticket, attempt: ticket.attempt + 1 };
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

/** A scan of another name takes its own tape and way up with it; the foam and the shop's figures stay. */
function opened(ticket: Ticket, source: ScanSource, ended: Ended<Answers['open']>): Ticket {
  if (ended.how === 'dropped') return ticket;
  if (ended.how === 'failed')
    return { ...resumed(ticket), opening: { state: 'failed', message: ended.message, source } };
  if (!ended.answer.ok)
    return { ...resumed(ticket), opening: { state: 'refused', problem: ended.answer.problem, source } };
  const same = ticket.scan === undefined || ticket.scan.source.name === source.name;
  return {
    ...(same ? ticket : forgetScan(ticket)),
    scan: { source, opened: ended.answer.value },
    opening: { state: 'answered', source },
    size: { state: 'idle' },
    picture: { state: 'idle' },
    pour: { state: 'idle' },
  };
}

/** Reading another file stopped what ran for this one: it is asked again. */
const resumed = (ticket: Ticket): Ticket =>
  ticket.size.state === 'cancelled' || ticket.picture.state === 'cancelled'
    ? { ...ticket, attempt: ticket.attempt + 1 }
    : ticket;

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
    fields: { ...ticket.fields, tape: fields.tape, cutHeight: fields.cutHeight },
  };
}

const started = <T>(job: Job<T>): Job<T> => ({
  state: 'running',
  ...(job.answer === undefined ? {} : { answer: job.answer }),
  ...(job.problem === undefined ? {} : { problem: job.problem }),
});

function endedJob<T>(job: Job<T>, ended: Ended<Answers[Kind]>): Job<T> {
  if (ended.how === 'dropped') return job;
  if (ended.how === 'failed') return { state: 'failed', message: ended.message };
  if (!ended.answer.ok) return { state: 'refused', problem: ended.answer.problem };
  return { state: 'answered', answer: ended.answer.value as T };
}

function progressed(ticket: Ticket, kind: Kind, share: number): Ticket {
  const job = kind === 'open' ? 'opening' : kind;
  return ticket[job].state === 'running' ? { ...ticket, [job]: { ...ticket[job], share } } : ticket;
}

/** What ran is cancelled, and an answer that no longer fits what was said goes with it. */
function cancelled(ticket: Ticket): Ticket {
  const end = <T>(job: Job<T>): Job<T> => (job.state === 'running' ? { state: 'cancelled' } : job);
  return {
    ...ticket,
    opening: { ...ticket.opening, ...end(ticket.opening) },
    size: end(ticket.size),
    pour: end(ticket.pour),
    picture: end(ticket.picture),
  };
}
