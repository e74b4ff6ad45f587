import type { Estimate } from '../../estimate';
import { formatVolume } from '../../units';
import type { FillAgainst } from '../../yield';
import { RULES } from '../../yield';
import { percent } from '../../words/sentence';
import { volumeWithRange } from '../../words/volumeWayWords';
import type { BodyKind, SizeWay, Sunk } from '../ticket/sizingState';
import type { BodySide } from '../ticket/sizingFields';
import { rangeText, type RangeText } from '../../words/rangeText';

/** The ways in, as they are chosen. */
export const WAY_LABELS: Readonly<Record<SizeWay, string>> = {
  scan: 'A scan',
  fill: 'Water in the mold',
  displace: 'Sink the sculpt',
  tape: 'Tape girths',
};

/** What a volume is called, by how it is known. */
export const VOLUME_BY: Readonly<Record<SizeWay, string>> = {
  scan: 'the scan',
  fill: 'the water fill',
  displace: 'what the sculpt displaced',
  tape: 'the tape',
};

export const WAY_BECAUSE: Readonly<Record<SizeWay, string>> = {
  scan: 'A scan tells the volume and all that a mold hangs on. Water, rice or a tape tell a volume, and that is enough for grams.',
  fill: 'The foam fills the mold, not the sculpt, so a weighed water fill wins over a scan.',
  displace:
    'A sculpt that is wholly under pushes out its own volume. The mold can differ from it by a little.',
  tape: 'Simple bodies by their girths, added up: rough, and the pack has to make up for it. Water is surer.',
};

export const SUNK_LABELS: Readonly<Record<Sunk, string>> = {
  water: 'water, two levels',
  rice: 'rice, two levels',
  overflow: 'a full vessel, what ran over weighed',
};

export const BODY_LABELS: Readonly<Record<BodyKind, string>> = {
  limb: 'limb',
  ball: 'ball',
  box: 'box',
  dome: 'dome',
};

export const BODY_ABOUT: Readonly<Record<BodyKind, string>> = {
  limb: 'An arm, leg, neck or tail: its length, and the girth at each end.',
  ball: 'Round all over: its largest girth.',
  box: 'With rounded edges: three sides.',
  dome: 'Half a ball or egg, flat below: the girth of its base, and its height.',
};

export const SIDE_LABELS: Readonly<Record<BodySide, string>> = {
  length: 'Length',
  girth: 'Girth',
  otherGirth: 'Girth of the other end, if it differs',
  width: 'Width',
  depth: 'Depth',
  height: 'Height',
};

/** How a way to a volume is reckoned. */
export const WAY_FORMULA: Readonly<Record<'fill' | 'level' | 'overflow' | BodyKind, string>> = {
  fill: 'Volume = mass of the water ÷ density of water at its temperature',
  level: 'Volume = level with the sculpt − level without it',
  overflow: 'Volume = mass of the water that ran over ÷ density of water at its temperature',
  limb: 'Limb = length × (C₁² + C₁ × C₂ + C₂²) ÷ 12π, C the girths, less what a section is flatter than a circle',
  ball: 'Ball = girth³ ÷ 6π², less the same',
  box: 'Box = width × depth × height, less what rounded edges leave',
  dome: 'Dome = height × girth² ÷ 6π, less the same',
};

/** Digits that count: a weighed fill tells more than a level, a level no less than a tape. As on the command line. */
const DIGITS: Readonly<Record<SizeWay, number>> = { scan: 4, fill: 4, displace: 3, tape: 3 };

export const volumeText = (by: SizeWay, volumeCm3: Estimate): RangeText =>
  rangeText(volumeCm3, { step: stepOf(by, volumeCm3) });

/** Value and range in both systems, each with the digits that stand beside the figure; the ends rounded outward, as there. */
export function volumeInBoth(by: SizeWay, volumeCm3: Estimate): string {
  const step = stepOf(by, volumeCm3);
  const [value, low, high] = [
    step * Math.round(volumeCm3.value / step),
    step * Math.floor(volumeCm3.low / step),
    step * Math.ceil(volumeCm3.high / step),
  ];
  return volumeWithRange({ value, low, high }, DIGITS[by] + 1);
}

function stepOf(by: SizeWay, { value }: Estimate): number {
  const rounded = Number(value.toPrecision(DIGITS[by]));
  return Math.max(FINEST_CM3, Number(`1e${Math.floor(Math.log10(rounded)) - DIGITS[by] + 1}`));
}

/** No volume is shown finer than this, as every figure. */
const FINEST_CM3 = 1e-3;

/** The mold by water beside the sculpt by another way: both figures, how far apart, and where it would say Look. */
export function againstWords(
  sculpt: { by: SizeWay; volumeCm3: Estimate },
  fillCm3: Estimate,
  { share, allowedShare, isFar }: FillAgainst,
): string {
  const size = percent(Math.abs(share));
  const apart = Math.abs(share) < 1e-4 ? 'as much as' : `${size} ${share > 0 ? 'more than' : 'less than'}`;
  const limit = percent(allowedShare);
  const rule = `${percent(RULES.uScanToMold.value)} either way is assumed between sculpt and mold`;
  return (
    `By water the mold holds ${volumeOf('fill', fillCm3)}, ${apart} the ${volumeOf(sculpt.by, sculpt.volumeCm3)} by ${VOLUME_BY[sculpt.by]}. ` +
    (isFar
      ? `Over ${limit} is hard to explain: ${rule}. Look for a leak, a mold that bulged, water left beside, a wrong unit, or another sculpt.`
      : `Over ${limit} it would say Look: ${rule}, and both have their ranges.`)
  );
}

const volumeOf = (by: SizeWay, { value }: Estimate): string => {
  const digits = DIGITS[by];
  return formatVolume(Number(value.toPrecision(digits)));
};

/** A range this wide, either way, wants a look before it is poured for. Chosen here. */
export const WIDE_SHARE = 0.05;

/** Half of the range as a share of the value. */
export const halfShare = ({ value, low, high }: Estimate): number => (high - low) / 2 / value;
