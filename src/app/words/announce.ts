import { amount } from '../../words/sentence';
import type { Ticket } from '../ticket/state';
import { gramsText } from '../../units';
import { sayOnPage } from './sayOnPage';

/** What a screen reader is told when the engine has an answer; focus stays where it is. */
export function announce({ scan, opening, size, pour }: Ticket): string {
  if (opening.state === 'running') return `Reading ${opening.source?.name ?? 'the scan'}.`;
  if (opening.problem !== undefined) return sayOnPage(opening.problem).text;
  if (scan === undefined) return '';
  if (size.state === 'cancelled') return 'Cancelled. Nothing that was typed is lost.';
  const batch = pour.answer?.batch;
  const problem = size.problem ?? pour.problem;
  if (problem !== undefined) return sayOnPage(problem).text;
  const volume = size.answer?.size.volumeCm3;
  if (volume === undefined) return `${scan.source.name} was read.`;
  const measured = `Volume ${amount(volume.value)} cubic centimeters.`;
  return batch === undefined
    ? measured
    : `${measured} A ${gramsText(batch.partAG, batch.stepG)} grams, B ${gramsText(batch.partBG, batch.stepG)} grams.`;
}
