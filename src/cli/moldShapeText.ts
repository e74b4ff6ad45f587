import type { Mold } from '../plan';
import { formatArea, formatLength, formatQuantity, type Show } from '../units';
import { amount, counted } from '../words/sentence';
import type { JacketItem } from '../yield';
import { line, roughLength, roughMass, roughVolume, sides } from './moldLines';

/** The box that rubber is poured into, with its walls. */
export function boxLines({ shape, surroundings }: Mold, show: Show): string[] {
  const { box, partingOverMm } = shape;
  const { wall } = surroundings;
  if (box === undefined) return [];
  const [x, , z] = box.innerMm;
  const inner =
    box.kind === 'cylinder'
      ? `cylinder, ${formatLength(x, show)} across and ${formatLength(z, show)} tall inside`
      : `${sides(box.innerMm, show)} inside${box.turnDegrees === 0 ? '' : `, turned by ${amount(box.turnDegrees, 2)}\u00b0 from x toward y`}`;
  return [
    line('Box', inner),
    ...(partingOverMm === undefined
      ? []
      : [line('Parting', `${formatLength(partingOverMm, show)} over the lowest point of the sculpt`)]),
    ...(wall === undefined || box.kind === 'cylinder'
      ? []
      : [
          line(
            'Walls',
            `${wall.material.toLowerCase()} of ${formatLength(wall.wallMm, show)}, bowing out by about ${formatLength(wall.bulgeMm.value, show)} under ${formatQuantity('pressure', wall.pressureKPa, show)} at the foot`,
          ),
        ]),
  ];
}

export function jacketLines({ shape, surroundings }: Mold, show: Show): string[] {
  const { jacket } = surroundings;
  if (jacket === undefined || shape.jacket === undefined) return [];
  const { pieces, partingMm, volumeMm3 } = shape.jacket;
  const seam = pieces === 1 ? '' : `, meeting along ${roughLength(partingMm, show)}`;
  const layers = jacket.layers === undefined ? '' : ` in ${counted(jacket.layers, 'layer')}`;
  const wet = jacket.wetMassG === jacket.dryMassG ? '' : `, ${roughMass(jacket.wetMassG, show)} wet`;
  return [
    line(
      'Jacket',
      `${jacket.title.toLowerCase()}, ${formatLength(jacket.thicknessMm, show)} thick${layers}, in ${counted(pieces, 'piece')}${seam}: ${roughVolume(volumeMm3 / 1000, show)}. ` +
        `Take ${jacketItems(jacket.items, show)}; ${roughMass(jacket.dryMassG, show)} when done${wet}.`,
    ),
  ];
}

/** What a jacket is made of, ready to be weighed or cut. */
const jacketItems = (items: JacketItem[], show: Show): string =>
  items
    .map(({ name, massG, areaCm2 }) => {
      const cut = areaCm2 === undefined ? [] : [formatArea(areaCm2, show)];
      const weighed = massG === undefined ? [] : [roughMass(massG, show)];
      return `${[...weighed, ...cut].join(', ')} of ${name}`;
    })
    .join(' and ');

export function clayLines({ shape, clay }: Mold, show: Show): string[] {
  if (clay === undefined) return [];
  const names = shape.clay.map(({ name }) => name).join(' and ');
  return [
    line(
      'Clay',
      `${names}: ${roughVolume(clay.volumeCm3, show)}, about ${roughMass(clay.massG.value, show)}. ` +
        `Weigh the clay that comes out: ${amount(1000)} g of it stand for ${amount(1000 * clay.rubberPerClay.value, 3)} g of rubber (${amount(1000 * clay.rubberPerClay.low, 3)} to ${amount(1000 * clay.rubberPerClay.high, 3)} g, as heavy as the clay is).`,
    ),
  ];
}

export function weightLine({ surroundings }: Mold, show: Show): string {
  const { moldG, outerMm, standing } = surroundings;
  return line(
    'Stands',
    `the finished mold weighs ${roughMass(moldG, show)} and measures ${sides(outerMm.map(Math.ceil), show)}. A box of ${sides(standing.innerMm.map(Math.ceil), show)} inside holds it upright, with ${roughVolume(standing.packingCm3, show)} of sand or chips around it.`,
  );
}
