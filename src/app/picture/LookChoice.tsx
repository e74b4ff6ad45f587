/** What is drawn of the piece. */
export type Look = 'mold' | 'contours' | 'thickness';

const WORDS: Readonly<Record<Look, string>> = {
  mold: 'Show the mold',
  contours: 'Show contour lines',
  thickness: 'Show thickness',
};

interface LookChoiceProps {
  look: Look;
  looks: readonly Look[];
  onLook: (look: Look) => void;
}

/** Verbs, one of which holds. Nothing where there is nothing to choose. */
export function LookChoice({ look, looks, onLook }: LookChoiceProps) {
  if (looks.length < 2) return null;
  return (
    <div className="looks" role="group" aria-label="What the picture shows">
      {looks.map((one) => (
        <button
          key={one}
          type="button"
          className="act"
          aria-pressed={one === look}
          onClick={() => onLook(one)}
        >
          {WORDS[one]}
        </button>
      ))}
    </div>
  );
}
