import type { Status } from '../../problem';
import { STATUS_WORDS } from '../../words/statusWords';

/** Open: nothing to say yet. The other four are the engine's. */
export type Mark = Status | 'open';

/** Shape and word, ink only: ring, triangle, octagon with a bar, broken square, dash. */
export function StatusMark({ mark, word }: { mark: Mark; word?: string }) {
  return (
    <span className="status">
      <MarkShape mark={mark} />
      {word ?? (mark === 'open' ? 'Open' : STATUS_WORDS[mark])}
    </span>
  );
}

export function MarkShape({ mark }: { mark: Mark }) {
  return (
    <svg
      viewBox="0 0 18 18"
      width="18"
      height="18"
      aria-hidden="true"
      focusable="false"
      fill="none"
      stroke="currentColor"
    >
      {SHAPES[mark]}
    </svg>
  );
}

const SHAPES: Record<Mark, React.ReactNode> = {
  fine: <circle cx="9" cy="9" r="7" strokeWidth="1.6" />,
  look: (
    <>
      <path d="M9 1.5 17 16.5H1z" fill="currentColor" strokeWidth="1" strokeLinejoin="round" />
      <path d="M9 6.5v5M9 13v1.6" stroke="var(--paper)" strokeWidth="1.7" />
    </>
  ),
  stop: (
    <>
      <path d="M6 1.8h6L16.2 6v6L12 16.2H6L1.8 12V6z" strokeWidth="2.4" />
      <path d="M5.2 9h7.6" strokeWidth="2.6" />
    </>
  ),
  unknown: (
    <>
      <rect x="1.8" y="1.8" width="14.4" height="14.4" strokeWidth="1.6" strokeDasharray="3 2" />
      <path d="M6.8 7.2c0-2.9 4.6-2.7 4.4 0-.1 1.5-2.2 1.6-2.2 3.4M9 12.3v1.5" strokeWidth="1.5" />
    </>
  ),
  open: <path d="M4 9h10" strokeWidth="1.8" />,
};
