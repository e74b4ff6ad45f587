import { useMemo } from 'react';
import { counted } from '../../words/sentence';
import type { BatchProps } from '../batch/batchProps';
import { Chart, ChartToCome } from '../charts/Chart';
import { readPastText } from '../ticket/past';
import { packChartAlt } from '../words/packChartWords';
import { drawPackChart } from './drawPackChart';
import { packChartOf, packSheet } from './packChart';

const TITLE = 'What the packs weigh, beside what just fills';

/** Packs, castings of before and this pour along one line of grams. Nothing of before while it is worked out. */
export function PackChart({ ticket, pour }: Pick<BatchProps, 'ticket' | 'pour'>) {
  const { past } = ticket.pouring;
  const drawn = useMemo(() => {
    if (pour.answer === undefined) return undefined;
    const read = readPastText(past);
    const data = packChartOf(pour.answer, read.ok ? read.past : []);
    const { stepG } = pour.answer.batch;
    return {
      castings: data.past.reduce((sum, { count }) => sum + count, 0),
      alt: packChartAlt(data, stepG),
      draw: drawPackChart(data, stepG),
      sheet: packSheet(data),
    };
  }, [pour.answer, past]);
  if (drawn === undefined) return pour.state === 'working' ? <ChartToCome title={TITLE} /> : null;
  const cups = pour.answer?.cups.cups.length ?? 1;
  return (
    <Chart
      title={TITLE}
      file="packs"
      {...drawn}
      note={
        <>
          {drawn.castings === 0
            ? 'No castings of before were typed. '
            : `n = ${counted(drawn.castings, 'casting')} of before, each where its pack lies for this mold; a ring fell short. `}
          The line of grams does not start at 0.
          {cups > 1 && ' As mixed in one cup: several cups keep a residue each and take more.'}
        </>
      }
    />
  );
}
