import { pourNow, sizeNow, volumeNow, type KnownVolume } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { gramsText } from '../../units';
import { sayOnPage } from './sayOnPage';
import { volumeText } from './wayWords';

/** What a screen reader is told when the engine has an answer; focus stays where it is. Never a number of before. */
export function announce(ticket: Ticket): string {
  const { scan, reading, movedOn } = ticket;
  const file = reading.source?.name ?? 'the scan';
  if (reading.state === 'running') return `Reading ${file}.`;
  if (!movedOn && reading.problem !== undefined) return `${file}: ${sayOnPage(reading.problem).text}`;
  if (!movedOn && reading.message !== undefined) return `${file}: ${faultWords(reading.message)}`;
  return scan === undefined ? aboutVolume(ticket) : aboutScan(ticket, scan.source.name);
}

/** Without a scan: volume and grams together, once both stand. */
function aboutVolume(ticket: Ticket): string {
  const { answer: known } = volumeNow(ticket);
  const pour = pourNow(ticket);
  if (ticket.typing || known === undefined || pour.state === 'working') return '';
  return [measuredWords(known), aboutPour(pour)].join(' ').trimEnd();
}

const measuredWords = ({ by, volumeCm3 }: KnownVolume): string =>
  `Volume ${volumeText(by, volumeCm3).value} cubic centimeters.`;

export const faultWords = (message: string): string =>
  `A fault of ours: ${message}${/[.!?]$/.test(message) ? '' : '.'} The file is untouched.`;

function aboutScan(ticket: Ticket, name: string): string {
  const size = sizeNow(ticket);
  const pour = pourNow(ticket);
  switch (size.state) {
    case 'cancelled':
      return `${name}: measuring was cancelled. Nothing that was typed is lost.`;
    case 'failed':
      return `${name}: ${faultWords(size.message)}`;
    case 'refused':
      return `${name}: ${sayOnPage(size.problem).text}`;
    case 'answered': {
      if (pour.state === 'working') return '';
      const known = volumeNow(ticket).answer;
      const measured = known === undefined ? '' : `${name}: ${measuredWords(known)}`;
      return [measured, aboutPour(pour)].join(' ').trimEnd();
    }
    case 'open':
    case 'unread':
    case 'working':
      return ticket.movedOn ? '' : `${name} was read.`;
  }
}

function aboutPour(pour: ReturnType<typeof pourNow>): string {
  if (pour.problem !== undefined) return sayOnPage(pour.problem).text;
  if (pour.message !== undefined) return faultWords(pour.message);
  if (pour.answer === undefined) return '';
  const { cups, batch } = pour.answer;
  const of = cups.cups.length > 1 ? `${cups.cups.length} cups: ` : '';
  return `${of}A ${gramsText(cups.partAG, batch.stepG)} grams, B ${gramsText(cups.partBG, batch.stepG)} grams.`;
}
