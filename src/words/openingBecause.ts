import type { OpeningAsk, OpeningPlan } from '../plan';
import { DEMOLD_RULES } from '../yield';
import { formatArea, formatLength, formatVolume, type Show } from '../units';
import { leastWidth, mostWidth } from './roundedWidth';
import { amount, percent } from './sentence';

/** How the figures of an opening came about, one line each: section, band, level filling, thickness, the way out. */
export function openingBecause(plan: OpeningPlan, ask: OpeningAsk = {}, show: Show = 'both'): string[] {
  return [
    limitsLine(plan, show),
    ...timeLine(plan, ask, show),
    fillLine(plan, show),
    ...thicknessLines(plan, show),
    ...wayLine(plan, ask, show),
  ];
}

const LIMIT_WORDS = {
  'share of the section': 'the share of the section',
  'bald area': 'the bald spot it leaves on the casting',
  'back pressure': 'the pressure it must hold back, by the foam your risers taught',
} as const;

function limitsLine({ opening }: OpeningPlan, show: Show): string {
  const { largestSectionCm2, band } = opening;
  const { shareMm, baldMm, backPressureMm, warnMm } = band.limits;
  const held =
    backPressureMm === undefined ? '' : `, holding the pressure back ${mostWidth(backPressureMm, show)}`;
  return (
    `The largest section across the way the opening faces is ${formatArea(Number(largestSectionCm2.toPrecision(3)), show)}. ` +
    `Upper limits of its width: share of that section ${mostWidth(shareMm, show)}, bald spot on the casting ${mostWidth(baldMm, show)}${held}; ` +
    `${LIMIT_WORDS[band.mostBy]} is the smallest. We stop above ${mostWidth(warnMm, show)}. Shares: common practice, no source.`
  );
}

function timeLine({ opening }: OpeningPlan, { pour = {}, vents = [] }: OpeningAsk, show: Show): string[] {
  const { band, liquidCm3 } = opening;
  const { withinS, mixPaS } = pour;
  if (band.leastMm === undefined || liquidCm3 === undefined || withinS === undefined || mixPaS === undefined)
    return [];
  return [
    `${formatVolume(liquidCm3, show)} of a mix of ${amount(mixPaS, 3)} Pa s run through ${leastWidth(band.leastMm, show)} in ${amount(withinS, 3)} s (losses of a tube in series, textbook).${vents.length === 0 ? ' No vent is planned: the air comes up through it too (counter-current limit, from memory, not verified).' : ''}`,
  ];
}

function fillLine({ filling, columnStepMm }: OpeningPlan, show: Show): string {
  return `Filled as a liquid would, level by level, along columns ${formatLength(columnStepMm, show)} apart: a pocket is what lies over the level at which its way to the opening shuts. Foam rises as a dome, so this is a lower bound.${filling.apart.count === 0 ? '' : ' Pieces that are not joined were left out.'}`;
}

function thicknessLines({ casting }: OpeningPlan, show: Show): string[] {
  if (casting === undefined) return [];
  const { p05Mm, medianMm, notMeasuredShare, thinMm, shareThin } = casting;
  const measuredShare = 1 - notMeasuredShare;
  if (measuredShare <= 0 || ![p05Mm, medianMm].every(Number.isFinite)) return [];
  return [
    `Thickness is the largest ball that fits inside at each place. Of the part of the surface that could be measured (${percent(measuredShare)}), half is under ${mm(medianMm, show)}, a twentieth under ${mm(p05Mm, show)}, and ${percent(shareThin / measuredShare)} under the ${mm(thinMm, show)} that count as thin; nothing is known of the rest, near edges and on wide flat faces.`,
  ];
}

function wayLine({ demold }: OpeningPlan, { rubber = {} }: OpeningAsk, show: Show): string[] {
  if (demold === undefined) return [];
  const { worst, allowedStretch, undercutShare } = demold;
  const squash = percent(rubber.squash ?? DEMOLD_RULES.foamSquash.value);
  const range =
    allowedStretch.from === 'assumed'
      ? ` (${percent(allowedStretch.low)} to ${percent(allowedStretch.high)} with other rubbers)`
      : '';
  return [
    `Girths along the way out: ${mm(worst.bulbMm, show)} around has to pass ${mm(worst.neckMm, show)}, squeezed by ${squash} of its girth. The rubber is let a third of its stretch at break, ${percent(allowedStretch.value)}${range}. ${percent(undercutShare)} of the casting, seen along the way out, has rubber before it.`,
  ];
}

const mm = (value: number, show: Show): string => formatLength(Number(value.toPrecision(3)), show);
