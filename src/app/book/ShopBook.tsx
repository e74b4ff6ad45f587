import { useEffect } from 'react';
import { Link } from '../parts/Link';
import { useFocusKept } from '../parts/useFocusKept';
import { StoreProblem } from '../shop/StoreProblem';
import { useShop } from '../shop/shopContext';
import type { Nav } from '../useRoute';
import { Book } from './Book';
import { usePlan } from './usePlan';

/** The Book of the whole shop, on a page of its own. */
export function ShopBook({ nav }: { nav: Nav }) {
  const { view, choice } = useShop();
  const { plan, problem } = usePlan(nav);
  useFocusKept();
  useEffect(() => {
    document.title = 'Book · Risewright';
  }, []);
  const name = view?.core.name ?? '';
  return (
    <div className="page wide">
      <main className="ticket" id="main" tabIndex={-1}>
        <p className="shop">
          <Link nav={nav} to={{ at: 'shelf' }} className="act">
            Back to the Shelf
          </Link>
        </p>
        <header className="head">
          <p className="of">
            {[name, choice === 'sample' ? 'sample shop, all invented' : ''].filter(Boolean).join(', ')}
          </p>
          <h1 tabIndex={-1}>Book</h1>
        </header>
        <StoreProblem problem={problem} />
        <Book nav={nav} onPlan={plan} />
      </main>
    </div>
  );
}
