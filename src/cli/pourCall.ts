import type { Assumption } from '../estimate';
import { preparePour, type PourAsk, type PreparedPour } from '../plan';
import { bad, good, type Outcome, type Problem } from '../problem';
import type { Shop } from '../job/shop';
import type { FoamCard } from '../yield';
import { BATCH_OPTIONS, batchOptions } from './batchOptions';
import { textOf, type OptionSpec, type OptionValues } from './command';
import type { Io } from './io';
import { CAVITY_OPTIONS, cavityOption, type Cavity } from './pourCavity';
import { POUR_OPTIONS, pourOptions } from './pourOptions';
import { reckonedFacts } from './pourReckoned';

/** Everything that a pour can be told: the options of `batch`, `packs` and `sheet`. */
export const POUR_CALL_OPTIONS: readonly OptionSpec[] = [
  ...BATCH_OPTIONS,
  ...POUR_OPTIONS,
  ...CAVITY_OPTIONS,
];

/** What the call asks for; the scan has been measured. */
export interface PourCall {
  ask: PourAsk;
  cavity: Cavity;
  /** The card the foam was read from. */
  card?: FoamCard;
  /** The shop whose file was named. */
  shop?: Shop;
  /** Thickness of the flat panels of the jacket. */
  panelMm?: number;
  assumptions: Assumption[];
}

/** A pour that is planned, with what stands beside the plan. */
export interface Poured {
  call: PourCall;
  prepared: PreparedPour;
  /** Of scan, cavity and pour, then the checks; each once. */
  findings: Problem[];
  assumptions: Assumption[];
}

/** Errors: BAD_CALL, and those of the shop, of the scan and of its core. */
export function pourCall(options: OptionValues, io: Io): Outcome<PourCall> {
  const batch = batchOptions(options, io);
  if (!batch.ok) return batch;
  const { choices, card, shop } = batch.value;
  const wish = pourOptions(options, card);
  if (!wish.ok) return wish;
  const { ask, panelMm } = wish.value;
  const cavity = cavityOption(options, io, shop, ask);
  if (!cavity.ok) return cavity;
  const { size, hollow, core } = cavity.value;
  const clamp = clampOf(ask.clamp, size?.shadowCm2, options);
  if (!clamp.ok) return clamp;
  return good({
    ask: {
      ...ask,
      pour: { ...choices, cavity: cavity.value.cavity },
      ...(clamp.value === undefined ? {} : { clamp: clamp.value }),
      // The skin forms on a core too, and its surface is not known.
      ...(size === undefined || hollow?.coreCm3 !== undefined ? {} : { castingCm2: size.areaCm2 }),
      ...(core === undefined ? {} : { core }),
      // A ratio typed in the other order than the card's was asked about already.
      ...(card === undefined ? {} : { facts: { ...ask.facts, ratioReversed: false } }),
    },
    cavity: cavity.value,
    ...(card === undefined ? {} : { card }),
    ...(shop === undefined ? {} : { shop }),
    ...(panelMm === undefined ? {} : { panelMm }),
    assumptions: wish.value.assumptions,
  });
}

function clampOf(
  clamp: PourAsk['clamp'],
  shadowCm2: number | undefined,
  options: OptionValues,
): Outcome<PourAsk['clamp']> {
  if (shadowCm2 === undefined) return good(clamp);
  if (clamp?.projectedCm2 !== undefined)
    return bad('BAD_CALL', {
      text: `--opens "${textOf(options, 'opens')}" and --projected-area are two answers to one question.`,
      hint: 'Give the way the mold opens, or the area of its shadow.',
    });
  return good({ ...clamp, projectedCm2: shadowCm2 });
}

/** The plan for a call. Errors: those of `preparePour`. */
export function pourFor(call: PourCall): Outcome<Poured> {
  const prepared = preparedOrOneCup(call);
  if (!prepared.ok) return prepared;
  const { pour, without } = prepared.value;
  return good({
    call,
    prepared: pour,
    findings: onceEach([
      ...call.cavity.findings,
      ...pour.findings,
      ...(without === undefined ? [] : [without]),
      ...pour.checks,
    ]),
    assumptions: [...call.cavity.assumptions, ...pour.assumptions, ...call.assumptions],
  });
}

/** What a cream time that leaves no time, or asks for more cups than can be, is told as. */
const TOO_FAST = ['POUR_WINDOW_NONE', 'CUPS_TOO_MANY'];

/**
 * The grams do not hang on the cream time: where that of the card leaves no way to pour, they are told all the same, with a Stop beside
 * them. One that is typed in the call is refused.
 */
function preparedOrOneCup(call: PourCall): Outcome<{ pour: PreparedPour; without?: Problem }> {
  const { ask, card } = call;
  const pour = preparedTwice(call, ask);
  if (pour.ok) return good({ pour: pour.value });
  const { creamS, ...foam } = ask.foam ?? {};
  if (creamS === undefined || creamS !== card?.creamS || !TOO_FAST.includes(pour.problem.code)) return pour;
  const again = preparedTwice(call, { ...ask, foam });
  return again.ok ? good({ pour: again.value, without: pour.problem }) : again;
}

/** Some facts of the checks, and the level of the pack, are only known once the pour is planned: then it is planned with them. */
function preparedTwice({ panelMm }: PourCall, ask: PourAsk): Outcome<PreparedPour> {
  const first = preparePour(ask);
  if (!first.ok) return first;
  const more = reckonedFacts(first.value, ask.facts, panelMm);
  if (!more.ok) return more;
  const level =
    ask.prices === undefined && ask.past === undefined
      ? {}
      : { packs: { list: [first.value.batch.packFactor] } };
  return preparePour({ ...ask, ...level, facts: { ...more.value, ...ask.facts } });
}

/** Batch and cups look at the same scale: what both found is told once. */
const onceEach = (findings: readonly Problem[]): Problem[] => {
  const seen = new Set<string>();
  return findings.filter((one) => {
    const key = JSON.stringify([one.code, one.status, one.values, one.at]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
};
