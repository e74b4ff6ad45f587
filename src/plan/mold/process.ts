import type { Assumption } from '../../estimate';
import type { MoldShape } from '../../geometry';
import { finding, good, type Outcome, type Problem } from '../../problem';
import {
  degasFindings,
  fillFindings,
  fillTimeMin,
  sagFindings,
  SILICONE_RULES,
  tubeFlowMlS,
  wallPressureKPa,
} from '../../yield';
import { MM3_PER_CM3 } from '../sizeDoubts';
import type { SiliconeWish, WorkWish } from './moldWish';
import type { SiliconeNeed } from './siliconeFor';

/** How the silicone goes in: what its largest mix needs of a container, and whether coats stay and the gap fills in time. */
export interface Process {
  /** Container for the largest mix, with room to stir it or to froth under vacuum. */
  containerCm3: number;
  /** Minutes that the gap takes to fill through the funnel, running full. */
  fillMin?: number;
  assumptions: Assumption[];
  findings: Problem[];
}

/** Errors: INPUT_OUT_OF_BOUNDS, FLOW_NOT_LAMINAR. */
export function processOf(
  shape: MoldShape,
  need: SiliconeNeed,
  { silicone, work }: { silicone: SiliconeWish; work: WorkWish },
): Outcome<Process> {
  const largestG = Math.max(...need.pours.map(({ order }) => order.mix.totalG));
  const swell = work.degassed === true ? SILICONE_RULES.frothRatio : SILICONE_RULES.stirRatio;
  const containerCm3 = (swell.value * largestG * 1000) / need.densityKgM3;
  const vacuum =
    work.degassed === true && work.degasPressureKPa !== undefined ? degasFindings(work.degasPressureKPa) : [];
  const filled = fillOf(shape, need, silicone);
  if (!filled.ok) return filled;
  return good({
    containerCm3,
    ...(filled.value.fillMin === undefined ? {} : { fillMin: filled.value.fillMin }),
    assumptions: filled.value.assumptions,
    findings: [...vacuum, ...coatsStay(shape, work), ...filled.value.findings, ...headFindings(shape, need)],
  });
}

/** The thickest coat against what stays on an upright stick; a thin first coat is meant to run. */
function coatsStay({ coats }: MoldShape, { staysMm }: WorkWish): Problem[] {
  if (coats === undefined || coats.length === 0) return [];
  const coatMm = Math.max(...coats.map(({ toMm }, n) => toMm - (coats[n - 1]?.toMm ?? 0)));
  return staysMm === undefined
    ? [finding('COAT_STICK_UNKNOWN', 'unknown', { coatMm })]
    : sagFindings({ coatMm, staysMm });
}

/** Poured rubber stands as high as the mold and pushes the jacket apart. */
function headFindings(
  { jacket, coats, outerMm, settings }: MoldShape,
  { densityKgM3 }: SiliconeNeed,
): Problem[] {
  if (jacket === undefined || coats !== undefined) return [];
  const riserMm = typeof settings.riserTallMm === 'number' ? settings.riserTallMm : 0;
  const headMm = outerMm[2] + riserMm;
  const pressureKPa = wallPressureKPa({ rubberHeightMm: headMm, siliconeKgM3: densityKgM3 });
  return [finding('JACKET_HEAD', 'look', { headMm, pressureKPa })];
}

/** Rubber that runs in through a funnel must be in before the pot life ends. */
function fillOf(
  { settings, rubberMm3 }: MoldShape,
  { pours, densityKgM3 }: SiliconeNeed,
  { mixedViscosityPaS }: SiliconeWish,
): Outcome<Omit<Process, 'containerCm3'>> {
  const diameterMm = settings.funnelMm;
  if (typeof diameterMm !== 'number') return good({ assumptions: [], findings: [] });
  const { viscosity } = SILICONE_RULES;
  const viscosityPaS = mixedViscosityPaS ?? viscosity.value;
  const assumed = {
    name: 'silicone_viscosity_pa_s',
    value: viscosity.value,
    unit: 'Pa s',
    basis: viscosity.from,
  };
  const tube = { diameterMm, densityKgM3, viscosityPaS };
  const volumeCm3 = rubberMm3 / MM3_PER_CM3;
  const flow = tubeFlowMlS(tube);
  if (!flow.ok) return flow;
  const findings = fillFindings({ ...tube, volumeCm3, leftMin: pours[0]!.order.applyMin });
  if (!findings.ok) return findings;
  return good({
    fillMin: fillTimeMin({ volumeCm3, flowMlS: flow.value }),
    assumptions: mixedViscosityPaS === undefined ? [{ ...assumed, from: 'assumed' }] : [],
    findings: findings.value,
  });
}
