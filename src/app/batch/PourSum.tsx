import type { Pour } from '../../plan';
import { formatShare } from '../../units';
import { assumptionWords } from '../../words/assumptionWords';
import { amount } from '../../words/sentence';

/** How the grams came about in one line, with its figures in it. */
export function PourSum({ pour: { batch } }: { pour: Pour }) {
  const { inputs } = batch;
  return (
    <p>
      ({amount(inputs.freeRiseKgM3)} g/L × {amount(inputs.packFactor)} × ({amount(inputs.cavityCm3)} +{' '}
      {amount(inputs.riserCm3)}) cm³ + {amount(inputs.ventsG)} g) ÷ (1 − {formatShare(inputs.gasLossShare)}) +{' '}
      {amount(inputs.residueG)} g = {amount(batch.mixedG)} g, rounded to steps of {amount(batch.stepG)} g so
      that the ratio stays right.
    </p>
  );
}

/** All that was taken for granted of the grams and their doubt. */
export const AssumedOfPour = ({ pour: { batch } }: { pour: Pour }) => (
  <section className="opened">
    <h3>What was assumed</h3>
    <ul>
      {batch.assumptions.map((assumption) => (
        <li key={assumption.name}>
          <span className="assumed">{assumptionWords(assumption)}</span> ({assumption.basis})
        </li>
      ))}
    </ul>
  </section>
);
