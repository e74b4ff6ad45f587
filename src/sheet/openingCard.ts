import type { OpeningPlan } from '../plan';
import type { PlaceCard } from '../plan/placeCard';
import type { Problem } from '../problem';
import type { Show } from '../units';
import { DOT_OF_KIND, markedPlaceWords } from '../words/openingPlaces';
import { say } from '../words/say';
import { stopWords } from './stops';
import { placeCard, type CardWarning, type PlaceCardMeta } from './placeCard';

/** What the plan does not know; `findings`: those beside the plan, as those of the scan. */
export type OpeningCardMeta = Omit<PlaceCardMeta, 'warnings'> & { findings?: readonly Problem[] };

/**
 * The place card of an opening: outlines, numbered places and their tape distances. A Stop of the plan, of its checks or of the scan stands on it, and
 * so does a band that has no width. Same plan and meta, same bytes.
 *
 * @example
 * const plan = planOpening(bench);
 * const html = plan.ok ? openingCard(plan.value, { title: 'Quay Troll head', version: '0.1.0' }) : '';
 */
export function openingCard(plan: OpeningPlan, { findings = [], ...meta }: OpeningCardMeta): string {
  const { show = 'both' } = meta;
  const card: PlaceCard = {
    ...plan.card,
    dots: plan.places.map((place) => ({
      n: place.n,
      kind: DOT_OF_KIND[place.kind],
      atMm: place.atMm,
      normal: place.normal,
      text: markedPlaceWords(place, show),
    })),
  };
  return placeCard(card, {
    ...meta,
    warnings: warningsOf([...findings, ...plan.findings, ...plan.checks], show),
  });
}

function warningsOf(findings: readonly Problem[], show: Show): CardWarning[] {
  const stops = stopWords(findings, show);
  const empty = new Set(
    findings
      .filter(({ code, status }) => code === 'OPENING_BAND_EMPTY' && status !== 'stop')
      .map((one) => say(one, show).text),
  );
  return [
    ...(stops === '' ? [] : [{ lead: 'Stop, do not pour on this plan:', text: stops }]),
    ...[...empty].map((text) => ({ lead: 'Opening:', text })),
  ];
}
