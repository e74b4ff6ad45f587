import type { Sized } from '../../worker/protocol';
import { sizeNow, volumeNow, type Said } from '../ticket/now';
import type { SizeWay } from '../ticket/sizingState';
import type { Ticket } from '../ticket/state';
import { fieldWords } from '../words/fieldWords';
import { isAboutScale } from './marks';

/** Why there is no volume yet: what is not read, what comes first, or where it was refused. */
export function whyNoVolume(ticket: Ticket): string {
  const volume = volumeNow(ticket);
  const { way } = ticket.sizing;
  if (volume.state === 'unread' && volume.field !== 'kits' && way !== 'scan')
    return `${fieldWords(volume.field)} is not read yet.`;
  if (way === 'scan' || (way === 'fill' && ticket.scan !== undefined))
    return whyNoScan(sizeNow(ticket), ticket.scaleWay);
  return volume.state === 'refused' ? 'Question 1 says why.' : WAITS_FOR[way];
}

const WAITS_FOR: Readonly<Record<Exclude<SizeWay, 'scan'>, string>> = {
  fill: 'The water that fills the mold comes first.',
  displace: 'What the sculpt pushes out comes first.',
  tape: 'Every side of every body comes first: one left out would be poured short.',
};

function whyNoScan(size: Said<Sized>, way: Ticket['scaleWay']): string {
  switch (size.state) {
    case 'unread':
      return size.field === 'cutHeight' || size.field === 'kits'
        ? 'The height of the cut is not read yet.'
        : `${fieldWords(size.field)} is not read yet.`;
    case 'cancelled':
      return 'Measuring was cancelled. “Measure again”, at the top, takes it up.';
    case 'failed':
      return 'A fault of ours stopped the measuring. “Try again”, at the top of Measure, takes it up.';
    case 'refused':
      if (size.problem.code === 'CUT_EMPTY') return 'Question 4 says why.';
      if (!isAboutScale(size.problem)) return 'Question 5 says why.';
      return way === 'tape' ? 'A taped length comes first.' : 'The unit of the file comes first.';
    case 'open':
    case 'working':
    case 'answered':
      return 'The questions above come first.';
  }
}
