import type { Outcome, Problem } from '../../problem';
import type { FoamCard } from '../../yield';
import { toldOnce } from '../../words/toldOnce';
import { batchChecks } from '../batch/batchProblems';
import { isVolumeStopped } from '../batch/marks';
import { openingNow, pourNow, sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { sayOnPage } from '../words/sayOnPage';

/** A Stop of the plan in words; what is read is remembered by them. */
export interface BenchStop {
  text: string;
  hint: string;
}

/** Every Stop of the plan as it stands, each once: of the scan, of what the engine refused, of the checks, of the opening as it was worked out. None is ever left out here. */
export function benchStops(ticket: Ticket, card: Outcome<FoamCard> | undefined): BenchStop[] {
  const opening = openingNow(ticket).answer;
  const all: Problem[] = [
    ...(sizeNow(ticket).answer?.size.findings ?? []),
    ...Object.values(pourNow(ticket).answer?.refused ?? {}),
    ...(batchChecks(ticket, card) ?? []),
    ...(opening?.findings ?? []),
    ...(opening?.checks ?? []),
  ];
  const stops = toldOnce(all)
    .filter(({ status }) => status === 'stop')
    .map((stop): BenchStop => sayOnPage(stop));
  const told = isVolumeStopped(ticket) ? [...stops, VOLUME] : stops;
  return told.filter(({ text }, n) => told.findIndex((other) => other.text === text) === n);
}

const VOLUME: BenchStop = {
  text: 'Measure says Stop: the volume is not to be poured for as it stands.',
  hint: 'Read in Measure what is wrong with it.',
};
