import type { ShopCore } from '../../store';

interface NamedCard {
  name: string;
}

/** What keeps a card from having this name; `own` is the one it goes by now. */
export function nameTrouble(
  cards: readonly NamedCard[],
  name: string,
  own: string | undefined,
): string | undefined {
  if (name === '') return 'A card needs a name.';
  const isTaken = name !== own && cards.some((card) => card.name === name);
  return isTaken ? `There is a card called ${name} already.` : undefined;
}

/** The shop with a card in the place of the one of before, or behind the others; its stock goes by its new name. */
export function withCard<Card extends NamedCard>(
  core: ShopCore,
  list: 'foams' | 'silicones',
  { own, card }: { own: string | undefined; card: (kept: Card | undefined) => Card },
): ShopCore {
  const cards = core[list] as unknown as Card[];
  const at = cards.findIndex(({ name }) => name === own);
  const made = card(cards[at]);
  return {
    ...core,
    [list]: at < 0 ? [...cards, made] : cards.with(at, made),
    stock: core.stock.map((row) =>
      own !== undefined && row.card === own ? { ...row, card: made.name } : row,
    ),
  };
}
