import { MarkShape } from '../parts/StatusMark';
import type { BenchStop } from './benchStops';

interface StopsProps {
  stops: readonly BenchStop[];
  read: Readonly<Record<string, boolean>>;
  onRead: (read: Readonly<Record<string, boolean>>) => void;
}

/** Every Stop of the plan in words; each has to be read before the clock is started, and then it may be. */
export function Stops({ stops, read, onRead }: StopsProps) {
  if (stops.length === 0) return null;
  return (
    <section className="stops" aria-label="What the plan says Stop to">
      <ul>
        {stops.map(({ text, hint }) => (
          <li key={text}>
            <p>
              <MarkShape mark="stop" />
              <span>
                <b>Stop: {text}</b> {hint}
              </span>
            </p>
            <label className="tick">
              <input
                type="checkbox"
                checked={read[text] === true}
                onChange={(event) => onRead({ ...read, [text]: event.target.checked })}
              />
              <span>I have read it</span>
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}
