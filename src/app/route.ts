/** A place in the app. It stands in the query of the address, so that the hash stays free for links within a page. */
export type Route = { at: 'shelf' } | { at: 'shopBook' } | { at: Step; piece: string };

export const STEPS = ['measure', 'mold', 'batch', 'bench', 'book'] as const;
export type Step = (typeof STEPS)[number];

/** Which shop is open: the user's own, or the invented one to try things with. */
export type ShopChoice = 'own' | 'sample';

/** The place that a query string names; the Shelf where it names none. The Book is of a piece, or of the whole shop. */
export function routeOf(search: string): Route {
  const query = new URLSearchParams(search);
  const piece = query.get('piece');
  if (piece === null || piece === '')
    return query.get('at') === 'book' ? { at: 'shopBook' } : { at: 'shelf' };
  const at = STEPS.find((step) => step === query.get('at')) ?? 'measure';
  return { at, piece };
}

export const shopOfQuery = (search: string): ShopChoice =>
  new URLSearchParams(search).get('shop') === 'sample' ? 'sample' : 'own';

/** The query string of a place; never empty, so that a link to the Shelf is one too. */
export function queryOf(route: Route, shop: ShopChoice): string {
  const query = new URLSearchParams();
  if (shop === 'sample') query.set('shop', 'sample');
  if ('piece' in route) {
    query.set('piece', route.piece);
    query.set('at', route.at);
  }
  if (route.at === 'shopBook') query.set('at', 'book');
  return `?${query.toString()}`;
}
