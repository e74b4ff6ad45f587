interface OwnBarProps {
  what: string;
  share: number | undefined;
  /** What is stopped, for who hears the button without the bar. */
  stop: string;
  onCancel: () => void;
}

/** Progress of long work in its own place, with the way out: nobody has to wait for it. */
export function OwnBar({ what, share, stop, onCancel }: OwnBarProps) {
  return (
    <div className="own busy">
      <label>
        <span>{what}</span>
        <progress max={1} {...(share === undefined ? {} : { value: share })} />
      </label>
      <button type="button" className="btn line" onClick={onCancel}>
        Cancel <span className="sr">{stop}</span>
      </button>
    </div>
  );
}
