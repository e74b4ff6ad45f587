import type { LearnedBook, LearnedFoam } from '../../job/book';
import { freeRiseLearnedWords } from '../../words/bookWords';
import { formatDensity } from '../../units';
import { LearnedTag } from './LearnedTag';

/** How far each foam rises by itself, and what says so. */
export const FreeRises = ({ learned: { foams } }: { learned: LearnedBook }) => (
  <>
    {foams.map((foam) => (
      <div key={foam.foam}>
        <h3>Free rise, {foam.foam}</h3>
        <OneRise foam={foam} />
      </div>
    ))}
  </>
);

function OneRise({ foam: { foam, freeRise, card } }: { foam: LearnedFoam }) {
  if (freeRise === undefined)
    return (
      <p className="ans">
        <span className="fig s">cannot tell yet</span>
        <span className="note">
          No card, no cup test and no short pour of it: a full mold cannot teach this.
        </span>
      </p>
    );
  const { freeRiseKgM3, cups, shortPours } = freeRise;
  const count = freeRiseKgM3.from === 'cup-test' ? cups : shortPours;
  return (
    <>
      <p className="ans">
        <span className="fig s">{formatDensity(freeRiseKgM3.value)}</span>
        <LearnedTag from={freeRiseKgM3.from} {...(count > 0 ? { count } : {})} />
      </p>
      <p className="note">
        {freeRiseLearnedWords(foam, freeRise, card?.freeRiseKgM3, 'both')} A full mold cannot teach this.
      </p>
    </>
  );
}
