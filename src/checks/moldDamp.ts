import { ask, COMMON_PRACTICE, fine, stop, type Check } from './check';
import { CHECK_FIGURES } from './figures';

export type DampCase = 'no water' | 'confirmed dry' | 'not confirmed dry';

const gasLPerG = CHECK_FIGURES.waterGas.value;

/** After a water fill it is a stop until someone says that the mold is dry; there is nothing between. */
export const MOLD_DAMP: Check<DampCase> = {
  code: 'MOLD_DAMP',
  title: 'Is the mold dry?',
  when: 'pour',
  facts: ['moldWater'],
  source: `that water spoils foam: ${COMMON_PRACTICE}; its gas: ${CHECK_FIGURES.waterGas.from}`,
  rule(facts) {
    const { moldWater } = facts;
    if (moldWater === undefined) return ask(facts, ['moldWater'], { gasLPerG });
    switch (moldWater) {
      case 'none':
        return fine('no water', { gasLPerG });
      case 'confirmed dry':
        return fine('confirmed dry', { gasLPerG });
      case 'not confirmed dry':
        return stop('not confirmed dry', { gasLPerG });
    }
  },
  examples: { fine: { moldWater: 'confirmed dry' }, stop: { moldWater: 'not confirmed dry' } },
};
