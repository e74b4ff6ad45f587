import type { Assumption } from '../estimate';
import { openMoldBench, planOpening, type OpeningPlan, type Size } from '../plan';
import { good, type Outcome, type Problem } from '../problem';
import { DEMOLD_RULES, RULES } from '../yield';
import type { OptionValues } from './command';
import type { Io } from './io';
import { measureScan } from './measureScan';
import type { OpeningCall } from './openingOptions';

/** The size of the scan and the plan of its opening. */
export interface Opened {
  size: Size;
  plan: OpeningPlan;
  /** Of scan, times and plan, then the checks. */
  findings: Problem[];
  assumptions: (Assumption & { basis?: string })[];
}

/** Measures the scan once and plans what the call asks for. Errors: those of `openMoldBench` and `planOpening`. */
export function planCall(path: string, call: OpeningCall, options: OptionValues, io: Io): Outcome<Opened> {
  return measureScan(path, { options, io, field: call.field, needsField: true }, (scan, how) => {
    const opened = openMoldBench(scan, how);
    if (!opened.ok) return opened;
    const { size, bench } = opened.value;
    const plan = planOpening(bench, call.ask);
    if (!plan.ok) return plan;
    return good({
      size,
      plan: plan.value,
      findings: [...size.findings, ...call.findings, ...plan.value.findings, ...plan.value.checks],
      assumptions: [...size.assumptions, ...call.assumptions, ...assumedFor(plan.value, call)],
    });
  });
}

/** Where the assumed figures of the plan come from. */
const BASIS: Readonly<Record<string, string>> = {
  opening: 'chosen here: where a mold is usually poured',
  pour_up: 'chosen here: the way the opening faces',
  opening_diameter: 'chosen here: within what is advised',
  opening_length: 'chosen here: about a cup\u2019s height of tube',
  head: 'chosen here: as a hand holds a cup over a mold',
  vent_diameter: RULES.ventDiameter.from,
  thin: DEMOLD_RULES.castingStop.from,
  pack: RULES.packFactor.from,
  liquid_density: RULES.liquidDensity.from,
};

/** All that was taken for granted for the opening, the size of the scan apart. */
function assumedFor(
  { assumptions, demold }: OpeningPlan,
  { ask: { base, rubber = {} }, field }: OpeningCall,
): Opened['assumptions'] {
  const { elongation, foamSquash } = DEMOLD_RULES;
  const assume = (name: string, value: number | string, basis?: string): Opened['assumptions'][number] => ({
    ...{ name, value, unit: '', from: 'assumed' as const },
    ...(basis === undefined ? {} : { basis }),
  });
  return [
    ...(base === undefined ? [assume('base', 'open', 'chosen here: the usual one')] : []),
    ...assumptions.map((one) => {
      const basis = BASIS[one.name];
      return basis === undefined ? one : { ...one, basis };
    }),
    ...(demold?.allowedStretch.from === 'assumed'
      ? [assume('elongation_at_break', elongation.value, elongation.from)]
      : []),
    ...(demold !== undefined && rubber.squash === undefined
      ? [assume('squash', foamSquash.value, foamSquash.from)]
      : []),
    ...(field.accuracy === undefined && field.voxelMm === undefined ? [assume('accuracy', 'normal')] : []),
  ];
}
