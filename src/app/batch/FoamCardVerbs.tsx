import type { Dispatch } from 'react';
import { cardsWith } from '../shop/cardsWith';
import { CardVerbs } from '../shop/CardVerbs';
import { useShop } from '../shop/shopContext';
import { foamOnTicket, isAsOnFoamCard, onFoamCard } from '../ticket/foamOnTicket';
import type { Action } from '../ticket/reducer';
import type { Ticket } from '../ticket/state';

/** Takes a foam card of the shop, and keeps what stands here as one. */
export function FoamCardVerbs({ ticket, dispatch }: { ticket: Ticket; dispatch: Dispatch<Action> }) {
  const { view } = useShop();
  const foam = foamOnTicket(ticket);
  return (
    <CardVerbs
      of="foam"
      cards={view?.core.foams ?? []}
      name={ticket.foam.name}
      said={foam?.ok === true ? foam.value : undefined}
      isAs={(card) => isAsOnFoamCard(ticket, card)}
      onUse={(card) => dispatch({ do: 'card', card })}
      keep={(core, card) => ({ ...core, foams: cardsWith(core.foams, card, onFoamCard) })}
    />
  );
}
