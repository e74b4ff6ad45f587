import { useEffect, useState } from 'react';
import { loadPlot, type PlotKit } from './loadPlot';

/** The drawing library once it is wanted: still coming, here, or not to be had. */
export function usePlot(isWanted: boolean): PlotKit | 'coming' | 'failed' {
  const [kit, setKit] = useState<PlotKit | 'coming' | 'failed'>('coming');
  useEffect(() => {
    if (!isWanted) return;
    let isOver = false;
    loadPlot().then(
      (loaded) => !isOver && setKit(loaded),
      () => !isOver && setKit('failed'),
    );
    return () => {
      isOver = true;
    };
  }, [isWanted]);
  return kit;
}
