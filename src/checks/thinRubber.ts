import { DEMOLD_RULES } from '../yield';
import { ask, fine, stop, type Check } from './check';

export type ThinRubberCase = 'thick enough' | 'tears';

const stopMm = DEMOLD_RULES.rubberStop.value;

export const THIN_RUBBER: Check<ThinRubberCase> = {
  code: 'THIN_RUBBER',
  title: 'Is the rubber between two parts of the casting thick enough?',
  when: 'opening',
  facts: ['rubberThinnestMm'],
  source: DEMOLD_RULES.rubberStop.from,
  rule(facts) {
    const { rubberThinnestMm: thinnestMm } = facts;
    if (thinnestMm === undefined) return ask(facts, ['rubberThinnestMm'], { stopMm });
    const values = { thinnestMm, stopMm };
    return thinnestMm < stopMm ? stop('tears', values) : fine('thick enough', values);
  },
  examples: { fine: { rubberThinnestMm: 5 }, stop: { rubberThinnestMm: 2 } },
};
