import { useDeferredValue, useMemo } from 'react';
import { siliconeAt } from '../../plan';
import { Chart, ChartToCome } from '../charts/Chart';
import { ladderNow } from '../ticket/shownNow';
import { amount } from '../../words/sentence';
import { drawSiliconeChart } from './drawSiliconeChart';
import { ladderIn, liveSilicone, siliconeWishOf, thicknessIn } from './liveSilicone';
import type { MoldProps } from './moldProps';
import { siliconeChartAlt, siliconeChartOf, siliconeCurve, siliconeSheet } from './siliconeChart';

const TITLE = 'Silicone against thickness';

/** Where it was measured, this mold, and what the stock and the kits hold. Follows the slider. */
export function SiliconeChart({ ticket, now }: Pick<MoldProps, 'ticket' | 'now'>) {
  const ladder = ladderIn(ticket);
  const wish = JSON.stringify(siliconeWishOf(ticket));
  const points = useMemo(() => {
    const said = JSON.parse(wish ?? 'null') as ReturnType<typeof siliconeWishOf> | null;
    return ladder && said ? siliconeCurve(ladder, (at) => siliconeAt(ladder, at, said)) : undefined;
  }, [ladder, wish]);
  const live = liveSilicone(ticket);
  const exact = now.answer?.silicone;
  const need = exact ?? (live.state === 'told' ? live.need : undefined);
  const thickness = thicknessIn(ticket);
  const mm = thickness?.mm;
  const label = thickness?.parameter.label;
  const data = useMemo(
    () =>
      points === undefined || need === undefined || mm === undefined || label === undefined
        ? undefined
        : siliconeChartOf(points, { label, mm, need, isAbout: exact === undefined }),
    [points, need, mm, label, exact],
  );
  // The words by the slider go first.
  const shown = useDeferredValue(data);
  const drawn = useMemo(
    () =>
      shown && {
        alt: siliconeChartAlt(shown),
        draw: drawSiliconeChart(shown),
        sheet: siliconeSheet(shown),
      },
    [shown],
  );
  if (data === undefined || shown === undefined || drawn === undefined)
    return ladderNow(ticket).state === 'working' ? <ChartToCome title={TITLE} /> : null;
  const last = data.all.at(-1);
  return (
    <Chart
      title={TITLE}
      file="silicone-by-thickness"
      {...drawn}
      note={
        <>
          Both axes start at 0. n = {amount(data.all.length)} thicknesses measured
          {last !== undefined &&
            last.mm > data.topMm &&
            `; those up to ${amount(last.mm)} mm are in the table`}
          . With waste and what stays in the cups; all else of the mold as it is.
          {data.above.map(({ text }) => ` Above what is drawn: ${text}.`)}
        </>
      }
    />
  );
}
