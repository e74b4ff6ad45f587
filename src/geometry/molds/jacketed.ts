import { finding, good, type Outcome, type Problem } from '../../problem';
import type { Field } from '../field/buildField';
import { measureAndCheck } from '../field/measureLevels';
import type { Samples } from '../field/sampleField';
import type { Vector } from '../measure/planeFrame';
import { flangeOf, type Flange } from './flange';
import { lockedPlaces } from './lockedPlaces';
import type { JacketMeasure, MoldBody, MoldSettings, MoldShape, UndercutShape } from './moldType';
import { outerExtents } from './outerExtents';
import { findPull, roughlyLocked } from './pullSearch';
import type { Sculpt } from './sculpt';
import { numberIn, partsIn, readPull } from './settle';
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

/** How well a fill is known: a share of it, and half of what two ways of measuring the skin differ by. Chosen here, from the check values. */
const FILL_SHARE = 0.005;

/** How far from the sculpt the field must reach. */
export function jacketedReachMm(settings: MoldSettings, { bounds }: Sculpt): number {
  const draft = draftReachMm(numberIn(settings, 'draftDegrees'), bounds.max[2] - bounds.min[2]);
  return numberIn(settings, 'skinMm') + numberIn(settings, 'jacketMm') + draft;
}

/** @param coatsMm thicknesses between the sculpt and the whole skin to be measured too, rising. Errors: STOPPED. */
export function measureJacketed(
  { sculpt, field, pull: known }: MoldBody & { field: Field },
  settings: MoldSettings,
  coatsMm: readonly number[] = [],
): Outcome<Jacketed> {
  const skinMm = numberIn(settings, 'skinMm');
  const jacketMm = numberIn(settings, 'jacketMm');
  const levels = measureAndCheck(field, [skinMm], coatsMm);
  if (!levels.ok) return levels;
  const tallMm = sculpt.bounds.max[2] - sculpt.bounds.min[2];
  const draftDegrees = numberIn(settings, 'draftDegrees');
  const samples = sampleSkin(field, { skinMm, jacketMm, draftMm: draftReachMm(draftDegrees, tallMm) });
  if (!samples.ok) return samples;
  const pieces = partsIn(settings);
  const search = pullOf(field, samples.value, { settings, skinMm, pieces, sculpt, known });
  const leaving: Leaving = { pull: search.pull, pieces, draftDegrees };
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
  const undercut = undercutOf(field, body, samples.value, { leaving, fillMm3, skinMm, search });
  const seamMm3 = leaving.pieces === 2 ? 2 * body.partingMm * flangeMm * jacketMm : 0;
  const jacket: JacketMeasure = {
    pieces,
    thicknessMm: jacketMm,
    volumeMm3: body.jacketed.volumeMm3 - body.filled.volumeMm3 + flange.jacketMm3 + seamMm3,
    innerMm2: body.filled.areaMm2 + flange.areaMm2,
    outerMm2: body.jacketed.areaMm2 + flange.areaMm2,
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
    coats: coatVolumes([...coatsMm, skinMm], [...levels.value.checksMm3, grown.volumeMm3], sculpt.volumeMm3),
    shape: {
      sculptMm3: sculpt.volumeMm3,
      grown: { ...grown, skinMm },
      latticeDoubtMm3: Math.hypot(FILL_SHARE * fillMm3, (grown.volumeMm3 - body.skin.volumeMm3) / 2),
      jacket,
      undercut,
      ...(flangeMm > 0
        ? { flange: { widthMm: flangeMm, outlineMm: flange.outlineMm, areaMm2: flange.areaMm2 } }
        : {}),
      ...(keys === undefined ? {} : { keys }),
      outerMm: outerExtents(field, body, { levelMm: skinMm + jacketMm, flangeMm, skinMm }),
      findings: undercutFindings(undercut, skinMm3, search.isTied),
    },
  });
}

const NO_FLANGE: Flange = { rubberMm3: 0, jacketMm3: 0, outlineMm: 0, areaMm2: 0 };

/** Each coat by what it brings. */
function coatVolumes(
  toMm: readonly number[],
  volumesMm3: readonly number[],
  sculptMm3: number,
): { toMm: number; volumeMm3: number }[] {
  return toMm.map((mm, i) => ({
    toMm: mm,
    volumeMm3: volumesMm3[i]! - (i === 0 ? sculptMm3 : volumesMm3[i - 1]!),
  }));
}

interface Search {
  pull: Vector;
  wasSearched: boolean;
  isTied: boolean;
}

function pullOf(
  field: Field,
  samples: Samples,
  wish: { settings: MoldSettings; skinMm: number; pieces: 1 | 2; sculpt: Sculpt; known: Vector | undefined },
): Search {
  const { settings, skinMm, pieces, sculpt, known } = wish;
  const given = settings.pull === 'best' ? undefined : readPull(String(settings.pull));
  if (given !== undefined) return { pull: given, wasSearched: false, isTied: false };
  if (known !== undefined) return { pull: known, wasSearched: true, isTied: false };
  const found = findPull(field, samples, { skinMm, pieces, onBoard: sculpt.boardMm !== undefined });
  return { pull: found.pull, wasSearched: true, isTied: found.isTied };
}

/** Half-round keys along the flange: on the rubber, into the jacket. */
function keysOn(
  { outlineMm }: Flange,
  flangeMm: number,
  settings: MoldSettings,
): { count: number; radiusMm: number } | undefined {
  const radiusMm = numberIn(settings, 'keyRadiusMm');
  if (flangeMm === 0 || radiusMm === 0) return undefined;
  const alongMm = outlineMm + Math.PI * flangeMm;
  return { count: Math.max(2, Math.round(alongMm / numberIn(settings, 'keySpacingMm'))), radiusMm };
}

const COMPARED: readonly Vector[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const MOST_PLACES = 6;

function undercutOf(
  field: Field,
  body: SweptBody,
  samples: Samples,
  known: { leaving: Leaving; fillMm3: number; skinMm: number; search: Search },
): UndercutShape {
  const { leaving, fillMm3, skinMm, search } = known;
  const onBoard = body.sheared.height !== undefined;
  const compared = COMPARED.map((pull) => {
    // On a board two pieces go apart level and one goes up.
    const pieces: 1 | 2 = onBoard ? (pull[2] === 0 ? 2 : 1) : leaving.pieces;
    const fill = roughlyLocked(field, samples, { ...leaving, skinMm, pull, pieces });
    return { pull, pieces, fillMm3: Math.max(0, fill) };
  });
  return {
    pieces: leaving.pieces,
    pull: leaving.pull,
    wasSearched: search.wasSearched,
    draftDegrees: leaving.draftDegrees,
    fillMm3,
    places: lockedPlaces(field, body, skinMm, MOST_PLACES),
    compared,
  };
}

/** A fill of less than this share of the skin is nothing to think about. Chosen here. */
const LOCKED_LOOK = 0.1;

function undercutFindings(undercut: UndercutShape, skinMm3: number, isTied: boolean): Problem[] {
  const share = undercut.fillMm3 / (skinMm3 + undercut.fillMm3);
  const [x, y, z] = undercut.pull;
  const values = { fillCm3: undercut.fillMm3 / 1000, share, pieces: undercut.pieces, x, y, z };
  return [
    finding('UNDERCUT_LOCKED', share > LOCKED_LOOK ? 'look' : 'fine', values),
    ...(isTied ? [finding('PULL_TIED', 'fine', values)] : []),
  ];
}
