import type { Pour } from '../../plan';
import { formatDensity, formatMass, formatShare } from '../../units';
import { assumptionWords } from '../../words/assumptionWords';
import { amount } from '../../words/sentence';
import { TERM_WORDS } from '../../words/yieldWords';

/** How the grams came about: the formula with its figures, what the doubt is made of, and all that was assumed. */
export function PourSum({ pour: { batch } }: { pour: Pour }) {
  const { inputs } = batch;
  return (
    <>
      <p>Mixed = (free rise × pack × (cavity + riser) + vents) ÷ (1 − gas) + residue</p>
      <p>
        = ({amount(inputs.freeRiseKgM3)} g/L × {amount(inputs.packFactor)} × ({amount(inputs.cavityCm3)} +{' '}
        {amount(inputs.riserCm3)}) cm³ + {amount(inputs.ventsG)} g) ÷ (1 − {formatShare(inputs.gasLossShare)})
        + {amount(inputs.residueG)} g = {amount(batch.mixedG)} g, rounded to steps of {amount(batch.stepG)} g
        so that the ratio stays right
      </p>
      <p>
        {formatMass(batch.inMoldG)} leave the cup; in the mold the foam weighs{' '}
        {formatDensity(batch.moldedDensityKgM3).replaceAll('m3', 'm³').replaceAll('ft3', 'ft³')}.
      </p>
      <h4>What the doubt is made of</h4>
      <ul>
        {batch.uncertainty
          .filter(({ share }) => share >= 0.001)
          .map(({ input, contributionG, share }) => (
            <li key={input}>
              {TERM_WORDS[input] ?? input}: ± {amount(contributionG, 2)} g, {amount(100 * share, 2)} % of it
            </li>
          ))}
      </ul>
      <h4>What was assumed</h4>
      <ul>
        {batch.assumptions.map((assumption) => (
          <li key={assumption.name}>
            <span className="assumed">{assumptionWords(assumption)}</span> ({assumption.basis})
          </li>
        ))}
      </ul>
    </>
  );
}
