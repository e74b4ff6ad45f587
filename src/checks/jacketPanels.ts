import { POUR_RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type PanelCase = 'no flat panel' | 'within' | 'wide' | 'may crack' | 'cracks';

/** A round jacket stretches, a flat one bends, and plaster does not bear bending. */
export const JACKET_PANELS: Check<PanelCase> = {
  code: 'JACKET_PANELS',
  title: 'Do the flat panels of the jacket bear the foam?',
  when: 'pour',
  facts: ['panelSpanMm', 'panelLargestMm', 'panelVerdict'],
  source: `${POUR_RULES.panelBend.from}; strength: ${POUR_RULES.panelStrength.from}; widest span in any case: ${POUR_RULES.panelSpan.from}`,
  rule(facts) {
    const { panelSpanMm, panelLargestMm, panelVerdict } = facts;
    if (panelSpanMm === 0) return fine('no flat panel');
    if (panelSpanMm === undefined || panelLargestMm === undefined || panelVerdict === undefined)
      return ask(facts, ['panelSpanMm', 'panelLargestMm', 'panelVerdict']);
    const values = { panelSpanMm, panelLargestMm, overMm: panelSpanMm - panelLargestMm };
    if (panelVerdict === 'cracks') return stop('cracks', values);
    if (panelVerdict === 'may crack') return look('may crack', values);
    return panelSpanMm > panelLargestMm ? look('wide', values) : fine('within', values);
  },
  examples: {
    fine: { panelSpanMm: 100, panelLargestMm: 118, panelVerdict: 'holds' },
    look: { panelSpanMm: 170, panelLargestMm: 150, panelVerdict: 'holds' },
    stop: { panelSpanMm: 260, panelLargestMm: 118, panelVerdict: 'cracks' },
  },
};
