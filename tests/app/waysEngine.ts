import { SAMPLE_SHOP } from '../../src/job/sampleShop';
import { newTicket, type Ticket } from '../../src/app/ticket/state';
import type { Desk } from '../../src/worker/answer';
import { settle, step, type } from './pageEngine';

export type Actions = Parameters<typeof step>[1][];

/** Density of water at 20 C, g/cm3 (Tanaka et al. 2001). */
export const AT_20 = 0.998207;

export const foam: Actions = [{ do: 'card', card: SAMPLE_SHOP.foams[0]! }];
export const water = (mass: string): Actions => [...type('fillWater', mass), ...type('fillTemp', '20')];
export const fill: Actions = [{ do: 'sizeWay', way: 'fill' }, ...water('4470')];
export const tape: Actions = [
  { do: 'sizeWay', way: 'tape' },
  ...type('body.0.length', '270'),
  ...type('body.0.girth', '456.5'),
];
export const sunk = (medium: 'water' | 'rice'): Actions => [
  { do: 'sizeWay', way: 'displace' },
  { do: 'sunk', sunk: medium },
  ...type('sunkBefore', '3'),
  ...type('sunkAfter', '7.478'),
];

/** Without a scan, with the light sample foam. */
export function without(...actions: Actions): { ticket: Ticket; desk: Desk } {
  const desk: Desk = {};
  return { ticket: settle(step(newTicket(), ...foam, ...actions), desk), desk };
}
