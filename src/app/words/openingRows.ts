import type { Bounds, Vector } from '../../geometry';
import type { Demold, OpeningPlan, Squeeze } from '../../plan';
import { lengthText } from '../../sheet/placeCardTable';
import { formatLength } from '../../units';
import { DEMOLD_RULES, POUR_RULES, RULES } from '../../yield';
import { SIDE_WORDS } from '../../words/placeWords';
import { atLeast, atMost } from '../../words/roundedMm';
import { amount, counted, percent } from '../../words/sentence';
import { tapeFrom } from '../../geometry';
import type { FigureRow } from '../parts/FigureTable';
import { BAND_NEEDS } from './openingPhrases';

/** The advised band of diameters, what sets its ends, and what else is known of the opening. */
export function bandRows({ opening }: OpeningPlan): FigureRow[] {
  const { band, share, diameterMm, largestSectionCm2, liquidCm3, kept } = opening;
  return [
    {
      name: 'Opening',
      value: formatLength(diameterMm),
      where: `${percent(share)} of the largest section across it, ${amount(largestSectionCm2, 3)} cm²`,
    },
    {
      name: 'At least, to pour in time',
      value: band.leastMm === undefined ? 'not checked' : atLeast(band.leastMm),
      where:
        band.notKnown.length > 0
          ? `needs ${band.notKnown.map((name) => BAND_NEEDS[name]).join(', ')}`
          : band.leastMm === undefined
            ? 'no width that is looked at lets the mix in in time'
            : 'losses of a tube in series, textbook',
    },
    { name: 'At most', value: atMost(band.mostMm), where: MOST_BY[band.mostBy] },
    ...(liquidCm3 === undefined
      ? []
      : [{ name: 'Liquid that is poured', value: `${amount(liquidCm3, 3)} cm³` }]),
    ...(kept === undefined
      ? []
      : [{ name: 'Pressure that it keeps', value: `${amount(kept.gaugeKPa, 2)} kPa` }]),
  ];
}

const MOST_BY = {
  'share of the section': `share of the largest section across it; ${RULES.openingShare.from}`,
  'bald area': `share of the surface without a skin; ${RULES.openingShare.from}`,
  'back pressure': `holds back foam; ${POUR_RULES.mouthWasted.from}`,
} as const;

/** Ways out where no single opening suits. */
export function offerRows({ opening: { offers } }: OpeningPlan): FigureRow[] {
  if (offers === undefined) return [];
  const { plug, openings, slower } = offers;
  return [
    ...(plug === undefined
      ? []
      : [
          {
            name: `A mouth of ${atLeast(plug.mouthMm)}, closed right after the pour`,
            value: `${amount(plug.forceN, 2)} N on its plug`,
            where: `as ${amount(plug.likeKg, 2)} kg would weigh; vented, held by clamp or weight, never by hand (${amount(plug.gaugeKPa, 2)} kPa on ${amount(plug.mouthCm2, 3)} cm²)`,
          },
        ]),
    openings === 'none'
      ? { name: 'More openings', value: 'none', where: 'up to four do not pour in time either' }
      : {
          name: counted(openings.count, 'opening'),
          value: `${atLeast(openings.leastMm)} to ${atMost(openings.mostMm)} each`,
          where: `${counted(openings.pouring, 'opening')} poured into at the same time`,
        },
    ...(slower === undefined
      ? []
      : [
          {
            name: 'A slower or cooler mix',
            value: `${amount(slower.neededS, 3)} s to pour`,
            where: `through ${atMost(slower.atMm)}; ${amount(slower.longerS, 3)} s more than there are`,
          },
        ]),
  ];
}

/** The way out, as a hand meets it. */
export function demoldRows(demold: Demold, bounds: Bounds): FigureRow[] {
  const { worst, allowedStretch, slit, undercutShare } = demold;
  return [
    { name: 'Worst place', value: girthWords(worst), where: `neck ${tapeWords(bounds, worst.neckAtMm)}` },
    {
      name: 'Stretch that is needed there',
      value: worst.stretch <= 0 ? 'none' : percent(worst.stretch),
      where: `with foam that gives ${percent(DEMOLD_RULES.foamSquash.value)} of its girth; ${DEMOLD_RULES.foamSquash.from}`,
    },
    {
      name: 'Stretch that is allowed',
      value: percent(allowedStretch.value),
      where: `${
        allowedStretch.from === 'assumed'
          ? `assumed, ${percent(allowedStretch.low)} to ${percent(allowedStretch.high)} by the rubber; `
          : ''
      }${DEMOLD_RULES.allowedShare.from}`,
    },
    {
      name: 'Slit',
      value:
        slit !== undefined
          ? atLeast(slit.lengthMm)
          : allowedStretch.from === 'assumed'
            ? 'none, if the rubber is as assumed'
            : 'none needed',
      where: slit === undefined ? undefined : slitWords(slit, bounds),
    },
    { name: 'Casting with rubber before it', value: percent(undercutShare), where: 'seen along the way out' },
  ];
}

const girthWords = ({ neckMm, bulbMm }: Squeeze): string =>
  `${around(bulbMm)} around passes ${around(neckMm)}`;

const around = (mm: number): string => formatLength(Number(mm.toPrecision(3)));

function slitWords({ line }: NonNullable<Demold['slit']>, bounds: Bounds): string {
  if (line === undefined) return 'no place for it was found: choose one that is cheap to clean';
  const [from, to] = [line.fromMm, line.toMm].map((atMm) => tapeWords(bounds, atMm));
  const risk = line.isClear ? '' : '; it passes a thin place';
  const tied = line.isTied ? '; another side is as good' : '';
  return `from ${from} to ${to}${risk}${tied}`;
}

/** "up 124 (4 7/8), in from right 28 (1 1/8) and from front 120 (4 3/4) mm (in)". */
function tapeWords(bounds: Bounds, atMm: Vector): string {
  const { upMm, inMm, side, acrossMm, acrossSide } = tapeFrom(bounds, atMm);
  const text = (mm: number): string => lengthText(mm, 'both');
  return `${text(upMm)} up, in from ${SIDE_WORDS[side]} ${text(inMm)} and from ${SIDE_WORDS[acrossSide]} ${text(acrossMm)} mm (in)`;
}
