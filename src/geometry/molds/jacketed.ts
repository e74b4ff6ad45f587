import { finding, good, type Outcome, type Problem } from '../../problem';
import type { Field } from '../field/buildField';
import { measureAndCheck } from '../field/measureLevels';
import { coatFindings, coatVolumes, measuredForCoats } from './coats';
import { flangeOf, type Flange } from './flange';
import { barredPull, jacketLeaving, NO_MATTER_MM3, type PullFound } from './jacketLeaving';
import { lockedPlaces } from './lockedPlaces';
import type {
  JacketMeasure,
  MoldBody,
  MoldSettings,
  MoldShape,
  NamedVolume,
  UndercutShape,
} from './moldType';
import { outerExtents } from './outerExtents';
import type { Sculpt } from './sculpt';
import { numberIn } from './settle';
import { draftReachMm, sampleSkin, sweepBody, type Leaving, type SweptBody } from './sweptBody';

/*
 * What a brushed and a poured skin share: rubber of one thickness all round, open and square on the board, its undercuts filled so that a rigid jacket
 * draws, a flange on the board with keys, and the jacket over all of it.
 */

/** The measured parts of a skin under a jacket, mm3. */
export interface Jacketed {
  skinMm: number;
  /** Between sculpt and jacket, the fill apart. */
  skinMm3: number;
  fillMm3: number;
  flangeMm3: number;
  keysMm3: number;
  /** The same by the jacket's inside. */
  insideMm3: number;
  shape: Pick<
    MoldShape,
    | 'grown'
    | 'latticeDoubtMm3'
    | 'jacket'
    | 'undercut'
    | 'flange'
    | 'keys'
    | 'outerMm'
    | 'findings'
    | 'sculptMm3'
  >;
  coats: { toMm: number; volumeMm3: number }[];
}

/**
 * How well a fill is known: a share of it, more of one with a draft, whose cones end on edges that lie within voxels; and half of what two ways of
 * measuring the skin differ by. Chosen here, from the check values.
 */
const [FILL_SHARE, DRAFT_SHARE, FLANGE_SHARE] = [0.005, 0.03, 0.002];

/** Distances are interpolated a few grid steps beyond the jacket: so many times its reach. Chosen here. */
const BEYOND_TIMES = 1.2;

/** How far from the sculpt the field must reach. */
export function jacketedReachMm(settings: MoldSettings, { bounds }: Sculpt): number {
  const draft = draftReachMm(numberIn(settings, 'draftDegrees'), bounds.max[2] - bounds.min[2]);
  return BEYOND_TIMES * (numberIn(settings, 'skinMm') + numberIn(settings, 'jacketMm')) + draft;
}

/** @param coatsMm thickness after each coat but the last, rising. Errors: JACKET_NOT_FREE, PULL_THROUGH_BOARD, STOPPED. */
export function measureJacketed(
  { sculpt, field, pull: known }: MoldBody & { field: Field },
  settings: MoldSettings,
  coatsMm: readonly number[] = [],
): Outcome<Jacketed> {
  const barred = barredPull(settings, sculpt);
  if (barred !== undefined) return barred;
  const skinMm = numberIn(settings, 'skinMm');
  const jacketMm = numberIn(settings, 'jacketMm');
  const levels = measureAndCheck(field, [skinMm], measuredForCoats(field, coatsMm, skinMm));
  if (!levels.ok) return levels;
  const tallMm = sculpt.bounds.max[2] - sculpt.bounds.min[2];
  const draftDegrees = numberIn(settings, 'draftDegrees');
  const samples = sampleSkin(field, { skinMm, jacketMm, draftMm: draftReachMm(draftDegrees, tallMm) });
  if (!samples.ok) return samples;
  const left = jacketLeaving({ sculpt, field, pull: known }, samples.value, settings);
  if (!left.ok) return left;
  const { leaving, search, compared } = left.value;
  const { pieces } = leaving;
  const body = sweepBody(field, samples.value, { skinMm, jacketMm }, leaving);
  const grown = levels.value.volumes[0]!;
  const flangeMm = sculpt.boardMm === undefined ? 0 : numberIn(settings, 'flangeMm');
  const flange =
    sculpt.boardMm === undefined
      ? NO_FLANGE
      : flangeOf(field, body, { skinMm, jacketMm, widthMm: flangeMm, thickMm: skinMm });
  const keys = keysOn(flange, flangeMm, settings);
  const keysMm3 = keys === undefined ? 0 : (2 / 3) * Math.PI * keys.radiusMm ** 3 * keys.count;
  const fillMm3 = Math.max(0, body.filled.volumeMm3 - body.skin.volumeMm3);
  const undercut = undercutOf(field, body, { leaving, fillMm3, skinMm, search, compared });
  // Both pieces have a flange where they meet, as wide as the one on the board.
  const seamMm2 = leaving.pieces === 2 ? 2 * body.partingMm * numberIn(settings, 'flangeMm') : 0;
  const jacket: JacketMeasure = {
    pieces,
    thicknessMm: jacketMm,
    volumeMm3: body.jacketed.volumeMm3 - body.filled.volumeMm3 + flange.jacketMm3 + seamMm2 * jacketMm,
    innerMm2: body.filled.areaMm2 + flange.areaMm2 + seamMm2,
    outerMm2: body.jacketed.areaMm2 + flange.areaMm2 + seamMm2,
    partingMm: body.partingMm,
  };
  const skinMm3 = grown.volumeMm3 - sculpt.volumeMm3;
  return good({
    skinMm,
    skinMm3,
    fillMm3,
    flangeMm3: flange.rubberMm3,
    keysMm3,
    insideMm3: body.filled.volumeMm3 + flange.rubberMm3 + keysMm3,
    coats: coatVolumes(coatsMm, { skinMm, sculpt, grown, halfMm3: levels.value.checksMm3[0] }),
    shape: {
      sculptMm3: sculpt.volumeMm3,
      grown: { ...grown, skinMm },
      latticeDoubtMm3: Math.hypot(
        FLANGE_SHARE * flange.rubberMm3,
        (draftDegrees > 0 ? DRAFT_SHARE : FILL_SHARE) * fillMm3,
        (grown.volumeMm3 - body.skin.volumeMm3) / 2,
      ),
      jacket,
      undercut,
      ...(flangeMm > 0
        ? { flange: { widthMm: flangeMm, outlineMm: flange.outlineMm, areaMm2: flange.areaMm2 } }
        : {}),
      ...(keys === undefined ? {} : { keys }),
      outerMm: outerExtents(field, body, { levelMm: skinMm + jacketMm, flangeMm, skinMm }),
      findings: [
        ...undercutFindings(undercut, skinMm3, search.isTied),
        ...coatFindings(field, coatsMm, skinMm),
        ...keyFindings(keys, settings),
      ],
    },
  });
}

