import type { CSSProperties } from 'react';
import { formatRatio, gramsText } from '../../units';
import type { Mold } from '../../plan';
import { weighSentence } from '../../words/weighWords';
import { counted } from '../../words/sentence';
import { siliconeRatio } from '../ticket/moldWishes';
import type { Ticket } from '../ticket/state';

/** Base left, catalyst right at every width; the letters A and B belong to the foam. */
export function SiliconeFigures({ mold, ticket }: { mold: Mold; ticket: Ticket }) {
  const { baseG, catalystG, totalG, pours } = mold.silicone;
  const step = pours[0]?.order.stepG ?? 1;
  const mixes = pours.reduce((sum, { order }) => sum + order.mixes.length, 0);
  const { base, catalyst, isAssumed } = siliconeRatio(ticket.fields);
  const [baseText, catalystText] = [gramsText(baseG, step), gramsText(catalystG, step)];
  const digits = Math.max(baseText.length, catalystText.length);
  return (
    <>
      <div className="grams parts" style={{ '--digits': digits } as CSSProperties}>
        <div>
          <p className="l">
            <b>base</b>
          </p>
          <p className="w" data-part="base">
            {baseText}
            <small>g</small>
          </p>
        </div>
        <div>
          <p className="l">
            <b>catalyst</b>
          </p>
          <p className="w" data-part="catalyst">
            {catalystText}
            <small>g</small>
          </p>
        </div>
        <p className="all">
          <b>{gramsText(totalG, step)} g together</b>{' '}
          <span>
            {mixes === 1 ? 'in one mix' : `in ${counted(mixes, 'mix', 'mixes')}: weigh each as below`}
          </span>
        </p>
      </div>
      <p className="why">
        Base to catalyst is{' '}
        <span className={isAssumed ? 'assumed' : undefined}>
          {formatRatio({ a: base, b: catalyst })} by weight
        </span>
        {'. '}
        {weighSentence(mold, ticket.molding.degassed)}
      </p>
    </>
  );
}

/** The same place while the grams are worked out. */
export function SiliconeToCome() {
  return (
    <div className="grams parts">
      {['base', 'catalyst'].map((part) => (
        <div key={part}>
          <p className="l">
            <b>{part}</b> <span>working out …</span>
          </p>
        </div>
      ))}
    </div>
  );
}
