import { useMemo } from 'react';
import type { LearnedBook } from '../../job/book';
import { counted } from '../../words/sentence';
import { Chart } from '../charts/Chart';
import { skinAlt } from '../words/bookNext';
import { drawDots } from './drawDots';
import { baseOf } from './baseOf';
import { skinPlot, skinPours } from './skinPlotOf';

/** Each pour as its skin score, at its pack and the warmth of its mold. No curve: so few carry none. */
export function SkinPlot({ learned, isAll }: { learned: LearnedBook; isAll: boolean }) {
  const drawn = useMemo(() => {
    const change = learned.next?.change;
    const pours = skinPours(learned, isAll ? undefined : learned.next?.foam);
    const { chart, sheet } = skinPlot(pours, change, baseOf(learned, change));
    return { count: pours.length, alt: skinAlt(pours), draw: drawDots(chart), sheet };
  }, [learned, isAll]);
  if (drawn.count === 0)
    return (
      <p className="note quiet">
        No pour with its pack, the warmth of its mold and its skin: nothing to draw.
      </p>
    );
  const { count, ...chart } = drawn;
  return (
    <Chart
      title="Skin, by pack and mold temperature"
      {...chart}
      file="skin"
      note={`Each numeral is one pour, drawn as its skin score (n = ${counted(count, 'pour')}), bold from 3 up, nudged sideways where two would overlap. No curve: the dots do not carry one. Neither axis starts at 0.`}
    />
  );
}
