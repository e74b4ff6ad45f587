import { runChecks } from '../../checks';
import {
  columnsAroundSculpt,
  findAirTraps,
  mouthOn,
  openToSky,
  watched,
  type BaseChoice,
  type Mouth,
  type Sculpt,
  type TriangleMesh,
  type Vector,
  type Watched,
} from '../../geometry';
import { bad, finding, good, type Outcome, type Problem } from '../../problem';
import { DEMOLD_RULES, RULES } from '../../yield';
import { sculptOn, type MoldBench } from '../mold/moldBench';
import { assumedIn } from './assumedIn';
import { bestAttitudes, DIRECTIONS } from './attitudes';
import { checkAsk } from './checkAsk';
import { columnStepMm } from './columnStep';
import { demoldOf } from './demold';
import { fillingOf, LEAST_TRAP_MM3, trapsIn, type LevelFill } from './filling';
import type { OpeningAsk } from './openingAsk';
import { openingFacts } from './openingFacts';
import type { OpeningPlan } from './openingPlan';
import { openingFindings } from './openingFindings';
import { openingSizeOf, type OpeningSize } from './openingSize';
import { cardViews, placesOf } from './places';
import { mouthAt, OFF_SURFACE_MM, offStatus, placeAt, placeOpening, type OpeningPlace } from './placeOpening';
import { MM3_PER_CM3 } from '../sizeDoubts';
import { castingThickness, webThickness, type ThicknessFound, type ThinSpot } from './thin';
import { ventFlowOf } from './ventFlow';

/** Shares of the work: filling and search, thickness of the casting, of the rubber, the rest. */
const SHARES = { fill: 0.35, casting: 0.75, rubber: 0.9 } as const;

/**
 * Opening, vents, attitude, thin places and demolding of one sculpt. Errors: those of `standSculpt`, of each step for what it was told, MOLD_NEEDS_SURFACE,
 * STOPPED.
 *
 * @example
 * const opened = openMoldBench(scan, { fileUnit: 'mm' });
 * const plan = opened.ok ? planOpening(opened.value.bench, { pour: { freeRiseKgM3: 96, withinS: 25, mixPaS: 1 } }) : opened;
 */
export function planOpening(bench: MoldBench, ask: OpeningAsk = {}): Outcome<OpeningPlan> {
  const sound = checkAsk(ask);
  if (!sound.ok) return sound;
  const base: BaseChoice = ask.base ?? 'open';
  const stood = sculptOn(bench, base);
  if (!stood.ok) return stood;
  const sculpt = stood.value;
  const { chain } = sculpt;
  if (chain === undefined) return bad('MOLD_NEEDS_SURFACE');
  const place = placeOpening(sculpt, ask);
  if (!place.ok) return place;
  const { solid } = bench.settled;
  const vents = ventsOn(chain, ask);
  const size = openingSizeOf(
    { chain, solid: { ...solid, ...holds(sculpt) }, place: place.value, vented: vents.atMm.length > 0 },
    ask,
  );
  if (!size.ok) return size;
  const mouth = mouthAt(chain, place.value, size.value.diameterMm);
  const filled = watched(
    part(bench, 0, SHARES.fill),
    [0, 1],
    ask.searchUp === true ? 1.6 * DIRECTIONS : 30,
    (onStep) =>
      fill(
        bench,
        { sculpt, chain, mouth, place: place.value, size: size.value, vents: vents.atMm, onStep },
        ask,
      ),
  );
  if (filled === undefined) return bad('STOPPED');
  const thick = thicknessOf(bench, base, sculpt, ask);
  if (!thick.ok) return thick;
  const { casting, rubber } = thick.value;
  const demold = watched(part(bench, SHARES.rubber, 1), [0, 1], 150, (onStep) =>
    demoldOf({ chain, mouth, thin: casting?.places ?? [] }, ask, onStep),
  );
  if (demold === undefined) return bad('STOPPED');
  if (!demold.ok) return demold;
  const ventMm = ask.ventMm ?? RULES.ventDiameter.value;
  const ventCount = vents.atMm.length + filled.filling.vents.length;
  const air = { cavityCm3: sculpt.volumeMm3 / MM3_PER_CM3, vents: ventCount, ventMm };
  const flow = ventFlowOf(size.value, air, ask);
  if (!flow.ok) return flow;
  const found = {
    opening: { ...place.value, ...size.value, findings: [] },
    ventMm,
    ...(flow.value === undefined ? {} : { ventFlow: flow.value }),
    ...filled,
    ...(casting === undefined ? {} : { casting }),
    ...(rubber === undefined ? {} : { rubber }),
    ...(demold.value === undefined ? {} : { demold: demold.value }),
  };
  const findings = [
    ...sculpt.findings,
    ...place.value.findings,
    ...vents.findings,
    ...size.value.findings,
    ...openingFindings(found, mouth, solid),
  ];
  return good({
    ...found,
    places: placesOf(chain, {
      opening: { atMm: place.value.atMm, normal: place.value.normal, size: size.value },
      planned: vents.atMm,
      ventMm,
      filling: filled.filling,
      thin: (casting?.places ?? []).filter(isWorthMarking(Math.max(THIN_LOOK_MM, casting?.thinMm ?? 0))),
      webs: (rubber?.places ?? []).filter(isWorthMarking(WEB_LOOK_MM)),
      silicone: filled.underSilicone?.traps ?? [],
    }),
    card: { boundsMm: sculpt.bounds, views: cardViews(chain), upWhenPoured: filled.filling.up },
    assumptions: [...size.value.assumptions, ...assumedIn(ask, place.value)],
    findings,
    checks: runChecks(openingFacts(found, ask), 'opening'),
  });
}

