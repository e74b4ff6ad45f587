import { DEMOLD_RULES } from '../yield';
import { ask, fine, stop, type Check } from './check';

export type ThinRubberCase = 'none seen' | 'thick enough' | 'tears';

const stopMm = DEMOLD_RULES.rubberStop.value;
/** As wide as gaps are looked for: such a figure says that none was seen, not how thick the rubber is. */
const lookedMm = DEMOLD_RULES.rubberLooked.value;

export const THIN_RUBBER: Check<ThinRubberCase> = {
  code: 'THIN_RUBBER',
  title: 'Is the rubber between two parts of the casting thick enough?',
  when: 'opening',
  facts: ['rubberThinnestMm'],
  source: `stop: ${DEMOLD_RULES.rubberStop.from}; looked for: ${DEMOLD_RULES.rubberLooked.from}`,
  rule(facts) {
    const { rubberThinnestMm: thinnestMm } = facts;
    if (thinnestMm === undefined) return ask(facts, ['rubberThinnestMm'], { stopMm });
    if (thinnestMm >= lookedMm) return fine('none seen', { lookedMm });
    const values = { thinnestMm, stopMm };
    return thinnestMm < stopMm ? stop('tears', values) : fine('thick enough', values);
  },
  examples: { fine: { rubberThinnestMm: 5 }, stop: { rubberThinnestMm: 2 } },
};
