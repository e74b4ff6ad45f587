import type { PourOnPage } from '../../worker/pour';
import { POUR_RULES, RULES } from '../../yield';
import { amount, counted } from '../../words/sentence';
import type { FigureRow } from '../parts/FigureTable';

/** "840 N (86 kgf)". */
const newtons = (forceN: number): string =>
  `${amount(forceN, 2)} N (${amount(forceN / RULES.gravity.value, 2)} kgf)`;

/** What pushes and what holds, a row each; nothing where no area is known. */
export function forceRows({ clamp, straps, ratchets, plugN }: PourOnPage['forces']): FigureRow[] {
  return [
    ...(clamp === undefined
      ? []
      : [
          { name: 'The foam pushes it open with', value: newtons(clamp.pushN) },
          {
            name: 'All clamps together must hold',
            value: newtons(clamp.clampN),
            where: 'twice the push, less the weight on top',
          },
        ]),
    ...(straps === undefined
      ? []
      : [
          strapRow(straps),
          {
            name: 'Each is pulled at its buckle to',
            value: newtons(straps.buckleN),
            where: 'friction at the corners and creep take the rest before the foam presses',
          },
        ]),
    ...(ratchets === undefined
      ? []
      : [
          {
            name: 'Or ratchet straps',
            value: String(ratchets.strapsNeeded),
            where: `pulled to ${amount(POUR_RULES.ratchetTension.value)} N each, ${POUR_RULES.ratchetTension.from}`,
            isAssumed: true,
          },
        ]),
    ...(plugN === undefined
      ? []
      : [
          {
            name: 'It pushes on the plug with',
            value: newtons(plugN),
            where: 'held down, vented, and nobody over it',
          },
        ]),
  ];
}

function strapRow({
  straps,
  strapsNeeded,
  strapN,
  holds,
  assumptions,
}: NonNullable<PourOnPage['forces']['straps']>): FigureRow {
  const short = holds ? '' : `; it takes ${strapsNeeded}`;
  return {
    name: 'Straps',
    value: holds ? counted(straps, 'strap') : `${straps} do not hold`,
    where: `pulled to ${amount(strapN, 2)} N each${short}`,
    isAssumed: assumptions.some(({ name }) => name === 'strap_tension'),
  };
}
