import { lazy, Suspense } from 'react';
import { useRoute } from './useRoute';
import { useAskBeforeLeaving } from './ticket/useAskBeforeLeaving';
import { UpdateBar } from './offline/UpdateBar';
import { useUpdateHold } from './offline/useUpdateHold';
import { FaultBoundary } from './parts/FaultBoundary';
import { Foot } from './shop/Foot';
import { ShopContext } from './shop/shopContext';
import { StoreTrouble } from './shop/StoreTrouble';
import { useOpenShop } from './shop/useOpenShop';
import { Shelf } from './shelf/Shelf';
import type { Route } from './route';
import type { Nav } from './useRoute';

const TicketPage = lazy(() =>
  import('./ticket/TicketPage').then((loaded) => ({ default: loaded.TicketPage })),
);

const ShopBook = lazy(() => import('./book/ShopBook').then((loaded) => ({ default: loaded.ShopBook })));

/** The Shelf, the shop's Book, or one piece's ticket. */
export function App() {
  const nav = useRoute();
  const shop = useOpenShop(nav.shop);
  const { route } = nav;
  // What the page alone keeps goes with it.
  const isFleeting = shop.store.keeps === 'page' && (shop.view?.pieces.length ?? 0) > 0;
  useAskBeforeLeaving(isFleeting);
  useUpdateHold(isFleeting);
  return (
    <ShopContext value={shop}>
      <a className="skip" href="#main">
        Skip to the {PLACE[placeOf(route)]}
      </a>
      <UpdateBar />
      <StoreTrouble />
      <FaultBoundary key={'piece' in route ? route.piece : route.at}>
        <Suspense fallback={<p className="then">Loading …</p>}>
          <Screen nav={nav} of={`${shop.choice} ${shop.store.keeps}`} />
        </Suspense>
      </FaultBoundary>
      <Foot />
    </ShopContext>
  );
}

/** `of`: which shop, and where it is kept. In another one every screen begins anew. */
function Screen({ nav, of }: { nav: Nav; of: string }) {
  const { route } = nav;
  if (route.at === 'shelf') return <Shelf key={of} nav={nav} />;
  if (route.at === 'shopBook') return <ShopBook key={of} nav={nav} />;
  return <TicketPage key={`${of} ${route.piece}`} nav={nav} piece={route.piece} at={route.at} />;
}

type Place = 'shelf' | 'shopBook' | 'ticket';

const PLACE: Readonly<Record<Place, string>> = { shelf: 'Shelf', shopBook: 'Book', ticket: 'ticket' };

const placeOf = (route: Route): Place => ('piece' in route ? 'ticket' : route.at);
