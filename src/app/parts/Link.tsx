import type { ReactNode } from 'react';
import type { Route } from '../route';
import type { Nav } from '../useRoute';

interface LinkProps {
  nav: Nav;
  to: Route;
  className?: string;
  current?: boolean;
  children: ReactNode;
}

/** A link to a place in the app: followed without loading the page again, and opened in another tab like any other. */
export function Link({ nav, to, className, current = false, children }: LinkProps) {
  return (
    <a
      href={nav.href(to)}
      className={className}
      aria-current={current ? 'step' : undefined}
      onClick={(event) => {
        if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey || event.button !== 0) return;
        event.preventDefault();
        nav.go(to);
      }}
    >
      {children}
    </a>
  );
}
