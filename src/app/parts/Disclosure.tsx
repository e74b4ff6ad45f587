import type { ReactNode } from 'react';

/** "Show the sum": native details, opens full width. */
export function Disclosure({ title = 'Show the sum', children }: { title?: string; children: ReactNode }) {
  return (
    <details>
      <summary>{title}</summary>
      <div className="sum">{children}</div>
    </details>
  );
}
