import type { OpeningAsk } from '../plan';
import { formatArea, formatLength, type Show } from '../units';
import { assumptionLine } from '../words/assumptionWords';
import { openingBecause } from '../words/openingBecause';
import { openingCautions } from '../words/openingCautions';
import {
  airWords,
  bandWords,
  holdWords,
  keptWords,
  offerWords,
  outWords,
  placedWords,
  placeText,
  upWords,
  VERDICT_WORDS,
} from '../words/openingPlan';
import { say } from '../words/say';
import { percent } from '../words/sentence';
import { sizeBecause } from '../words/sizeWords';
import { ventWords } from '../words/openingVents';
import { findingLine } from './findingLine';
import { line } from './moldLines';
import type { Opened } from './openingCall';
import { attitudeLines, freeLines, placeLines, thinLines, trapLines } from './openingRows';

export interface OpeningSheet {
  file: string;
  opened: Opened;
  ask: OpeningAsk;
  show: Show;
}

/** An opening for a person: checks, what was assumed and why, cautions; then part by part, the places to mark, and the verdicts last. */
export function openingText(sheet: OpeningSheet): string {
  const { file, opened, ask, show } = sheet;
  const { size, plan, findings, assumptions } = opened;
  const why = [...sizeBecause(size, show), ...openingBecause(plan, ask, show)];
  return [
    file,
    ...findings.map((problem) => findingLine(problem, show)),
    ...assumptions.map((one) => line('Assumed', assumptionLine(one, show))),
    ...why.map((text) => line('Because', text)),
    ...openingCautions(plan).map(({ when, what }) =>
      when === 'First' ? line(when, what) : line('Caution', `${when}: ${what}`),
    ),
    ...attitudeLines(plan, show),
    ...trapLines(plan, show),
    ...ventWords(plan, ask).map((text) => line('Vents', text)),
    ...thinLines(plan, show),
    ...freeLines(plan, show),
    ...placeLines(plan, show),
    ...verdictLines(sheet),
  ].join('\n');
}

/** The most important last; a Stop is the very last word. */
function verdictLines({ opened: { plan, findings }, ask, show }: OpeningSheet): string[] {
  const { opening, filling, demold } = plan;
  const stops = [
    ...new Set(findings.filter(({ status }) => status === 'stop').map((one) => say(one, show).text)),
  ];
  return [
    ...(demold === undefined
      ? [line('Out', NOT_OUT)]
      : outWords(demold, ask.rubber?.elongationAtBreak, show).map((text) => line('Out', `${text}.`))),
    line('Up', `${upWords(filling.up)}; ${holdWords(plan, show)}.`),
    line('Air', `${airWords(plan, show)}.`),
    line('Band', `${bandWords(plan, show)}.`),
    ...offerWords(plan, show).map((text) => line('Instead', `${text}.`)),
    ...keptWords(plan, show).map((text) => line('Pressure', `${text}.`)),
    line(
      'Opening',
      `${formatLength(opening.diameterMm, show)} across, ${placedWords(plan, show)}, ${placeText(opening.atMm, show)}: ${formatArea(Number(opening.areaCm2.toPrecision(3)), show)}, ${percent(opening.share)} of the largest section across it; ${VERDICT_WORDS[opening.verdict]}.`,
    ),
    ...stops.map((text) => line('Stop', `do not pour on this plan: ${text}`)),
  ];
}

const NOT_OUT =
  'not checked: the opening is not in the base and the rubber around it was not said to stay on; a mold of several parts comes off anyway; else say --rubber-stays, or --cut to give the scan a flat end that the opening lies in.';
