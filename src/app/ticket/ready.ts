import { isSame as isSameJson, type Json } from '../../job/json';
import type { PourAsk } from '../../plan';
import { castingWishOf, given, pourByOf } from './moldWishes';
import { pourToldNow, sizeNow, volumeNow } from './now';
import { displacedRead, fillRead, isFillSaid, tapedRead } from './wayReads';
import { pourAskOf } from './pourWishes';
import type { Ticket } from './state';
import { sizeWishOf } from './wishes';

/** Whether the pour as it stands is the one that was said to be ready. */
export type ReadyNow = 'not said' | 'ready' | 'changed';

/** What "ready" was said for: all that was told of the pour, and what its volume was asked with. */
interface SaidFor {
  told: PourAsk;
  volume: object;
}

/**
 * To be kept with the word "ready": undefined while there is no pour to say it of. Nothing in it counts scans or tries, so it is the same after the
 * page was closed; nor is the day in it, which is no input.
 */
export function readyKeyOf(ticket: Ticket): string | undefined {
  const told = pourToldNow(ticket);
  return told === undefined
    ? undefined
    : JSON.stringify({ told: undated(told), volume: volumeAskOf(ticket) } satisfies SaidFor);
}

/** Derived, so that taking a change back makes the pour ready again. While its volume is worked out anew, the same questions count as the same answer. */
export function readyNow(ticket: Ticket): ReadyNow {
  const { readyFor } = ticket.pouring;
  if (readyFor === '') return 'not said';
  const saidFor = readSaid(readyFor);
  if (saidFor === undefined) return 'changed';
  const told = pourToldNow(ticket) ?? toldMeanwhile(ticket, saidFor);
  return told !== undefined && isSame(undated(told), undated(saidFor.told)) ? 'ready' : 'changed';
}

function toldMeanwhile(ticket: Ticket, { told, volume }: SaidFor): PourAsk | undefined {
  const { cavity, uScanToMoldShare } = told.pour;
  const isKnown = [sizeNow(ticket), volumeNow(ticket)].some(({ state }) => state === 'answered');
  if (isKnown || !isSame(volumeAskOf(ticket), volume)) return undefined;
  if (!('volumeCm3' in cavity)) return undefined;
  return pourAskOf(ticket, {
    volumeCm3: cavity.volumeCm3 as Estimate,
    ...given('uScanToMoldShare', uScanToMoldShare),
  });
}

type Estimate = Parameters<typeof pourAskOf>[1]['volumeCm3'];

const volumeAskOf = (ticket: Ticket): object => ({
  scan: ticket.scanId,
  size: sizeWishOf(ticket),
  by: pourByOf(ticket),
  casting: castingWishOf(ticket),
  ...wayAskOf(ticket),
});

/** Nothing more where a scan alone tells the volume: so it was kept before there were other ways. */
function wayAskOf(ticket: Ticket): object {
  const { way } = ticket.sizing;
  return {
    ...(isFillSaid(ticket) && !ticket.filling.isAside ? { fill: fillRead(ticket) } : {}),
    ...(way === 'displace' ? { displaced: displacedRead(ticket) } : {}),
    ...(way === 'tape' ? { taped: tapedRead(ticket) } : {}),
  };
}

/** Without the day, and without the surface of the scan: no grams hang on it, and beside a water fill it comes later. */
function undated({ castingCm2: _surface, ...told }: PourAsk): PourAsk {
  const { today: _, ...facts } = told.facts ?? {};
  return { ...told, facts };
}

/** As a file has it: what is undefined is not there. */
const isSame = (one: object, other: object): boolean => isSameJson(asJson(one), asJson(other));
const asJson = (value: object): Json => JSON.parse(JSON.stringify(value)) as Json;

function readSaid(text: string): SaidFor | undefined {
  try {
    const said = JSON.parse(text) as Partial<SaidFor>;
    return said.told?.pour?.cavity === undefined || said.volume === undefined ? undefined : (said as SaidFor);
  } catch {
    return undefined;
  }
}
