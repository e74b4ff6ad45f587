import type { ShopFoam } from '../../job/foamSheet';
import { good, type Outcome } from '../../problem';
import type { FoamCard } from '../../yield';
import { FOAM_BOXES, foamSaid, foamTexts, type FoamBox } from './foamTexts';
import { isCloseTo } from './isCloseTo';
import { valueOf } from './readField';
import type { Ticket } from './state';
import { cardOf, isUnread } from './wishes';

/** The card that stands on the ticket, with all of its sheet; undefined while it is none or a box of it cannot be read. */
export function foamOnTicket(ticket: Ticket): Outcome<ShopFoam> | undefined {
  const card = cardOf(ticket);
  if (card?.ok !== true) return card;
  const { fields } = ticket;
  if (FOAM_BOXES.some((name) => isUnread(fields, name))) return undefined;
  const value = (name: FoamBox): number | undefined => valueOf(name, fields[name]);
  const told = {
    creamS: value('cream'),
    openMin: value('openTime'),
    timesAtC: value('sheetTemp'),
    ncoShare: value('nco'),
    waterShare: value('water'),
    aPerKg: value('priceA'),
    bPerKg: value('priceB'),
  };
  const known = Object.entries(told).filter(([, number]) => number !== undefined);
  return good({ ...card.value, name: card.value.name.trim(), ...Object.fromEntries(known) });
}

/** What stands on the ticket, on the card of before: what the page cannot say of a card stays, what was cleared goes. */
export const onFoamCard = (kept: FoamCard, said: ShopFoam): FoamCard => ({
  ...(Object.fromEntries(
    Object.entries(kept).filter(([key]) => !ON_TICKET.includes(key)),
  ) as Partial<FoamCard>),
  ...said,
});

const ON_TICKET: readonly string[] = [
  'partDensities',
  'creamS',
  'openMin',
  'timesAtC',
  'ncoShare',
  'waterShare',
  'aPerKg',
  'bPerKg',
] satisfies (keyof ShopFoam)[];

/** Whether the ticket says of the foam what the card says: the same name, source and figures, whatever unit they are typed in. */
export function isAsOnFoamCard({ fields, foam }: Ticket, card: FoamCard): boolean {
  const texts = foamTexts(card);
  const { name, from, by } = foamSaid(card);
  return (
    foam.name.trim() === name.trim() &&
    foam.from === from &&
    foam.by === by &&
    FOAM_BOXES.every((box) => isCloseTo(valueOf(box, fields[box]), valueOf(box, texts[box])))
  );
}
