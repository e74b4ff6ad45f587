import type { Mold } from '../plan';
import { formatLength, formatVolume, type Show } from '../units';
import { amount, percent } from './sentence';
import { pullWords } from './moldWords';

/** How a mold's figures came about, one line each: volume, the sum by hand, undercuts, box, mass, mixes, field. */
export function moldBecause(mold: Mold, show: Show = 'both'): string[] {
  return [
    mold.shape.box === undefined ? skinLine(mold, show) : boxLine(mold, show),
    ...byHandLine(mold, show),
    ...undercutLines(mold, show),
    ...otherBoxesLine(mold, show),
    massLine(mold, show),
    mixLine(mold),
    ...fieldLine(mold, show),
    castingLine(mold),
  ];
}

const cm3 = (mm3: number): number => mm3 / 1000;

function boxLine({ shape, sculpt }: Mold, show: Show): string {
  const box = shape.box!;
  const holds = formatVolume(cm3(box.volumeMm3), show);
  const voids = shape.voids.map(
    ({ name, volumeMm3 }) => ` and ${formatVolume(cm3(volumeMm3), show)} of ${name}`,
  );
  return `The rubber is what the ${box.kind} holds, ${holds}, less the sculpt, ${formatVolume(cm3(sculpt.volumeMm3), show)}${voids.join('')}.`;
}

/** Less than this would be shown as nothing. */
const LEAST_MM3 = 50;

function skinLine({ shape, sculpt, settings }: Mold, show: Show): string {
  const [skin, ...more] = shape.rubber.filter(({ volumeMm3 }) => volumeMm3 > LEAST_MM3);
  const where = sculpt.boardMm === undefined ? 'all round' : 'above the board';
  const grown = `The ${skin!.name} is the sculpt grown by ${formatLength(Number(settings.skinMm), show)} ${where}, less the sculpt: ${formatVolume(cm3(skin!.volumeMm3), show)}`;
  if (more.length === 0) return `${grown}.`;
  const parts = more.map(({ name, volumeMm3 }) => `${name} ${formatVolume(cm3(volumeMm3), show)}`);
  return `${grown}. To it come ${parts.join(', ')}.`;
}

function byHandLine({ areaTimesSkinCm3, shape, siliconeCm3 }: Mold, show: Show): string[] {
  if (areaTimesSkinCm3 === undefined) return [];
  const off = (cm3Of: number): string => {
    const share = areaTimesSkinCm3 / cm3Of - 1;
    return Math.abs(share) < 0.005
      ? 'about the same as'
      : `${percent(Math.abs(share))} ${share < 0 ? 'less' : 'more'} than`;
  };
  return [
    `Area times thickness would say ${formatVolume(areaTimesSkinCm3, show)}: ${off(cm3(shape.rubber[0]!.volumeMm3))} the ${shape.rubber[0]!.name} alone, ${off(siliconeCm3.value)} all the rubber.`,
  ];
}

function undercutLines({ shape }: Mold, show: Show): string[] {
  const { undercut } = shape;
  if (undercut === undefined) return [];
  const pulled = (pull: readonly number[], pieces: 1 | 2): string =>
    pullWords({ x: pull[0]!, y: pull[1]!, z: pull[2]!, pieces });
  const others = undercut.compared.map(
    ({ pull, pieces, fillMm3 }) => `${pulled(pull, pieces)} about ${formatVolume(cm3(fillMm3), show)}`,
  );
  const place = undercut.places[0];
  return [
    `The jacket is pulled ${pulled(undercut.pull, undercut.pieces)}, ${undercut.wasSearched ? 'found by search over the directions' : 'as you said'}: it locks ${formatVolume(cm3(undercut.fillMm3), show)}. For comparison: ${others.join('; ')}.`,
    ...(place === undefined
      ? []
      : [
          `The largest locked place holds ${formatVolume(cm3(place.volumeMm3), show)} around x ${whole(place.atMm[0])}, y ${whole(place.atMm[1])}, z ${whole(place.atMm[2])} mm.`,
        ]),
  ];
}

/** A place to the millimeter; never "-0". */
const whole = (mm: number): string => amount(Math.round(mm) + 0);

function otherBoxesLine({ shape, siliconeCm3 }: Mold, show: Show): string[] {
  if (shape.box === undefined) return [];
  const { box } = shape;
  const others = box.others.map(({ kind, turnDegrees, volumeMm3 }) => {
    const more = cm3(volumeMm3 - box.volumeMm3);
    return `${boxName(kind, turnDegrees)} would take ${formatVolume(Math.abs(more), show)} ${more < 0 ? 'less' : 'more'} (${percent(Math.abs(more) / siliconeCm3.value)})`;
  });
  return [`${capital(boxName(box.kind, box.turnDegrees))} was taken; ${others.join(', ')}.`];
}

const boxName = (kind: 'box' | 'cylinder', turnDegrees: number): string =>
  kind === 'cylinder'
    ? 'a cylinder'
    : turnDegrees === 0
      ? 'a straight box'
      : `a box turned by ${amount(turnDegrees, 2)}\u00b0`;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function massLine({ silicone, siliconeCm3 }: Mold, show: Show): string {
  const { densityKgM3, pours, totalG } = silicone;
  const { wasteShare, cupLossG } = pours[0]!.order;
  const cups = pours.reduce((sum, { order }) => sum + order.cups, 0);
  return `${formatVolume(siliconeCm3.value, show)} at ${amount(densityKgM3)} kg/m\u00b3 are ${amount((siliconeCm3.value * densityKgM3) / 1000)} g in the mold; with ${percent(wasteShare)} of waste and ${amount(cupLossG)} g that stay in ${cups === 1 ? 'the cup' : `each of ${amount(cups)} cups`}, rounded up to the scale, ${amount(totalG, 6)} g are mixed.`;
}

function mixLine({ silicone }: Mold): string {
  const { largestMixG, limitedBy, potLifeMin, applyMin } = silicone.pours[0]!.order;
  const why =
    limitedBy === 'container'
      ? 'that is what the container takes with its headroom'
      : `of ${amount(potLifeMin, 3)} min of pot life ${amount(applyMin, 3)} are left to work in`;
  return `One mix is at most ${amount(largestMixG, 3)} g: ${why}.`;
}

const VOXEL_WORDS = {
  size: 'from the size of the piece',
  offset: 'finer than the size of the piece asks for, as the surface is near',
  wall: 'finer than the size of the piece asks for, as walls are thin',
  given: 'as you said',
} as const;

const fieldLine = ({ voxel }: Mold, show: Show): string[] =>
  voxel === undefined
    ? []
    : [
        `Skin and jacket were measured on a distance field with voxels of ${formatLength(voxel.voxelMm, show)}, ${VOXEL_WORDS[voxel.because]}.`,
      ];

function castingLine({ casting }: Mold): string {
  const { shrink, volumeShare, castingTempC, roomTempC } = casting;
  const warm =
    castingTempC === roomTempC
      ? ''
      : ` and grows from ${amount(roomTempC)} to ${amount(castingTempC)} \u00b0C`;
  return `The mold shrinks by ${percent(shrink.value)} in length${warm}: its cavity is ${amount(100 * volumeShare.value)} % of the sculpt.`;
}
