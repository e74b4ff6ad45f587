import type { MarkedPlace, OpeningPlan } from '../../plan';
import { formatLength } from '../../units';
import { markedPlaceWords } from '../../words/openingPlaces';
import { amount, counted } from '../../words/sentence';
import { tapeCells } from '../opening/PlaceTable';
import { upWords } from '../words/openingWays';

export interface PictureFacts {
  /** Wide, deep, tall. */
  sizeMm: readonly number[] | undefined;
  /** The kind of mold that is drawn around the sculpt. */
  typeWords?: string | undefined;
  /** "62 mm (2.44 in) behind its front", where it is cut open. */
  cutWords?: string | undefined;
  isPainted: boolean;
  plan?: OpeningPlan | undefined;
}

/** What the picture shows, for who does not see it: what is drawn, how thick, and where the places are. */
export function moldPictureWords({ sizeMm, typeWords, cutWords, isPainted, plan }: PictureFacts): string {
  const what = `The sculpt, ${sizeWords(sizeMm)}`;
  const around = typeWords === undefined ? '' : `, in its mold (${typeWords})`;
  const open = cutWords === undefined ? '' : `, cut open ${cutWords}`;
  const painted = isPainted ? ', its surface in six steps of thickness' : '';
  const sentences = [`${what}${around}${open}${painted}.`];
  if (plan !== undefined) sentences.push(holeWords(plan), airWords(plan), ...thinWords(plan));
  return sentences.join(' ');
}

function sizeWords(sizeMm: PictureFacts['sizeMm']): string {
  if (sizeMm === undefined) return 'its size not known yet';
  const [wide, deep, tall] = sizeMm.map((mm) => formatLength(mm)) as [string, string, string];
  return `${wide} wide, ${deep} deep, ${tall} tall`;
}

/** "Opening 60 mm (2.36 in): 1. Vents: 2, 3." */
function holeWords({ places }: OpeningPlan): string {
  const opening = places.find(({ kind }) => kind === 'opening');
  const vents = places.filter(({ kind }) => kind === 'vent planned' || kind === 'vent advised');
  const hole =
    opening?.kind === 'opening'
      ? `The opening is ${formatLength(opening.diameterMm)} wide, number ${opening.n}`
      : 'No opening is marked';
  return vents.length === 0
    ? `${hole}; there is no vent.`
    : `${hole}; ${counted(vents.length, 'vent')}, ${numbersOf(vents)}.`;
}

function airWords({ filling, places }: OpeningPlan): string {
  const { traps, trappedCm3, up } = filling;
  const brushed = places.filter(({ kind }) => kind === 'air under silicone');
  const under = brushed.length === 0 ? '' : ` Silicone shuts in air at ${numbersOf(brushed)}.`;
  if (traps.length === 0) return `Poured ${upWords(up)}, no air pocket stays.${under}`;
  const riseMm = Number(traps[0]!.riseMm.toPrecision(2));
  const [air, which] =
    traps.length === 1
      ? [`1 air pocket of ${amount(trappedCm3.value, 2)} cm³ stays`, 'it']
      : [
          `${counted(traps.length, 'air pocket')} stay, ${amount(trappedCm3.value, 2)} cm³ together`,
          'the largest',
        ];
  return `Poured ${upWords(up)}, ${air}; ${which} rises ${formatLength(riseMm)} above the level at which it opens.${under}`;
}

function thinWords(plan: OpeningPlan): string[] {
  const { casting, places } = plan;
  if (casting === undefined) return [];
  const thin = places.filter((place) => place.kind === 'thin foam');
  const typical = `Half of the measured surface has ${thick(casting.medianMm)} of foam behind it, or more`;
  if (thin.length === 0) return [`${typical}; no thin place is marked.`];
  const least = thin.reduce((a, b) => (b.thicknessMm < a.thicknessMm ? b : a));
  const others = thin.length === 1 ? '' : ` Thin places: ${numbersOf(thin)}.`;
  return [
    `${typical}; the thinnest place, number ${least.n}, has ${thick(least.thicknessMm)}: ${tapeWords(plan, least)}.${others}`,
  ];
}

/** "up 160 (6 5/16), in from left 98 (3 7/8) and from front 40 (1 9/16), mm (in)". */
function tapeWords({ card }: OpeningPlan, { atMm }: MarkedPlace): string {
  const [up, near, across] = tapeCells(card.boundsMm, atMm);
  return `up ${up}, in from ${near} and from ${across}, mm (in)`;
}

/** Two digits are all that a wall is known to. */
const thick = (mm: number): string => formatLength(Number(mm.toPrecision(2)));

const numbersOf = (places: readonly MarkedPlace[]): string =>
  places.length === 1 ? `number ${places[0]!.n}` : `numbers ${places.map(({ n }) => n).join(', ')}`;

/** "3: Vent 2 mm (0.08 in), planned; up 160 (6 5/16), in from left 98 (3 7/8) and from front 40 (1 9/16), mm (in)". */
export function pickedWords(plan: OpeningPlan, label: string): string | undefined {
  const place = plan.places.find(({ n }) => String(n) === label);
  if (place === undefined) return undefined;
  return `${label}: ${markedPlaceWords(place)}; ${tapeWords(plan, place)}.`;
}
