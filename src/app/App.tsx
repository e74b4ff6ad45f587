import { lazy, Suspense } from 'react';
import { useRoute } from './useRoute';
import { UpdateBar } from './offline/UpdateBar';
import { FaultBoundary } from './parts/FaultBoundary';
import { Foot } from './shop/Foot';
import { ShopContext } from './shop/shopContext';
import { StoreTrouble } from './shop/StoreTrouble';
import { useOpenShop } from './shop/useOpenShop';
import { Shelf } from './shelf/Shelf';
import type { Route, ShopChoice } from './route';
import type { Way } from './useRoute';

const TicketPage = lazy(() =>
  import('./ticket/TicketPage').then((loaded) => ({ default: loaded.TicketPage })),
);

const ShopBook = lazy(() => import('./book/ShopBook').then((loaded) => ({ default: loaded.ShopBook })));

/** The Shelf, the shop's Book, or one piece's ticket. */
export function App() {
  const way = useRoute();
  const shop = useOpenShop(way.shop);
  const { route } = way;
  return (
    <ShopContext value={shop}>
      <a className="skip" href="#main">
        Skip to the {PLACE[placeOf(route)]}
      </a>
      <UpdateBar />
      <StoreTrouble />
      <FaultBoundary key={'piece' in route ? route.piece : route.at}>
        <Suspense fallback={<p className="then">Loading …</p>}>
          <Screen way={way} choice={shop.choice} />
        </Suspense>
      </FaultBoundary>
      <Foot />
    </ShopContext>
  );
}

function Screen({ way, choice }: { way: Way; choice: ShopChoice }) {
  const { route } = way;
  if (route.at === 'shelf') return <Shelf key={choice} way={way} />;
  if (route.at === 'shopBook') return <ShopBook key={choice} way={way} />;
  return <TicketPage key={`${choice} ${route.piece}`} way={way} piece={route.piece} at={route.at} />;
}

type Place = 'shelf' | 'shopBook' | 'ticket';

const PLACE: Readonly<Record<Place, string>> = { shelf: 'Shelf', shopBook: 'Book', ticket: 'ticket' };

const placeOf = (route: Route): Place => ('piece' in route ? 'ticket' : route.at);
