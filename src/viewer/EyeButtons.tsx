import type { Eye } from './eye';
import { MOVES } from './moves';
import { VIEWS, type View } from './views';

/** A word for everything a drag can do: the straight views, turn, zoom and move. */
export function EyeButtons({ eye, view }: { eye: Eye | undefined; view: View | undefined }) {
  return (
    <>
      <div className="views" role="group" aria-label="Straight views">
        {VIEWS.map((straight) => (
          <button
            key={straight.key}
            type="button"
            className="act"
            aria-pressed={view === straight}
            onClick={() => eye?.look(straight)}
          >
            {straight.word}
          </button>
        ))}
      </div>
      <div className="moves" role="group" aria-label="Turn, zoom and move">
        {MOVES.map(({ word, move }) => (
          <button key={word} type="button" className="act" onClick={() => eye !== undefined && move(eye)}>
            {word}
          </button>
        ))}
      </div>
    </>
  );
}
