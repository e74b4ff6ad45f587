interface StripMark {
  at: string;
  words: string;
  share: number;
}

/** How much of a time has gone: a line with its marks, told in words too. Shares are of its length, 0..1. */
export function TimeStrip({
  gone,
  marks,
  words,
}: {
  gone: number;
  marks: readonly StripMark[];
  words: string;
}) {
  return (
    <div className="timestrip" role="img" aria-label={words}>
      <i className="ln" />
      <i className="gone" style={{ width: percent(gone) }} />
      {marks.map(({ at, share }) => (
        <i key={at} className="at" style={{ left: percent(share) }} />
      ))}
      {marks.map(({ at, words: what, share }) => (
        <span
          key={at}
          className={share === 0 ? 'begins' : share === 1 ? 'ends' : 'between'}
          style={{ left: percent(share) }}
        >
          <b>{at}</b> {what}
        </span>
      ))}
    </div>
  );
}

const percent = (share: number): string => `${100 * Math.min(1, Math.max(0, share))}%`;
