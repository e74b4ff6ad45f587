import type { PourAsk } from '../pourAsk';
import type { PreparedPour } from '../preparePour';
import { airFigures } from './airFigures';
import { batchFigures } from './batchFigures';
import { checkFigures } from './checkFigures';
import { colorFigures } from './colorFigures';
import { cupFigures } from './cupFigures';
import { doubtFigures } from './doubtFigures';
import { forceFigures } from './forceFigures';
import type { OpenedFigure } from './openedFigure';
import { packFigures } from './packFigures';
import { timeFigures } from './timeFigures';
import { warmthFigures } from './warmthFigures';

export type { OpenedFigure, OpenedInput, Shown } from './openedFigure';

/** Every number of a prepared pour that was reckoned, opened; in the order in which they follow from each other. */
export const figuresOf = (ready: PreparedPour, ask: PourAsk): OpenedFigure[] =>
  [
    airFigures,
    batchFigures,
    doubtFigures,
    packFigures,
    forceFigures,
    cupFigures,
    timeFigures,
    warmthFigures,
    colorFigures,
    checkFigures,
  ].flatMap((open) => open(ready, ask));
