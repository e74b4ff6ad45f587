import type { CSSProperties } from 'react';
import { ratioSentenceParts, type Batch } from '../../yield';
import { formatGrams, gramsText } from '../../units';
import { amount } from '../../words/sentence';
import { Letter } from '../parts/Letter';

/** What is weighed into one cup. */
export type WeighedCup = Pick<Batch, 'ratio' | 'partAG' | 'partBG' | 'totalG' | 'stepG'>;

interface GramFiguresProps {
  batch: WeighedCup;
  cups?: number;
  /** Of one cup; it lies in B before A comes, and the scale weighs it too. */
  colorG?: number;
}

/** A left, B right at every width; B is weighed first. Below each, what the scale will read. */
export function GramFigures({ batch, cups = 1, colorG = 0 }: GramFiguresProps) {
  const {
    weighings: [a, b],
    totalG,
    stepG,
    by,
  } = ratioSentenceParts(batch);
  const digits = Math.max(gramsText(a.massG, stepG).length, gramsText(b.massG, stepG).length);
  const grams = (massG: number): string => formatGrams(massG, stepG);
  const isColored = colorG > 0;
  return (
    <div className="grams" style={{ '--digits': digits } as CSSProperties}>
      <div>
        <p className="l">
          <Letter of="A" small={false} /> <span>on top of B, last</span>
        </p>
        <p className="w" data-part="A">
          {gramsText(a.massG, stepG)}
          <small>g</small>
        </p>
        <p className="sc">
          scale reads {grams(totalG + colorG)}
          {isColored && ', the color in it'}; {grams(a.massG)} if set to zero after B
        </p>
      </div>
      <div>
        <p className="l">
          <Letter of="B" small={false} /> <span>weigh first{isColored && ', color in it'}</span>
        </p>
        <p className="w" data-part="B">
          {gramsText(b.massG, stepG)}
          <small>g</small>
        </p>
        <p className="sc">
          scale reads {grams(b.massG)}
          {isColored && `; ${grams(b.massG + colorG)} with the color`}
        </p>
      </div>
      <p className="all">
        <b>
          {gramsText(totalG, stepG)} g {cups > 1 ? `in each of ${cups} cups` : 'together'}
        </b>{' '}
        <span>
          {amount(batch.ratio.a)} parts A to {amount(batch.ratio.b)} parts B by{' '}
          {by === 'mass' ? 'weight' : 'volume'}
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
