import { tapeFrom } from '../geometry';
import type { Demold, MarkedPlace, OpeningPlan, ThinSpot, Trap } from '../plan';
import { lengthText } from '../sheet/placeCardTable';
import { formatArea, formatLength, formatVolume, type Show } from '../units';
import { airOfTiltCm3, attitudeRows, type AttitudeRow } from '../words/openingAttitudes';
import { markedPlaceWords } from '../words/openingPlaces';
import { LOWER_BOUND, placeText, upWords } from '../words/openingPlan';
import { SIDE_WORDS } from '../words/placeWords';
import { amount, counted, percent } from '../words/sentence';
import { smallVolume as few } from '../words/smallVolume';
import { aligned, line } from './moldLines';

/** Today's way up against the best others; only where they were looked for. */
export function attitudeLines(plan: OpeningPlan, show: Show): string[] {
  const rows = attitudeRows(plan);
  if (rows === undefined) return [];
  const one = oneOf(show);
  const cells = rows.map(({ fill, isToday, isBest }) => [
    upWords(fill.up),
    `${amount(Math.round(fill.tiltDegrees))}\u00b0`,
    few(fill.trappedCm3.value, one),
    area(fill.flat.areaCm2, one),
    amount(fill.vents.length),
    formatVolume(fill.holdCm3, one),
    [...(isToday ? ['today'] : []), ...(isBest ? ['best'] : [])].join(', '),
  ]);
  const head = ['Up when poured', 'Tilt', 'Air', 'Level', 'Vents', 'Holds', ''];
  const [today] = rows;
  return [
    line(
      'Ways up',
      today!.isBest
        ? `no other way up is better (${LOWER_BOUND}); vents that are planned count for today's alone.`
        : `another is better: the row marked best (${LOWER_BOUND}); vents that are planned count for today's alone.`,
    ),
    ...tableLines([head, ...cells]),
    ...levelLines(rows, show),
  ];
}

/** Where a tilt only trades a level ceiling for pockets. */
function levelLines(rows: readonly AttitudeRow[], show: Show): string[] {
  const airCm3 = airOfTiltCm3(rows);
  const today = rows.find(({ isToday }) => isToday)?.fill.flat.areaCm2;
  if (airCm3 === undefined || today === undefined) return [];
  return [
    line(
      'Level',
      `today's way up has ${area(today, show)} of level ceiling; each other way listed has less of it and shuts in ${few(airCm3, show)} of air or more (${LOWER_BOUND}): rather than tilt, set several small vents across the level part and around its rim (common practice, no source).`,
    ),
  ];
}

/** Each pocket: top, the level it shuts at, what it keeps. */
export function trapLines({ filling, underSilicone, places }: OpeningPlan, show: Show): string[] {
  const flat = filling.flat.largest;
  return [
    ...pockets('Air pocket', filling.traps, marked(places, 'vent advised'), show),
    ...(filling.traps.length === 0 ? [] : [line('', `Air: ${LOWER_BOUND}.`)]),
    ...(flat === undefined
      ? []
      : [
          line(
            'Ceiling',
            `within 10\u00b0 of level: ${area(filling.flat.areaCm2, show)} in all, the largest of ${area(flat.areaCm2, show)} about ${placeText(flat.atMm, show)}.`,
          ),
        ]),
    ...(underSilicone === undefined || underSilicone.traps.length === 0
      ? []
      : [
          line(
            'Silicone',
            `poured over the standing sculpt it shuts in ${few(underSilicone.trappedCm3.value, show)} of air in ${counted(underSilicone.traps.length, 'place')}: brush a detail coat in there first.`,
          ),
          ...pockets('Brush first', underSilicone.traps, marked(places, 'air under silicone'), show),
        ]),
  ];
}

/** By the number of the place at its top, where that is marked. */
const pockets = (
  label: string,
  traps: readonly Trap[],
  places: OpeningPlan['places'],
  show: Show,
): string[] =>
  traps.map(({ topMm, saddleMm, volumeCm3, riseMm }) => {
    const n = places.find(({ atMm }) => distance(atMm, topMm) < AT_TOP_MM)?.n;
    const mark = n === undefined ? '' : `${n}: `;
    return line(
      label,
      `${mark}${few(volumeCm3, show)}, ${length(riseMm, show)} high, its top at ${placeText(topMm, show)}; it shuts at ${placeText(saddleMm, show)}.`,
    );
  });

