import type { Dispatch } from 'react';
import { stockTotals } from '../../job/stockTotals';
import { numberText } from '../../units';
import { cardsWith } from '../shop/cardsWith';
import { CardVerbs } from '../shop/CardVerbs';
import { useShop } from '../shop/shopContext';
import type { Action } from '../ticket/reducer';
import { isAsOnSiliconeCard, onSiliconeCard, siliconeOnTicket } from '../ticket/siliconeOnTicket';
import type { Ticket } from '../ticket/state';

interface SiliconeCardVerbsProps {
  ticket: Ticket;
  dispatch: Dispatch<Action>;
}

/** Takes a silicone card of the shop or what is left of it, and keeps what stands here as one. */
export function SiliconeCardVerbs({ ticket, dispatch }: SiliconeCardVerbsProps) {
  const { view } = useShop();
  const said = siliconeOnTicket(ticket);
  return (
    <CardVerbs
      of="silicone"
      cards={view?.core.silicones ?? []}
      name={ticket.molding.siliconeName}
      said={said?.ok === true ? said.value : undefined}
      isAs={(card) => isAsOnSiliconeCard(ticket, card)}
      onUse={(card) => dispatch({ do: 'silicone', card })}
      keep={(core, card) => ({ ...core, silicones: cardsWith(core.silicones, card, onSiliconeCard) })}
    >
      <StockVerb ticket={ticket} dispatch={dispatch} />
    </CardVerbs>
  );
}

/** Types what is left on the stock shelf of the silicone that stands on the ticket. */
function StockVerb({ ticket: { molding, fields }, dispatch }: SiliconeCardVerbsProps) {
  const { view } = useShop();
  const { baseKg, catalystKg } = stockTotals(view?.core.stock ?? [], molding.siliconeName.trim());
  const typed = [
    ['stockBase', textOf(baseKg)],
    ['stockCatalyst', textOf(catalystKg)],
  ] as const;
  const isTyped = typed.every(([field, text]) => fields[field].text === text);
  if ((baseKg === undefined && catalystKg === undefined) || isTyped) return null;
  return (
    <button
      type="button"
      className="act"
      onClick={() => {
        for (const [field, text] of typed) dispatch({ do: 'type', field, text });
      }}
    >
      Use what is on the stock shelf
    </button>
  );
}

const textOf = (kg: number | undefined): string => (kg === undefined ? '' : `${numberText(kg)} kg`);
