import type { Assumption } from '../estimate';
import type { Shop } from '../job/shop';
import { bad, good, type Outcome, type Problem } from '../problem';
import { massRatio, RULES, type FoamCard, type MassRatio } from '../yield';
import { roundingFindings, roundParts } from '../yield/rounding';
import { batchOptions, flagOf, shopOption } from './batchOptions';
import { weighedOf } from './batchJson';
import { keyOf, nameOfFlags, textOf, type OptionValues } from './command';
import { assumedOf } from './fillAssumed';
import type { Io } from './io';
import { defined, readFigures } from './moldFigures';
import { POUR_CALL_OPTIONS, pourCall, pourFor } from './pourCall';
import { quantityOption } from './quantity';

/** What is weighed for one casting of the run, and of what. */
export interface RunCasting {
  partAG: number;
  partBG: number;
  stepG: number;
  ratio: MassRatio;
  openMin?: number;
  card?: FoamCard;
  shop?: Shop;
  findings: Problem[];
  assumptions: Assumption[];
}

/** One casting, as `batch` plans it or as it is told. Errors: BAD_CALL, those of the batch. */
export const runCasting = (options: OptionValues, io: Io): Outcome<RunCasting> => {
  const mixed = textOf(options, 'mixed');
  return mixed === undefined ? plannedCasting(options, io) : toldCasting(mixed, options, io);
};

function plannedCasting(options: OptionValues, io: Io): Outcome<RunCasting> {
  if (textOf(options, 'scan') === undefined && textOf(options, 'volume') === undefined)
    return bad('BAD_CALL', {
      text: 'What one casting takes is not known.',
      hint: 'Give --volume "4.5 L" or --scan SCAN, with the foam; or --mixed "588 g" if it is known.',
    });
  const call = pourCall(options, io);
  if (!call.ok) return call;
  const poured = pourFor(call.value);
  if (!poured.ok) return poured;
  const { card, ask } = call.value;
  const { prepared, findings, assumptions } = poured.value;
  const ratio = massRatio(ask.pour.ratio, ask.pour.partDensities);
  if (!ratio.ok) return ratio;
  const shop = shopOption(options, io);
  if (!shop.ok) return shop;
  const { partAG, partBG } = weighedOf(prepared);
  const openMin = prepared.times.openMin?.value ?? ask.foam?.openMin;
  return good({
    partAG,
    partBG,
    stepG: prepared.batch.stepG,
    ratio: ratio.value,
    ...defined({ openMin, card, shop: shop.value }),
    findings,
    assumptions,
  });
}

/** Options of the pour that say something where the mix is known already. */
const STILL_ASKED = [
  ...['foam', 'ratio', 'ratioBy', 'partADensity', 'partBDensity', 'scaleStep'],
  ...['open', 'priceA', 'priceB'],
];

/** Nothing rises here: the reader of the foam wants a density, and what it is does not matter. */
const ANY_DENSITY = '100 kg/m3';

function toldCasting(mixed: string, options: OptionValues, io: Io): Outcome<RunCasting> {
  const stray = POUR_CALL_OPTIONS.map(({ flags }) => keyOf(nameOfFlags(flags))).find(
    (key) => options[key] !== undefined && !STILL_ASKED.includes(key),
  );
  if (stray !== undefined)
    return bad('BAD_CALL', {
      text: `${flagOf(stray)} is about how much to mix, and --mixed says it.`,
      hint: `Leave ${flagOf(stray)} or --mixed out.`,
    });
  const mass = quantityOption('--mixed', mixed, 'mass', 'g');
  if (!mass.ok) return mass;
  const foam = batchOptions({ ...options, freeRise: ANY_DENSITY }, io);
  if (!foam.ok) return foam;
  const { choices, card, shop } = foam.value;
  const ratio = massRatio(choices.ratio, choices.partDensities);
  if (!ratio.ok) return ratio;
  const open = readFigures<'openMin'>(options, [{ key: 'openMin', option: 'open', kind: 'minutes' }]);
  if (!open.ok) return open;
  const stepG = choices.scaleStepG?.value ?? RULES.scaleStep.value;
  const parts = roundParts({ mixedG: mass.value, ratio: ratio.value, stepG });
  if (!parts.ok) return parts;
  const { partAG, partBG } = parts.value;
  return good({
    partAG,
    partBG,
    stepG,
    ratio: ratio.value,
    ...defined({ openMin: open.value.openMin ?? card?.openMin, card, shop }),
    findings: roundingFindings(parts.value, stepG),
    assumptions: choices.scaleStepG === undefined ? [assumedOf('scale_step_g', RULES.scaleStep)] : [],
  });
}
