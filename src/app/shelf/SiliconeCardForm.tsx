import { useReducer, useState } from 'react';
import type { SiliconeCard } from '../../yield';
import { SiliconeNameAndCure } from '../mold/SiliconeNameAndCure';
import { QuantityField } from '../parts/QuantityField';
import { useShop } from '../shop/shopContext';
import { withSilicone } from '../ticket/moldState';
import { ticketReducer } from '../ticket/reducer';
import { onSiliconeCard, siliconeOnTicket } from '../ticket/siliconeOnTicket';
import { newTicket, type Ticket } from '../ticket/state';
import { sayOnPage } from '../words/sayOnPage';
import { siliconeRatioWords } from '../words/ratioWords';
import { nameTrouble, withCard } from './cardChange';
import { CardForm } from './CardForm';
import { KitsLine } from './KitsLine';

/** A silicone card of the shop: the boxes of Mold, from the data sheet. */
export function SiliconeCardForm({ name, onDone }: { name: string | undefined; onDone: () => void }) {
  const { view } = useShop();
  const silicones = view?.core.silicones ?? [];
  const [kept] = useState(() => silicones.find((card) => card.name === name));
  const [ticket, dispatch] = useReducer(ticketReducer, kept, ticketOf);
  const { siliconeName, kits } = ticket.molding;
  const card = siliconeOnTicket(ticket);
  const said = card?.ok === true ? card.value : undefined;
  const lacks =
    nameTrouble(silicones, siliconeName.trim(), name) ??
    (card === undefined
      ? 'A silicone card needs its density, parts of base and of catalyst and its pot life, and every other box readable or blank.'
      : card.ok
        ? undefined
        : sayOnPage(card.problem).text);
  const fields = { ticket, dispatch };
  return (
    <CardForm
      name={name}
      lacks={lacks}
      onDone={onDone}
      change={(core) =>
        withCard<SiliconeCard>(core, 'silicones', {
          own: name,
          card: (now) => (now === undefined ? said! : onSiliconeCard(now, said!)),
        })
      }
    >
      <div className="fields">
        <SiliconeNameAndCure {...fields} />
        <QuantityField name="siliconeDensity" label="Density of the mix" {...fields} />
      </div>
      <div className="fields">
        <QuantityField name="siliconeBase" label="Parts of base, by weight" {...fields} />
        <QuantityField name="siliconeCatalyst" label="Parts of catalyst, by weight" {...fields} />
        <QuantityField name="potLife" label="Pot life" {...fields} />
        <QuantityField name="potLifeAt" label="The pot life holds at" {...fields} />
      </div>
      {said !== undefined && <p className="note">{siliconeRatioWords(said)}</p>}
      <div className="fields">
        <QuantityField name="viscosity" label="Viscosity of the mix" {...fields} />
        <QuantityField name="sheetShrink" label="Shrink, data sheet" {...fields} />
        <KitsLine text={kits} onText={(text) => dispatch({ do: 'kits', text })} />
      </div>
    </CardForm>
  );
}

const ticketOf = (card: SiliconeCard | undefined): Ticket => {
  const ticket = newTicket();
  return card === undefined ? ticket : { ...ticket, ...withSilicone(ticket.molding, ticket.fields, card) };
};
