import { moldTemperatureBand, WARMTH_RULES, type MoldTemperatureBand } from '../yield';
import { ask, fine, look, stop, type Check } from './check';

export type MoldTempCase = Exclude<MoldTemperatureBand, 'unknown'>;

const { low, high } = WARMTH_RULES.moldFine;
const stopC = WARMTH_RULES.surfaceStop.value;

export const MOLD_TEMPERATURE: Check<MoldTempCase> = {
  code: 'MOLD_TEMPERATURE',
  title: 'Is the mold warm enough, and not too hot?',
  when: 'pour',
  facts: ['moldTempC'],
  source: `band: ${WARMTH_RULES.moldFine.from}; cold: ${WARMTH_RULES.moldCold.from}; stop: ${WARMTH_RULES.surfaceStop.from}`,
  rule(facts) {
    const { moldTempC } = facts;
    const values = { low, high };
    if (moldTempC === undefined) return ask(facts, ['moldTempC'], values);
    const found = moldTemperatureBand(moldTempC);
    if (!found.ok || found.value.band === 'unknown')
      throw new Error(`moldTemperature: expected a usable temperature, got ${moldTempC}`);
    const { band } = found.value;
    const measured = { ...values, moldTempC, stopC };
    if (band === 'fine') return fine(band, measured);
    return band === 'too hot' ? stop(band, measured) : look(band, measured);
  },
  examples: { fine: { moldTempC: 31 }, look: { moldTempC: 16 }, stop: { moldTempC: 70 } },
};
