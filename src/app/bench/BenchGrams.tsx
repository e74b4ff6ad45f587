import { ratioSentenceParts } from '../../yield';
import { gramsText } from '../../units';
import { ratioSentence } from '../../words/yieldWords';
import type { PourOnPage } from '../../worker/pour';
import { GramFigures } from '../batch/GramFigures';
import { Letter } from '../parts/Letter';
import { QuantityField } from '../parts/QuantityField';
import { CupTable } from '../pour/CupTable';
import type { BenchProps } from './benchProps';
import { colorOfCupG, type CupAtBench } from './cupAtBench';

interface BenchGramsProps extends Pick<BenchProps, 'ticket' | 'dispatch'> {
  pour: PourOnPage;
  cup: CupAtBench;
}

/** What is weighed, in large figures; once B was read, the A that goes with it stands there and no other. */
export function BenchGrams({ pour, cup }: Pick<BenchGramsProps, 'pour' | 'cup'>) {
  const { batch, cups } = pour;
  const count = cups.cups.length;
  const weighed = { ...batch, ...cup };
  return (
    <>
      <GramFigures batch={weighed} cups={cup.isRead ? 1 : count} colorG={colorOfCupG(pour)} />
      {cup.isRead && <OffPlan pour={pour} cup={cup} />}
      {count > 1 && <CupTable pour={pour} />}
    </>
  );
}

/** The grams as a sentence, to be read aloud from the labels: part, grams and container. */
export function ReadAloud({ pour, cup }: Pick<BenchGramsProps, 'pour' | 'cup'>) {
  return (
    <p className="why">
      {pour.cups.cups.length > 1 && 'For each cup: '}
      {ratioSentence(ratioSentenceParts({ ...pour.batch, ...cup }))}
    </p>
  );
}

/** B never lands on the gram: its box is that of the ticket. */
export function BInCup({ ticket, dispatch, pour }: Pick<BenchGramsProps, 'ticket' | 'dispatch' | 'pour'>) {
  return (
    <QuantityField
      name="bInCup"
      label={
        <>
          <Letter of="B" /> in the cup{colorOfCupG(pour) > 0 && ', before the color'}
        </>
      }
      ticket={ticket}
      dispatch={dispatch}
    />
  );
}

/** The same ratio, and another sum: how far that is from the plan. */
function OffPlan({ pour: { batch, cups }, cup }: Pick<BenchGramsProps, 'pour' | 'cup'>) {
  const planned = cups.cups[0]!;
  const grams = (massG: number): string => gramsText(massG, batch.stepG);
  const offG = cup.totalG - planned.totalG;
  const less =
    Math.abs(offG) < batch.stepG / 2
      ? 'as planned'
      : `${grams(Math.abs(offG))} g ${offG < 0 ? 'less' : 'more'}`;
  return (
    <p className="why" aria-live="polite">
      A for the {grams(cup.partBG)} g of B in the cup. Planned: A {grams(planned.partAG)} g, B{' '}
      {grams(planned.partBG)} g, {grams(planned.totalG)} g together; now {less}.
      {offG < 0 && ' Less in the mold means more risk of a short fill.'}
    </p>
  );
}
