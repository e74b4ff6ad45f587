import type { CSSProperties } from 'react';
import { ratioSentenceParts, type Batch } from '../../yield';
import { formatGrams, formatRatio } from '../../units';
import { Letter } from '../parts/Letter';
import { gramsText } from '../../units';

/** What is weighed into one cup. */
export type WeighedCup = Pick<Batch, 'ratio' | 'partAG' | 'partBG' | 'totalG' | 'stepG'>;

/** A left, B right at every width; B is weighed first. Below each, what the scale will read. */
export function GramFigures({ batch, cups = 1 }: { batch: WeighedCup; cups?: number }) {
  const {
    weighings: [a, b],
    totalG,
    stepG,
  } = ratioSentenceParts(batch);
  const digits = Math.max(gramsText(a.massG, stepG).length, gramsText(b.massG, stepG).length);
  return (
    <div className="grams" style={{ '--digits': digits } as CSSProperties}>
      <div>
        <p className="l">
          <Letter of="A" small={false} /> <span>last, on top of B</span>
        </p>
        <p className="w" data-part="A">
          {gramsText(a.massG, stepG)}
          <small>g</small>
        </p>
        <p className="sc">
          scale reads {formatGrams(a.massG, stepG)} from zero; {formatGrams(totalG, stepG)} if it was not set
          to zero
        </p>
      </div>
      <div>
        <p className="l">
          <Letter of="B" small={false} /> <span>first, into the mixing cup</span>
        </p>
        <p className="w" data-part="B">
          {gramsText(b.massG, stepG)}
          <small>g</small>
        </p>
        <p className="sc">scale reads {formatGrams(b.massG, stepG)}; then set it to zero</p>
      </div>
      <p className="all">
        <b>
          {gramsText(totalG, stepG)} g {cups > 1 ? `in each of ${cups} cups` : 'together'}
        </b>{' '}
        <span>
          A:B {formatRatio(batch.ratio)} {batch.ratio.by === 'mass' ? 'by weight' : 'by volume'}
        </span>
      </p>
    </div>
  );
}

/** The same place while the grams are worked out: no figure of before stands where one is read off. */
export function GramsToCome() {
  return (
    <div className="grams">
      {(['A', 'B'] as const).map((part) => (
        <div key={part}>
          <p className="l">
            <Letter of={part} small={false} /> <span>working out …</span>
          </p>
        </div>
      ))}
    </div>
  );
}