/** A vent this near to the top of a pocket is its vent. Chosen here. */
const AT_TOP_MM = 1;

const distance = (one: readonly number[], other: readonly number[]): number =>
  Math.hypot(...one.map((c, k) => c - other[k]!));

/** Thin foam and thin rubber that are marked, by their number; where none is, the thinnest place. */
export const thinLines = ({ casting, rubber, places }: OpeningPlan, show: Show): string[] => [
  ...spots('Foam', casting?.places ?? [], marked(places, 'thin foam'), show),
  ...spots('Rubber', rubber?.places ?? [], marked(places, 'thin rubber'), show),
];

const marked = (places: OpeningPlan['places'], kind: MarkedPlace['kind']): OpeningPlan['places'] =>
  places.filter((place) => place.kind === kind);

function spots(
  label: string,
  found: readonly ThinSpot[],
  places: OpeningPlan['places'],
  show: Show,
): string[] {
  const numbered = found.flatMap((spot) => {
    const place = places.find(({ atMm }) => distance(atMm, spot.atMm) === 0);
    return place === undefined ? [] : [line(label, `${place.n}: ${spotWords(spot, show)}`)];
  });
  const [thinnest] = found;
  return numbered.length > 0 || thinnest === undefined
    ? numbered
    : [line(label, `none is thin; the thinnest: ${spotWords(thinnest, show)}`)];
}

const spotWords = ({ atMm, thicknessMm, lengthMm, slenderness }: ThinSpot, show: Show): string =>
  `${length(thicknessMm, show)} thick, ${length(lengthMm, show)} long (${amount(slenderness, 2)} times its thickness), at ${placeText(atMm, show)}.`;

/** What is freed before the pull. */
export function freeLines({ demold }: OpeningPlan, show: Show): string[] {
  if (demold === undefined) return [];
  const { worst, mouth, locked, caught } = demold;
  const same = worst.neckMm === mouth.neckMm && worst.bulbMm === mouth.bulbMm;
  return [
    line('Tightest', squeezeWords(worst, show)),
    ...(same ? [] : [line('At opening', squeezeWords(mouth, show))]),
    ...locked.map((one) => line('Free first', `locked part: ${squeezeWords(one, show)}`)),
    ...caught.map(({ atMm, kind, reachMm }) =>
      line(
        'Free first',
        `${kind === 'hook' ? 'a part that points back to the opening' : 'rubber that runs between two parts'}, ${length(reachMm, show)} deep, at ${placeText(atMm, show)}.`,
      ),
    ),
  ];
}

const squeezeWords = ({ neckAtMm, neckMm, bulbAtMm, bulbMm, stretch }: Demold['worst'], show: Show): string =>
  `${length(bulbMm, show)} around at ${placeText(bulbAtMm, show)} has to pass ${length(neckMm, show)} around at ${placeText(neckAtMm, show)}: ${stretch <= 0 ? 'no stretch' : `stretch ${percent(stretch)}`}.`;

/** Every place that is marked on the sculpt, a numbered row each, as the place card has it. */
export function placeLines({ places, card }: OpeningPlan, show: Show): string[] {
  const cells = places.map((place) => {
    const { upMm, inMm, side, acrossMm, acrossSide } = tapeFrom(card.boundsMm, place.atMm);
    return [
      String(place.n),
      lengthText(upMm, show),
      `${SIDE_WORDS[side]} ${lengthText(inMm, show)}`,
      `${SIDE_WORDS[acrossSide]} ${lengthText(acrossMm, show)}`,
      markedPlaceWords(place, show),
    ];
  });
  const unit = { both: 'mm (in)', metric: 'mm', us: 'in' }[show];
  const head = [
    'No.',
    `Up from base, ${unit}`,
    `In from nearest side, ${unit}`,
    `and in from, ${unit}`,
    'What',
  ];
  return [
    line(
      'Mark',
      'these places on the sculpt with a tape; left and right are its own; --card prints the page.',
    ),
    ...tableLines([head, ...cells]),
  ];
}

const tableLines = (rows: readonly (readonly string[])[]): string[] => aligned(rows).map((row) => `  ${row}`);

const oneOf = (show: Show): Show => (show === 'us' ? 'us' : 'metric');
const length = (mm: number, show: Show): string => formatLength(Number(mm.toPrecision(3)), show);
const area = (cm2: number, show: Show): string => formatArea(Number(cm2.toPrecision(3)), show);