/** What lies under the jacket, part by part; the fill apart where other pieces fill it. `first` names what lies on the sculpt. */
export function partsUnderJacket(
  { skinMm3, fillMm3, flangeMm3, keysMm3 }: Jacketed,
  settings: MoldSettings,
  first: string,
): { parts: NamedVolume[]; voids: NamedVolume[]; voidMm3: number } {
  const isFiller = settings.fill === 'filler';
  return {
    parts: [
      { name: first, volumeMm3: skinMm3 },
      ...(isFiller ? [] : [{ name: 'undercut fill', volumeMm3: fillMm3 }]),
      { name: 'flange', volumeMm3: flangeMm3 },
      { name: 'keys', volumeMm3: keysMm3 },
    ],
    voids: isFiller ? [{ name: 'filler pieces', volumeMm3: fillMm3 }] : [],
    voidMm3: isFiller ? fillMm3 : 0,
  };
}

/** Thickest rubber: the skin, and where an undercut is filled the least side of the box around it on top. */
export const thickestIn = ({ undercut }: Pick<MoldShape, 'undercut'>, skinMm: number): number =>
  skinMm + Math.max(0, ...(undercut?.places ?? []).map(({ sizeMm }) => Math.min(...sizeMm)));

const NO_FLANGE: Flange = { rubberMm3: 0, jacketMm3: 0, outlineMm: 0, areaMm2: 0 };

/** Half-round keys along the flange: on the rubber, into the jacket. */
function keysOn(
  { outlineMm }: Flange,
  flangeMm: number,
  settings: MoldSettings,
): { count: number; radiusMm: number } | undefined {
  // A key stands on the flange: half of that at most.
  const radiusMm = Math.min(numberIn(settings, 'keyRadiusMm'), flangeMm / 2);
  if (radiusMm === 0) return undefined;
  const alongMm = outlineMm + Math.PI * flangeMm;
  return { count: Math.max(2, Math.round(alongMm / numberIn(settings, 'keySpacingMm'))), radiusMm };
}

function keyFindings(keys: { radiusMm: number } | undefined, settings: MoldSettings): Problem[] {
  const askedMm = numberIn(settings, 'keyRadiusMm');
  if (keys === undefined || keys.radiusMm >= askedMm) return [];
  return [finding('KEYS_SMALLER', 'look', { askedMm, radiusMm: keys.radiusMm })];
}

const MOST_PLACES = 6;

function undercutOf(
  field: Field,
  body: SweptBody,
  known: {
    leaving: Leaving;
    fillMm3: number;
    skinMm: number;
    search: PullFound;
    compared: UndercutShape['compared'];
  },
): UndercutShape {
  const { leaving, fillMm3, skinMm, search, compared } = known;
  return {
    pieces: leaving.pieces,
    pull: leaving.pull,
    wasSearched: search.wasSearched,
    draftDegrees: leaving.draftDegrees,
    fillMm3,
    places: fillMm3 < NO_MATTER_MM3 ? [] : lockedPlaces(field, body, skinMm, MOST_PLACES),
    compared,
  };
}

/** A fill of less than this share of the skin is nothing to think about. Chosen here. */
const LOCKED_LOOK = 0.1;

function undercutFindings(undercut: UndercutShape, skinMm3: number, isTied: boolean): Problem[] {
  const share = undercut.fillMm3 / (skinMm3 + undercut.fillMm3);
  const [x, y, z] = undercut.pull;
  const { pieces, draftDegrees } = undercut;
  const values = { fillCm3: undercut.fillMm3 / 1000, share, pieces, draftDegrees, x, y, z };
  return [
    finding('UNDERCUT_LOCKED', share > LOCKED_LOOK ? 'look' : 'fine', values),
    ...(isTied ? [finding('PULL_TIED', 'fine', values)] : []),
  ];
}
