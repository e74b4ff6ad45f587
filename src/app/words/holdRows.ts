import type { Estimate } from '../../estimate';
import { formatArea, formatLength, formatVolume } from '../../units';
import type { Mold } from '../../plan';
import { pullWords } from '../../words/moldWords';
import { amount, counted } from '../../words/sentence';
import type { FigureRow } from '../parts/FigureTable';
import { heavyWords, sidesWords } from './moldFigures';

/** Newtons of one kilogram at standard gravity (CGPM 1901), to say a push as a weight. */
const N_PER_KGF = 9.80665;

const newtons = (forceN: number): string => `${amount(forceN, 3)} N (${amount(forceN / N_PER_KGF, 3)} kgf)`;

const between = ({ low, high }: Estimate, unit: string, digits = 2): string =>
  `${amount(low, digits)} to ${amount(high, digits)} ${unit}`;

/** The box that rubber is poured into: its inside, and what its widest wall bears. */
export function boxRows({ shape: { box }, surroundings: { wall } }: Mold): FigureRow[] {
  if (box === undefined) return [];
  const [x, , z] = box.innerMm;
  const turned = box.kind === 'box' && box.turnDegrees !== 0;
  return [
    box.kind === 'cylinder'
      ? { name: 'Cylinder inside', value: `${formatLength(x)} across, ${formatLength(z)} tall` }
      : {
          name: 'Box inside',
          value: sidesWords(box.innerMm),
          where: turned ? `turned about the vertical by ${amount(box.turnDegrees, 3)}° against x` : undefined,
        },
    ...(wall === undefined
      ? []
      : [
          {
            name: 'Push on the widest wall',
            value: newtons(wall.forceN),
            where: `acts ${formatLength(wall.forceHeightMm)} above the base: a brace belongs there`,
          },
          { name: 'Pressure at the foot', value: `${amount(wall.pressureKPa, 3)} kPa` },
          ...(box.kind === 'cylinder'
            ? []
            : [
                {
                  name: 'Bulge of that wall',
                  value: between(wall.bulgeMm, 'mm'),
                  where: `${wall.material} of ${formatLength(wall.wallMm)} over ${formatLength(wall.wallWidthMm)}; ${formatLength(Math.ceil(wall.neededWallMm))} would hold`,
                },
              ]),
        ]),
  ];
}

/** The jacket over the rubber: its amounts, its pieces and how it comes off. */
export function jacketRows({ shape: { jacket, undercut, keys, flange }, surroundings }: Mold): FigureRow[] {
  const amounts = surroundings.jacket;
  if (jacket === undefined || amounts === undefined) return [];
  return [
    {
      name: `${amounts.title}, dry`,
      value: heavyWords(amounts.dryMassG),
      where: `${heavyWords(amounts.wetMassG)} as laid${amounts.layers === undefined ? '' : `, ${counted(amounts.layers, 'layer')}`}`,
    },
    ...amounts.items.map(({ name, massG, volumeMl, areaCm2 }) => ({
      name: `To have at hand: ${name}`,
      value:
        massG !== undefined
          ? heavyWords(massG)
          : volumeMl !== undefined
            ? formatVolume(volumeMl)
            : formatArea(areaCm2 ?? 0),
    })),
    {
      name: 'Jacket, solid',
      value: formatVolume(jacket.volumeMm3 / 1000),
      where: `${formatLength(amounts.thicknessMm)} thick over ${formatArea(jacket.innerMm2 / 100)}`,
    },
    {
      name: 'Pieces',
      value: String(jacket.pieces),
      where:
        undercut === undefined
          ? undefined
          : `pulled ${pullTo(undercut)}${jacket.partingMm > 0 ? `; the seam is ${formatLength(jacket.partingMm)} long` : ''}`,
    },
    ...(flange === undefined
      ? []
      : [{ name: 'Flange on the board', value: `${formatLength(flange.widthMm)} wide` }]),
    ...(keys === undefined
      ? []
      : [
          {
            name: 'Keys',
            value: `${counted(keys.count, 'half ball', 'half balls')} of radius ${formatLength(keys.radiusMm)}`,
          },
        ]),
  ];
}

/** The finished mold, and the box it stands in while foam is poured. */
export function moldRows({
  surroundings: { outerMm, moldG, standing, floating, jacket },
  clay,
}: Mold): FigureRow[] {
  return [
    ...(clay === undefined
      ? []
      : [
          {
            name: 'Clay to have at hand',
            value: formatVolume(clay.volumeCm3),
            where: `${between({ ...clay.massG, low: clay.massG.low / 1000, high: clay.massG.high / 1000 }, 'kg')}; weighed when it comes out, times ${amount(clay.rubberPerClay.value, 2)} it tells the rubber`,
          },
        ]),
    ...(floating === undefined
      ? []
      : [
          {
            name: floating.forceN > 0 ? 'Lift on the sculpt' : 'The sculpt stays down by',
            value: newtons(Math.abs(floating.forceN)),
          },
        ]),
    { name: 'Mold outside', value: sidesWords(outerMm) },
    { name: jacket === undefined ? 'Mold weighs' : 'Mold and jacket weigh', value: heavyWords(moldG) },
    {
      name: 'Box it stands in for the pour, inside',
      value: sidesWords(standing.innerMm),
      where: `packed with ${formatVolume(standing.packingCm3)} of sand, chips or paper`,
    },
  ];
}

export function pullTo({
  pull: [x, y, z],
  pieces,
}: {
  pull: readonly [number, number, number];
  pieces: 1 | 2;
}): string {
  return pullWords({ x, y, z, pieces });
}
