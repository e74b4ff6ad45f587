import { useMemo } from 'react';
import type { CheckedPour, LearnedBook } from '../../job/book';
import { residueLearnedWords } from '../../words/bookWords';
import { amount, counted } from '../../words/sentence';
import { LEARN_RULES, residueAt } from '../../yield';
import { Chart } from '../charts/Chart';
import { cannotTell, residueAlt } from '../words/bookLearned';
import { drawDots } from './drawDots';
import { LearnedTag } from './LearnedTag';
import { residueChart } from './residueChart';

/** What stays in the cup, of every foam: the cup knows no foam. */
export function Residue({ learned, pours }: { learned: LearnedBook; pours: readonly CheckedPour[] }) {
  const { residue } = learned;
  const drawn = useMemo(() => {
    const { chart, sheet, count } = residueChart(learned);
    return { draw: drawDots(chart), sheet, count };
  }, [learned]);
  const sentence = residueLearnedWords(residue);
  const mixedG = (pours.at(-1) ?? learned.pours.at(-1))?.sound.mixedG;
  const least = LEARN_RULES.leastPours.value;
  return (
    <div className="taught">
      <div>
        <h3>Left in the cup</h3>
        {residue.way === 'default' ? (
          <p className="ans">
            <span className="fig s">{cannotTell(residue.pours, least, 'pour')}</span>
          </p>
        ) : (
          mixedG !== undefined && <CupFigure learned={learned} mixedG={mixedG} />
        )}
        <p className="note">{sentence}</p>
        {drawn.count > 0 && (
          <Chart
            title="Left in the cup against mixed"
            alt={residueAlt(drawn.count, sentence)}
            draw={drawn.draw}
            sheet={drawn.sheet}
            file="residue"
            note={`One ring is one pour (n = ${counted(drawn.count, 'pour')}, of every foam). Both axes start at 0.`}
          />
        )}
      </div>
    </div>
  );
}

function CupFigure({ learned: { residue }, mixedG }: { learned: LearnedBook; mixedG: number }) {
  const { value, low, high, from } = residueAt(residue, mixedG);
  return (
    <p className="ans">
      <span className="fig s">{amount(value, 2)} g</span>
      <span>
        of {amount(mixedG)} g mixed, {amount(low, 2)} to {amount(high, 2)} g, 9 times in 10
      </span>
      <LearnedTag from={from} {...(from === 'learned' ? { count: residue.pours } : {})} />
    </p>
  );
}
