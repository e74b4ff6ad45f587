import { ratioSentenceParts, type Batch } from '../../yield';
import { formatRatio } from '../../units';
import { Letter } from '../parts/Letter';
import { gramsText } from '../../units';

/** A left, B right at every width; B is weighed first. Below each, what the scale will read. */
export function GramFigures({ batch }: { batch: Batch }) {
  const {
    weighings: [a, b],
    totalG,
    stepG,
  } = ratioSentenceParts(batch);
  return (
    <div className="grams">
      <div>
        <p className="l">
          <Letter of="A" small={false} /> <span>last, on top of B</span>
        </p>
        <p className="w" data-part="A">
          {gramsText(a.massG, stepG)}
          <small>g</small>
        </p>
        <p className="sc">
          scale reads {gramsText(a.massG, stepG)} from zero; {gramsText(totalG, stepG)} if it was not set to
          zero
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
        <p className="sc">scale reads {gramsText(b.massG, stepG)}; then set it to zero</p>
      </div>
      <p className="all">
        <b>{gramsText(totalG, stepG)} g together</b>{' '}
        <span>
          A:B {formatRatio(batch.ratio)} {batch.ratio.by === 'mass' ? 'by weight' : 'by volume'}
        </span>
      </p>
    </div>
  );
}
