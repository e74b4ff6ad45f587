import type { MarkedPlace, OpeningPlan, ThinSpot } from '../../plan';
import { formatLength } from '../../units';
import { DEMOLD_RULES } from '../../yield';
import { markedPlaceWords } from '../../words/openingPlaces';
import { amount } from '../../words/sentence';
import { cm3, LOWER_BOUND } from '../words/openingPhrases';
import { PlaceTable, type PlaceRow } from './PlaceTable';

type Of<Kind extends MarkedPlace['kind']> = Extract<MarkedPlace, { kind: Kind }>;

const ofKind = <Kind extends MarkedPlace['kind']>({ places }: OpeningPlan, ...kinds: Kind[]): Of<Kind>[] =>
  places.filter((place): place is Of<Kind> => (kinds as string[]).includes(place.kind));

/** Everything that has a place, by what it is. */
export function Spots({ plan }: { plan: OpeningPlan }) {
  const { boundsMm } = plan.card;
  return (
    <>
      <PlaceTable
        caption="Opening and vents. All numbers here are those on the place card."
        boundsMm={boundsMm}
        what="Hole"
        heads={[]}
        rows={ofKind(plan, 'opening', 'vent planned', 'vent advised').map((place) => ({
          n: place.n,
          what: markedPlaceWords(place),
          atMm: place.atMm,
          cells: [],
        }))}
      />
      <PlaceTable
        caption={`Air pockets as it is poured, the number that of the vent at their top. ${LOWER_BOUND}`}
        boundsMm={boundsMm}
        what="Air pocket"
        heads={['Air, cm³']}
        rows={pocketRows(plan)}
      />
      <PlaceTable
        caption="Air under silicone that is poured over the sculpt as it stands, filled to a level: a lower bound, thick silicone shuts in more."
        boundsMm={boundsMm}
        what="Air under silicone"
        heads={['Air, cm³']}
        rows={ofKind(plan, 'air under silicone').map(({ n, atMm, volumeCm3 }) => ({
          n,
          what: 'Brush silicone in first',
          atMm,
          cells: [amount(volumeCm3, 2)],
        }))}
      />
      <ThinTable plan={plan} />
      <PlaceTable
        caption="Rubber between two parts of the casting. Thin webs tear or move with the foam (common practice, no source)."
        boundsMm={boundsMm}
        what="Thin rubber"
        heads={['Thick']}
        rows={ofKind(plan, 'thin rubber').map(({ n, atMm, thicknessMm }) => ({
          n,
          what: 'Move the parts apart, or bed gauze in',
          atMm,
          cells: [thick(thicknessMm)],
        }))}
      />
    </>
  );
}

function ThinTable({ plan }: { plan: OpeningPlan }) {
  const { casting, card } = plan;
  if (casting === undefined) return null;
  const rows = ofKind(plan, 'thin foam').map(({ n, atMm, thicknessMm }) => {
    const spot = casting.places.find((one) => one.atMm === atMm || isAt(one, atMm));
    const where =
      spot === undefined
        ? undefined
        : `${amount(spot.areaCm2, 2)} cm², ${amount(spot.lengthMm, 2)} mm long, ${amount(spot.slenderness, 2)} times its thickness`;
    return { n, what: doWords(thicknessMm, casting.thinMm), where, atMm, cells: [thick(thicknessMm)] };
  });
  return (
    <>
      <h4>Where is the foam thin?</h4>
      {rows.length === 0 ? (
        <p className="why">
          Nowhere: the thinnest place found is{' '}
          {Number.isFinite(casting.minMm) ? formatLength(casting.minMm) : 'thicker than was looked for'}.
        </p>
      ) : (
        <PlaceTable
          caption={`Thin is under ${formatLength(casting.thinMm)}; all under ${formatLength(Math.max(casting.thinMm, DEMOLD_RULES.castingLook.value))} are listed (${DEMOLD_RULES.castingLook.from}). Edges and wide flat faces, ${amount(100 * casting.notMeasuredShare, 2)} % of the surface, have no thickness.`}
          boundsMm={card.boundsMm}
          what="What to do"
          heads={['Thick']}
          rows={rows}
        />
      )}
    </>
  );
}

const isAt = (spot: ThinSpot, atMm: ThinSpot['atMm']): boolean => spot.atMm.every((c, k) => c === atMm[k]);

const doWords = (thicknessMm: number, thinMm: number): string =>
  thicknessMm < thinMm
    ? 'Make it thicker, or free it with a finger first'
    : 'Free it first, then pull slowly';

/** Two digits are all that a wall is known to. */
const thick = (mm: number): string => formatLength(Number(mm.toPrecision(2)));

/** A pocket has the number of the vent that lets it out. */
function pocketRows(plan: OpeningPlan): PlaceRow[] {
  const vents = ofKind(plan, 'vent planned', 'vent advised');
  return plan.filling.traps.map(({ topMm, volumeCm3, doubtCm3, riseMm }) => ({
    n: vents.find(({ atMm }) => Math.hypot(...atMm.map((c, k) => c - topMm[k]!)) < 1)?.n,
    // Below a twentieth it is within the digits shown.
    what: `Rises ${formatLength(riseMm)} above its way out`,
    where: doubtCm3 < 0.05 * volumeCm3 ? undefined : `give or take ${cm3(doubtCm3)}`,
    atMm: topMm,
    cells: [amount(volumeCm3, 2)],
  }));
}
