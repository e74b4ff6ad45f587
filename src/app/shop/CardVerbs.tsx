import { useId, type ReactNode } from 'react';
import type { ShopCore } from '../../store';
import { SelectField } from '../parts/SelectField';
import { useShop } from './shopContext';
import { StoreProblem } from './StoreProblem';
import { useTrying } from './useTrying';

interface CardVerbsProps<Card extends { name: string }, Said extends Card> {
  /** Foam or silicone. */
  of: string;
  cards: readonly Card[];
  /** That stands on the ticket. */
  name: string;
  /** The card that stands on the ticket, where it is one. */
  said: Said | undefined;
  isAs: (card: Card) => boolean;
  onUse: (card: Card) => void;
  keep: (core: ShopCore, said: Said) => ShopCore;
  children?: ReactNode;
}

/** As many stand as buttons; more are a list. */
const MOST_BUTTONS = 4;

/** Takes a card of the shop, and keeps what stands on the ticket as one. */
export function CardVerbs<Card extends { name: string }, Said extends Card>(
  props: CardVerbsProps<Card, Said>,
) {
  const { cards, name, said, isAs, onUse, keep, children } = props;
  const { store } = useShop();
  const { attempt, problem } = useTrying();
  const typed = name.trim();
  const kept = cards.find((card) => card.name.trim() === typed);
  const isKept = kept !== undefined && isAs(kept);
  const others = cards.filter((card) => !(card === kept && isKept));
  const doKeep = (): void => {
    if (said !== undefined) attempt(() => store.changeCore((core) => keep(core, said)));
  };
  return (
    <>
      <div className="chg">
        {others.length <= MOST_BUTTONS ? (
          others.map((card) => (
            <button key={card.name} type="button" className="act" onClick={() => onUse(card)}>
              {card === kept ? 'Put the card back' : `Use ${card.name}`}
            </button>
          ))
        ) : (
          <CardList {...props} cards={others} />
        )}
        {kept !== undefined && !isKept && others.length > MOST_BUTTONS && (
          <button type="button" className="act" onClick={() => onUse(kept)}>
            Put the card back
          </button>
        )}
        {said !== undefined && typed !== '' && !isKept && (
          <button type="button" className="act" onClick={doKeep}>
            {kept === undefined ? 'Keep this card in the shop' : 'Keep the change'}
          </button>
        )}
        {children}
      </div>
      <p className="note" role="status">
        {isKept && `${kept.name} stands here as on the card of the shop.`}
        {kept !== undefined && !isKept && `This is not as on the card of ${kept.name}.`}
        {kept === undefined &&
          said !== undefined &&
          typed === '' &&
          'With a name it can be kept in the shop.'}
      </p>
      <StoreProblem problem={problem} />
    </>
  );
}

function CardList<Card extends { name: string }, Said extends Card>({
  of,
  cards,
  onUse,
}: CardVerbsProps<Card, Said>) {
  const id = useId();
  return (
    <SelectField
      key={id}
      label={`Use a card of the shop: ${of}`}
      value=""
      blank="choose one"
      options={cards.map(({ name }) => ({ value: name, label: name }))}
      onChoose={(name) => {
        const card = cards.find((one) => one.name === name);
        if (card !== undefined) onUse(card);
      }}
    />
  );
}
