import { useReducer, useState } from 'react';
import { sheetOf } from '../../job/foamSheet';
import type { FoamCard } from '../../yield';
import { fieldOf } from '../batch/fieldProblem';
import { FoamFields } from '../batch/FoamFields';
import { QuantityField } from '../parts/QuantityField';
import { useShop } from '../shop/shopContext';
import { foamOnTicket, onFoamCard } from '../ticket/foamOnTicket';
import { withFoam } from '../ticket/foamTexts';
import { readKitsText } from '../ticket/kits';
import { kitText } from '../ticket/moldState';
import { ticketReducer } from '../ticket/reducer';
import { newTicket, type Ticket } from '../ticket/state';
import { ratioWords } from '../words/ratioWords';
import { nameTrouble, withCard } from './cardChange';
import { CardForm } from './CardForm';
import { KitsLine } from './KitsLine';

/** A foam card of the shop: the boxes of Batch, and what else its data sheet tells. */
export function FoamCardForm({ name, onDone }: { name: string | undefined; onDone: () => void }) {
  const { view } = useShop();
  const foams = view?.core.foams ?? [];
  const [kept] = useState(() => foams.find((card) => card.name === name));
  const [ticket, dispatch] = useReducer(ticketReducer, kept, ticketOf);
  const [kits, setKits] = useState(() => (kept === undefined ? '' : kitsOf(kept)));
  const card = foamOnTicket(ticket);
  const read = readKitsText(kits);
  const said = card?.ok === true ? card.value : undefined;
  const lacks =
    said === undefined || !read.ok
      ? 'A foam card needs its free rise and the parts of A and of B, and every other box readable or blank.'
      : nameTrouble(foams, ticket.foam.name.trim(), name);
  const fields = { ticket, dispatch };
  return (
    <CardForm
      name={name}
      lacks={lacks}
      onDone={onDone}
      change={(core) =>
        withCard<FoamCard>(core, 'foams', {
          own: name,
          card: (now) => withKits(now === undefined ? said! : onFoamCard(now, said!), read),
        })
      }
    >
      <FoamFields
        {...fields}
        problemOf={(field) =>
          card?.ok === false && fieldOf(card.problem) === field ? card.problem : undefined
        }
      />
      {said !== undefined && <p className="note">{ratioWords(said)}</p>}
      <div className="fields">
        <QuantityField name="cream" label="Cream time" {...fields} />
        <QuantityField name="openTime" label="May be opened after, data sheet" {...fields} />
        <QuantityField name="sheetTemp" label="Its density and times hold at" {...fields} />
        <QuantityField name="nco" label="NCO content of A, data sheet" {...fields} />
        <QuantityField name="water" label="Water in B, data sheet" {...fields} />
      </div>
      <div className="fields">
        <QuantityField name="priceA" label="Part A costs" {...fields} />
        <QuantityField name="priceB" label="Part B costs" {...fields} />
        <KitsLine text={kits} onText={setKits} />
      </div>
    </CardForm>
  );
}

const ticketOf = (card: FoamCard | undefined): Ticket => {
  const ticket = newTicket();
  return card === undefined ? ticket : { ...ticket, ...withFoam(ticket.fields, card) };
};

const kitsOf = (card: FoamCard): string => (sheetOf(card).kits ?? []).map(kitText).join(', ');

function withKits(card: FoamCard, read: ReturnType<typeof readKitsText>): FoamCard {
  const { kits: _old, ...rest } = card as FoamCard & { kits?: unknown };
  return read.ok && read.kits.length > 0 ? Object.assign({ ...rest }, { kits: read.kits }) : rest;
}
