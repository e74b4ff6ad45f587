/** The list with what was said in the place of the card of that name, or behind the others where there is none. */
export const cardsWith = <Card extends { name: string }, Said extends Card>(
  cards: readonly Card[],
  said: Said,
  onCard: (kept: Card, said: Said) => Card,
): Card[] =>
  cards.some(({ name }) => name === said.name)
    ? cards.map((card) => (card.name === said.name ? onCard(card, said) : card))
    : [...cards, said];
