import { useCallback, useEffect, useState, useSyncExternalStore } from 'react';
import { queryOf, routeOf, shopOfQuery, type Route, type ShopChoice } from './route';

export interface Nav {
  route: Route;
  shop: ShopChoice;
  go: (route: Route, shop?: ShopChoice) => void;
  /** For a link, so that it can be opened in another tab as well. */
  href: (route: Route) => string;
}

/** Where the app is, by its address; Back and Forward of the browser work. */
export function useRoute(): Nav {
  const search = useSyncExternalStore(onMove, () => location.search);
  const route = useStable(routeOf(search));
  const shop = shopOfQuery(search);
  const go = useCallback((to: Route, inShop: ShopChoice = shopOfQuery(location.search)) => {
    if (![...guards].every((mayGo) => mayGo(to))) return;
    history.pushState(null, '', location.pathname + queryOf(to, inShop));
    dispatchEvent(new Event(MOVED));
    scrollTo(0, 0);
  }, []);
  const href = useCallback((to: Route) => queryOf(to, shop), [shop]);
  useFocusOnMove(search);
  return { route, shop, go, href };
}

/** Asked before the app goes elsewhere by a link or a button of its own; one that says no keeps it where it is. */
const guards = new Set<(to: Route) => boolean>();

/** While `mayGo` is there it is asked. */
export function useGuard(mayGo: ((to: Route) => boolean) | undefined): void {
  useEffect(() => {
    if (mayGo === undefined) return;
    guards.add(mayGo);
    return () => void guards.delete(mayGo);
  }, [mayGo]);
}

const MOVED = 'risewright:moved';

function onMove(told: () => void): () => void {
  addEventListener('popstate', told);
  addEventListener(MOVED, told);
  return () => {
    removeEventListener('popstate', told);
    removeEventListener(MOVED, told);
  };
}

/** The same object while it says the same. */
function useStable(route: Route): Route {
  const [kept, keep] = useState(route);
  if (JSON.stringify(kept) === JSON.stringify(route)) return kept;
  keep(route);
  return route;
}

/** On another screen the focus goes to its title, for whoever cannot see that it has changed. */
function useFocusOnMove(search: string): void {
  const [first] = useState(search);
  const [hasMoved, setMoved] = useState(false);
  if (search !== first && !hasMoved) setMoved(true);
  useEffect(() => {
    if (!hasMoved) return;
    // The screen may have to be loaded first.
    const look = (): void => {
      const title = document.querySelector<HTMLElement>('main h1');
      if (title !== null) title.focus();
      else frame = requestAnimationFrame(look);
    };
    let frame = requestAnimationFrame(look);
    return () => cancelAnimationFrame(frame);
  }, [hasMoved, search]);
}
