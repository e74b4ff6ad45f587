import {
  formatDensity,
  formatLength,
  formatMass,
  formatTemperature,
  formatVolume,
  type Show,
} from '../units';
import { VOLUME_RULES as R, type CupTest, type TapedBody } from '../yield';
import { pourCautions, type Caution } from './cautions';
import { amount, counted, percent } from './sentence';

interface Water {
  waterG: number;
  waterTempC: number;
  volumeCm3: number;
}

/** `of`: "", or whose volume it is. */
function waterWords({ waterG, waterTempC, volumeCm3 }: Water, show: Show, of = ''): string {
  return `${formatMass(waterG, show)} of water at ${formatTemperature(waterTempC, show)} are ${formatVolume(volumeCm3, show)}${of}: density of water by Tanaka et al., Metrologia 38 (2001) 301.`;
}

/** Where the free rise of a cup test comes from, one line each. */
export function cupBecause(
  { waterG, waterTempC, cups, uShare }: Omit<Water, 'volumeCm3'> & Pick<CupTest, 'cups' | 'uShare'>,
  show: Show = 'both',
): string[] {
  const each = cups.map(({ freeRiseKgM3 }) => formatDensity(freeRiseKgM3, show)).join(', ');
  const water = { waterG, waterTempC, volumeCm3: cups[0]!.cupCm3 };
  return [
    waterWords(water, show, ', the volume of the cup'),
    `Free rise is the foam in the cup, trimmed flush, over that volume${cups.length === 1 ? '' : `: ${each}; the mean of them counts`}.`,
    `One standard deviation of it is ${percent(uShare)}, from ${counted(cups.length, 'cup')}; the range holds the truth 9 times in 10.`,
    'Foam forms a skin along the wall of the cup, as it does in a mold: both read above a cube cut from the middle.',
    'It holds for the foam, the air and the warmth of this cup: test again on another day.',
  ];
}

/** Where a cavity by water comes from. */
export const fillBecause = (water: Water, show: Show = 'both'): string[] => [
  waterWords(water, show),
  'The foam fills the mold, not the sculpt: a weighed water fill comes before any scan of it.',
  'A mold that bulges under the water, or leaks, reads high, which no range can know: hold it shut as for the pour, and watch the seams.',
];

const COMMON = 'common practice, no source';

/** What a water fill leaves to do, before foam goes in. */
export function fillCautions(): (Caution & { key: string; from: string })[] {
  const damp = pourCautions(['damp-mold']).filter(({ key }) => key === 'damp-mold');
  return [
    {
      key: 'plaster-jacket',
      when: 'Plaster',
      what: 'A plaster jacket is never filled with water, nor wetted: it soaks it up, swells or softens, and gives it off for days. Fill the rubber only where it stands by itself, or measure another way.',
      from: COMMON,
    },
    ...damp,
    {
      key: 'weigh-dry',
      when: 'Dry',
      what: 'Dry the mold fully, then weigh it dry and write that on it: next time its weight tells whether water is left in it.',
      from: COMMON,
    },
  ];
}

/** Where a volume by displacement comes from. It is that of the sculpt, not of the mold. */
export function displaceBecause(
  way: { by: 'level'; medium: 'water' | 'rice'; readingCm3: number } | { by: 'overflow'; water: Water },
  show: Show = 'both',
): string[] {
  const last =
    'This is the volume of the sculpt, wholly under and sealed. The cavity of its mold can differ: a water fill of the mold tells.';
  if (way.by === 'overflow')
    return [
      `What ran over the rim is what the sculpt pushed out. ${waterWords(way.water, show)}`,
      `The film on the sculpt and the bulge at the spout leave ${percent(R.overflowU.value)} in doubt.`,
      last,
    ];
  const read = `Both levels are read to ${formatVolume(way.readingCm3, show)}`;
  const rice = way.medium === 'rice';
  const medium = rice
    ? `rice settles otherwise each time it is poured, by ${percent(R.riceU.value)} of all that the vessel holds: in a vessel just large enough, in water or by overflow, the range is narrower`
    : `the marks of a jug are good to ${percent(R.levelU.value)} of all that it holds: a vessel just large enough, or water weighed as it runs over, is surer`;
  return ['The level rises by the volume of the sculpt.', `${read}, and ${medium}.`, last];
}

/** Why a volume by the tape has so wide a range. */
export function girthBecause(bodies: readonly TapedBody[]): string[] {
  const isRound = bodies.some(({ kind }) => kind !== 'box');
  const isBox = bodies.some(({ kind }) => kind === 'box');
  const { roundness, boxFill } = R;
  return [
    ...(isRound
      ? [
          `The range is wide because a girth does not tell how flat a section is: of all of one girth the circle holds most. The value takes them ${amount(roundness.value)} times as wide as deep, the range goes from ${amount(roundness.high)} times to the circle.`,
        ]
      : []),
    ...(isBox
      ? [
          `Rounded edges leave ${percent(boxFill.low)} to all of a box, ${percent(boxFill.value)} in the middle.`,
        ]
      : []),
    `The tape is good to ${amount(R.tapeU.value)} mm, each way.`,
    ...(bodies.length > 1
      ? ['Bodies are added up: what two share is counted twice, and their doubts go the same way.']
      : []),
    'Holes, eyes and undercuts are not seen by a tape.',
  ];
}

/** "limb, 270 mm long, girths 300 mm and 210 mm". */
export function bodyWords(body: TapedBody, show: Show = 'both'): string {
  const mm = (lengthMm: number): string => formatLength(lengthMm, show);
  switch (body.kind) {
    case 'limb': {
      const { lengthMm, girthMm, otherGirthMm } = body;
      const girths = otherGirthMm === undefined ? mm(girthMm) : `${mm(girthMm)} and ${mm(otherGirthMm)}`;
      return `limb, ${mm(lengthMm)} long, ${otherGirthMm === undefined ? 'girth' : 'girths'} ${girths}`;
    }
    case 'ball':
      return `ball, girth ${mm(body.girthMm)}`;
    case 'box':
      return `box, ${[body.widthMm, body.depthMm, body.heightMm].map(mm).join(' x ')}`;
    case 'dome':
      return `dome, girth ${mm(body.girthMm)}, ${mm(body.heightMm)} high`;
  }
}

/** "4 478 cm³ (1.18 gal), 19 times in 20 between 4 451 cm³ (1.18 gal) and 4 505 cm³ (1.19 gal)", each to so many digits. */
export function volumeWithRange(
  { value, low, high }: { value: number; low: number; high: number },
  digits: number,
  show: Show = 'both',
): string {
  const [middle, least, most] = [value, low, high].map((cm3) =>
    formatVolume(Number(cm3.toPrecision(digits)), show),
  );
  return `${middle}, 19 times in 20 between ${least} and ${most}`;
}