/** A spot this thin is marked on the sculpt; thicker ones stand in the list only. Rubber: chosen here, twice what tears. */
const THIN_LOOK_MM = DEMOLD_RULES.castingLook.value;
const WEB_LOOK_MM = 2 * DEMOLD_RULES.rubberStop.value;

const isWorthMarking =
  (mostMm: number) =>
  ({ thicknessMm }: ThinSpot): boolean =>
    thicknessMm < mostMm;

/** What the sculpt holds and shows, as rubber meets it. */
const holds = ({ volumeMm3, areaMm2 }: Sculpt): { volumeMm3: number; areaMm2: number } => ({
  volumeMm3,
  areaMm2,
});

/** This part of the work, for whoever looks on. */
function part({ options: { onProgress, shouldStop } }: MoldBench, from: number, to: number): Watched {
  return {
    ...(onProgress === undefined ? {} : { onProgress: (share) => onProgress(from + (to - from) * share) }),
    ...(shouldStop === undefined ? {} : { shouldStop }),
  };
}

/** Vents that are planned, moved onto the surface. */
function ventsOn(
  chain: TriangleMesh,
  { vents = [], ventMm = RULES.ventDiameter.value }: OpeningAsk,
): { atMm: Vector[]; findings: Problem[] } {
  const holes = vents.map((atMm) => mouthOn(chain, { atMm, diameterMm: ventMm }));
  return {
    atMm: holes.map(({ atMm }) => atMm),
    findings: holes.flatMap(({ movedMm, atMm }, i) =>
      movedMm > OFF_SURFACE_MM
        ? [finding('VENT_OFF_SURFACE', offStatus(movedMm), { n: i + 1, movedMm }, placeAt(atMm))]
        : [],
    ),
  };
}

interface Filled {
  filling: LevelFill;
  best?: LevelFill[];
  underSilicone?: NonNullable<OpeningPlan['underSilicone']>;
  columnStepMm: number;
}

function fill(
  bench: MoldBench,
  at: {
    sculpt: Sculpt;
    chain: TriangleMesh;
    mouth: Mouth;
    place: OpeningPlace;
    size: OpeningSize;
    vents: readonly Vector[];
    onStep: () => void;
  },
  { pourUp, searchUp }: OpeningAsk,
): Filled {
  const { sculpt, chain, mouth, place, size, vents, onStep } = at;
  const stepMm = columnStepMm(sculpt.bounds, bench.accuracy, bench.options.voxelMm);
  const up = pourUp ?? place.usualUp;
  const filling = fillingOf(chain, { mouth, up, vents, stepMm, liquidCm3: size.liquidCm3, onStep });
  const search = { mouth, today: filling.up, stepMm, liquidCm3: size.liquidCm3, onStep };
  const around =
    sculpt.boardMm === undefined
      ? undefined
      : columnsAroundSculpt(chain, { boardMm: sculpt.boardMm, stepMm });
  return {
    filling,
    ...(searchUp === true ? { best: bestAttitudes(chain, search) } : {}),
    ...(around === undefined
      ? {}
      : {
          underSilicone: trapsIn(
            findAirTraps(around, openToSky(around), { leastMm3: LEAST_TRAP_MM3, onStep }),
          ),
        }),
    columnStepMm: stepMm,
  };
}

function thicknessOf(
  bench: MoldBench,
  base: BaseChoice,
  sculpt: Sculpt,
  { thinMm }: OpeningAsk,
): Outcome<{ casting?: ThicknessFound; rubber?: ThicknessFound }> {
  const inside = castingThickness(bench, base, sculpt, {
    ...(thinMm === undefined ? {} : { thinMm }),
    ...part(bench, SHARES.fill, SHARES.casting),
  });
  if (!inside.ok) return inside.problem.code === 'STOPPED' ? inside : good({});
  const outside = webThickness(bench, base, sculpt, part(bench, SHARES.casting, SHARES.rubber));
  if (!outside.ok) return outside.problem.code === 'STOPPED' ? outside : good({ casting: inside.value });
  return good({ casting: inside.value, rubber: outside.value });
}
