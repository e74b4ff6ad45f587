import type { Problem } from '../problem';
import { ask, fine, look, stop, type Check, type Verdict } from './check';
import type { CheckFacts } from './facts';
import { CHECK_FIGURES } from './figures';
import { EFFECTS } from './surfaces';

export type CureCase =
  | 'harmless'
  | 'patch cured'
  | 'silicone on silicone'
  | 'some do'
  | 'stopper behind a dry coat'
  | 'stopper, patch cured'
  | 'coat not dry'
  | 'stopper, bare';

/** Poisons of addition cure, and tin and platinum silicone over each other. */
export const CURE_INHIBITION: Check<CureCase> = {
  code: 'CURE_INHIBITION',
  title: 'Does the silicone cure on the sculpt?',
  when: 'mold',
  facts: ['siliconeCure', 'sculptSurface', 'barrierCoat', 'barrierDryMin', 'patchTested'],
  source: 'each row of the table of surfaces names its own; a patch test outranks it',
  rule(facts) {
    const { siliconeCure, sculptSurface, patchTested } = facts;
    if (siliconeCure === undefined || sculptSurface === undefined)
      return ask(facts, ['siliconeCure', 'sculptSurface']);
    const effect = EFFECTS[siliconeCure][sculptSurface];
    const values = {
      cure: siliconeCure,
      surface: sculptSurface,
      risk: effect.risk,
      ...(effect.by === undefined ? {} : { by: effect.by }),
      source: effect.from,
    };
    switch (effect.risk) {
      case 'none':
        return fine('harmless', values);
      case 'bonds':
        return look('silicone on silicone', values);
      case 'may':
        if (patchTested === undefined) return ask(facts, ['patchTested'], values);
        return patchTested ? fine('patch cured', values) : look('some do', values);
      case 'stops':
        return overAStopper(facts, values);
    }
  },
  examples: {
    fine: { siliconeCure: 'addition', sculptSurface: 'sulfur-free clay' },
    look: {
      siliconeCure: 'addition',
      sculptSurface: 'sulfur clay',
      barrierCoat: true,
      barrierDryMin: 45,
      patchTested: false,
    },
    stop: {
      siliconeCure: 'addition',
      sculptSurface: 'sulfur clay',
      barrierCoat: false,
      patchTested: false,
    },
  },
};

/** Only a coat and a patch test together are fine: a small test on a bare stopper does not speak for every place. */
function overAStopper(facts: CheckFacts, values: Problem['values']): Verdict<CureCase> {
  const { barrierCoat, barrierDryMin, patchTested } = facts;
  if (barrierCoat === undefined) return ask(facts, ['barrierCoat', 'patchTested'], values);
  if (barrierCoat) {
    if (barrierDryMin === undefined) return ask(facts, ['barrierDryMin', 'patchTested'], values);
    const limitMin = CHECK_FIGURES.barrierDry.value;
    if (barrierDryMin < limitMin) return stop('coat not dry', { ...values, dryMin: barrierDryMin, limitMin });
  }
  if (patchTested === undefined) return ask(facts, ['patchTested'], values);
  if (barrierCoat)
    return patchTested ? fine('patch cured', values) : look('stopper behind a dry coat', values);
  return patchTested ? look('stopper, patch cured', values) : stop('stopper, bare', values);
}
