import { ask, COMMON_PRACTICE, fine, look, type Check } from './check';
import { CHECK_FIGURES } from './figures';

export type ThickCase = 'addition' | 'thin' | 'thick';

const limitMm = CHECK_FIGURES.thickSection.value;

/** Condensation cure works from moisture and gives off an alcohol; both have to travel through the rubber. */
export const THICK_CONDENSATION: Check<ThickCase> = {
  code: 'THICK_CONDENSATION',
  title: 'Does the silicone cure through its thickest place in the usual time?',
  when: 'mold',
  facts: ['siliconeCure', 'thickestMm'],
  source: `that thick sections are slow: ${COMMON_PRACTICE}; the limit: ${CHECK_FIGURES.thickSection.from}`,
  rule(facts) {
    const { siliconeCure, thickestMm } = facts;
    if (siliconeCure === 'addition') return fine('addition');
    if (siliconeCure === undefined || thickestMm === undefined)
      return ask(facts, ['siliconeCure', 'thickestMm']);
    return thickestMm > limitMm
      ? look('thick', { thickestMm, limitMm, overMm: thickestMm - limitMm })
      : fine('thin', { thickestMm, limitMm });
  },
  examples: {
    fine: { siliconeCure: 'condensation', thickestMm: 12 },
    look: { siliconeCure: 'condensation', thickestMm: 40 },
  },
};
