import type { ReactNode } from 'react';
import type { Route } from '../route';
import type { Way } from '../useRoute';

interface LinkProps {
  way: Way;
  to: Route;
  className?: string;
  current?: boolean;
  children: ReactNode;
}

/** A link to a place in the app: followed without loading the page again, and opened in another tab like any other. */
export function Link({ way, to, className, current = false, children }: LinkProps) {
  return (
    <a
      href={way.href(to)}
      className={className}
      aria-current={current ? 'step' : undefined}
      onClick={(event) => {
        if (event.ctrlKey || event.metaKey || event.shiftKey || event.altKey || event.button !== 0) return;
        event.preventDefault();
        way.go(to);
      }}
    >
      {children}
    </a>
  );
}
