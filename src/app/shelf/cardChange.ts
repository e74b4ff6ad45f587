import type { ShopCore } from '../../store';

interface NamedCard {
  name: string;
}

/** Another card of that name is there already. */
export const isTaken = (cards: readonly NamedCard[], name: string, own: string | undefined): boolean =>
  name !== own && cards.some((card) => card.name === name);

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
