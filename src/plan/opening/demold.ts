import {
  dot,
  lockedLimbs,
  sectionsOut,
  slitDepthMm,
  slitLine,
  worstPassage,
  type Mouth,
  type Passage,
  type TriangleMesh,
  type Vector,
} from '../../geometry';
import type { Estimate } from '../../estimate';
import { finding, good, type Outcome, type Problem } from '../../problem';
import { allowedStretch, DEMOLD_RULES, slitLengthMm, stretchNeeded } from '../../yield';
import type { OpeningAsk } from './openingAsk';
import { placeAt } from './placeOpening';
import type { ThinSpot } from './thin';

/** A ring of rubber and what has to pass it, with the stretch that takes. */
export interface Squeeze {
  neckAtMm: Vector;
  neckMm: number;
  bulbAtMm: Vector;
  bulbMm: number;
  /** Below 0 it passes without a stretch. */
  stretch: number;
}

/** Taking the casting out of a mold of one piece, along the way the opening faces. */
export interface Demold {
  way: Vector;
  worst: Squeeze;
  mouth: Squeeze;
  allowedStretch: Estimate;
  /** Share of the casting, seen along the way, that has rubber before it. */
  undercutShare: number;
  /** Only where the rubber does not stretch that far. */
  slit?: {
    /** Along the surface, as far as the last tight place at least, and long enough for the girth. */
    lengthMm: number;
    /** By the girths alone, were the tight place at the opening itself. */
    byGirthMm: number;
    /** Where it does least harm: along this line, on this side; absent where no line was found. */
    line?: { side: Vector; fromMm: Vector; toMm: Vector; isClear: boolean; isTied: boolean };
  };
  /** Parts with a neck of their own that the rubber cannot pass, and limbs it is caught behind. */
  locked: Squeeze[];
  caught: { atMm: Vector; kind: 'hook' | 'through'; reachMm: number }[];
  findings: Problem[];
}

/** A slit stays this far from a thin place, in mm. Chosen here. */
const OFF_THIN_MM = 10;

/** Undefined where the body does not end flat at the opening and no opening was given around which the rubber stays on. Errors: those of `stretchNeeded`. */
export function demoldOf(
  { chain, mouth, thin }: { chain: TriangleMesh; mouth: Mouth; thin: readonly ThinSpot[] },
  { rubber = {} }: OpeningAsk,
  onStep: () => void,
): Outcome<Demold | undefined> {
  const { squash = DEMOLD_RULES.foamSquash.value, staysOn = false, elongationAtBreak } = rubber;
  const opening = { atMm: mouth.atMm, diameterMm: mouth.diameterMm, staysOn };
  const sections = sectionsOut(chain, { way: mouth.normal, opening, onStep });
  const isInEnd = sections.hasFlat && depthOf(chain, mouth) <= IN_END_MM;
  if (!isInEnd && sections.opening === undefined) return good(undefined);
  const allowed = allowedStretch(elongationAtBreak === undefined ? {} : { elongationAtBreak });
  if (!allowed.ok) return allowed;
  const allow = allowed.value.value;
  const squeezed = (passage: Passage): Outcome<Squeeze> => squeezeOf(passage, squash);
  const passages = worstPassage(sections);
  const worst = squeezed(passages.worst);
  if (!worst.ok) return worst;
  const mouthSqueeze = squeezed(passages.opening ?? passages.mouth);
  if (!mouthSqueeze.ok) return mouthSqueeze;
  const slit =
    worst.value.stretch > allow
      ? slitFor(sections, passages.worst, { allow, squash, thin })
      : good(undefined);
  if (!slit.ok) return slit;
  const limbs = lockedLimbs(sections, { ratio: (1 + allow) / (1 - squash) });
  const locked = limbs.necked.filter(({ isWhole }) => !isWhole).map(squeezed);
  const parts = locked.flatMap((one) => (one.ok && one.value.stretch > allow ? [one.value] : []));
  return good({
    way: sections.way,
    worst: worst.value,
    mouth: mouthSqueeze.value,
    allowedStretch: allowed.value,
    undercutShare: sections.undercutShare,
    ...(slit.value === undefined ? {} : { slit: slit.value }),
    locked: parts,
    caught: limbs.caught.map(({ atMm, kind, reachMm }) => ({ atMm, kind, reachMm })),
    findings: parts.map(({ neckAtMm, neckMm, bulbMm, stretch }, i) =>
      finding('LOCKED_PIECE', 'look', { n: i + 1, neckMm, bulbMm, stretchShare: stretch }, placeAt(neckAtMm)),
    ),
  });
}

/** An opening this far behind the outermost point, mm, is not in that end. Chosen here. */
const IN_END_MM = 3;

/** How far the opening lies behind the outermost point of the casting, along the way it faces. */
function depthOf({ positions: p, triangles }: TriangleMesh, { atMm, normal }: Mouth): number {
  let most = -Infinity;
  for (let c = 0; c < triangles.length; c++) {
    const v = 3 * triangles[c]!;
    most = Math.max(most, dot([p[v]! - atMm[0], p[v + 1]! - atMm[1], p[v + 2]! - atMm[2]], normal));
  }
  return most;
}

function squeezeOf({ neckAtMm, neckMm, bulbAtMm, bulbMm }: Passage, squash: number): Outcome<Squeeze> {
  const stretch = stretchNeeded({ widestMm: bulbMm, tightestMm: neckMm, squash });
  return stretch.ok ? good({ neckAtMm, neckMm, bulbAtMm, bulbMm, stretch: stretch.value }) : stretch;
}

function slitFor(
  sections: ReturnType<typeof sectionsOut>,
  worst: Passage,
  { allow, squash, thin }: { allow: number; squash: number; thin: readonly ThinSpot[] },
): Outcome<Demold['slit']> {
  const length = slitLengthMm({ widestMm: worst.bulbMm, tightestMm: worst.neckMm, allow, squash });
  if (!length.ok) return length;
  const line = slitLine(sections, {
    until: { alongMm: slitDepthMm(sections, (1 + allow) / (1 - squash)) },
    keepOff: thin.map(({ atMm }) => ({ atMm, radiusMm: OFF_THIN_MM })),
  });
  if (line === undefined) return good({ lengthMm: length.value, byGirthMm: length.value });
  const { side, fromMm, toMm, isClear, isTied } = line;
  return good({
    lengthMm: Math.max(length.value, line.lengthMm),
    byGirthMm: length.value,
    line: { side, fromMm, toMm, isClear, isTied },
  });
}
