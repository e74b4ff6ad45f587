import { useMemo } from 'react';
import { counted } from '../../words/sentence';
import { Chart } from '../charts/Chart';
import { driftAlt, driftWords } from '../words/bookLearned';
import type { BookProps } from './bookProps';
import { about } from './dotChart';
import { drawDots } from './drawDots';
import { moldLives, type MoldLife } from './moldLife';

/** Found of what was mixed, casting by casting of each mold: a mold that leaks more and more would show. */
export function MoldLives({ book: { pours, pieces } }: Pick<BookProps, 'book'>) {
  const lives = useMemo(() => moldLives(pours, pieces), [pours, pieces]);
  if (lives.length === 0) return null;
  return (
    <div className="taught">
      {lives.map((life) => (
        <div key={life.key}>
          <h3>Along the life of {life.name}</h3>
          <p className="note">{driftWords(life.drift)}</p>
          {life.rows.length > 1 && (
            <details>
              <summary>
                Show the dots<span className="sr"> of {life.name}</span>
              </summary>
              <Life life={life} />
            </details>
          )}
        </div>
      ))}
    </div>
  );
}

/** Castings that scatter by less than this fill the chart no more than this. A choice of ours. */
const LEAST_SPAN = 4;

function Life({ life }: { life: MoldLife }) {
  const drawn = useMemo(() => {
    const percents = life.rows.map(({ foundShare }) => 100 * foundShare);
    return {
      draw: drawDots({
        x: { label: 'casting of the mold', domain: [0, life.castings + 1], isWhole: true },
        y: { label: 'found of what was mixed, %', domain: about(percents, LEAST_SPAN), digits: 4 },
        dots: life.rows.map(({ place, foundShare }) => ({ x: place, y: 100 * foundShare })),
      }),
      sheet: {
        heads: ['Casting of the mold', 'Pour', 'Found of the mix, %'],
        rows: life.rows.map(({ place, no, foundShare }) => [
          String(place),
          no,
          Number((100 * foundShare).toFixed(2)),
        ]),
      },
    };
  }, [life]);
  return (
    <Chart
      title="Found of what was mixed"
      alt={driftAlt(life.name, life.rows)}
      {...drawn}
      file="mold-life"
      note={`One ring is one pour (n = ${counted(life.rows.length, 'pour')}); no line is drawn. The axis of the share does not start at 0.`}
    />
  );
}
