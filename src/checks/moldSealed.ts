import { RULES } from '../yield';
import { ask, fine, look, stop, type Check } from './check';
import { CHECK_FIGURES } from './figures';

export type SealedCase = 'vented' | 'narrow vents' | 'wide vents' | 'opening alone' | 'sealed';

const { low: narrowMm, high: wideMm } = RULES.ventDiameter;
const times = CHECK_FIGURES.sealedPressure.value;

/** Air that cannot leave adds its own pressure to that of the foam. */
export const MOLD_SEALED: Check<SealedCase> = {
  code: 'MOLD_SEALED',
  title: 'Can the air leave the mold?',
  when: 'pour',
  facts: ['ventCount', 'ventMm', 'openingOpen'],
  source: `width of vents: ${RULES.ventDiameter.from}; pressure: ${CHECK_FIGURES.sealedPressure.from}`,
  rule(facts) {
    const { ventCount, ventMm, openingOpen } = facts;
    if (ventCount === undefined) return ask(facts, ['ventCount', 'ventMm', 'openingOpen'], { times });
    if (ventCount === 0) {
      if (openingOpen === undefined) return ask(facts, ['openingOpen'], { times });
      return openingOpen ? look('opening alone', { times }) : stop('sealed', { times });
    }
    if (ventMm === undefined) return ask(facts, ['ventMm'], { times });
    const values = { ventCount, ventMm, narrowMm, wideMm };
    if (ventMm < narrowMm) return look('narrow vents', values);
    return ventMm > wideMm ? look('wide vents', values) : fine('vented', values);
  },
  examples: {
    fine: { ventCount: 4, ventMm: 2 },
    look: { ventCount: 0, openingOpen: true },
    stop: { ventCount: 0, openingOpen: false },
  },
};
