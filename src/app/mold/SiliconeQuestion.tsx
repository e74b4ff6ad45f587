import { formatRatio, gramsText } from '../../units';
import type { Mold } from '../../plan';
import { moldBecause } from '../../words/moldBecause';
import { assumptionLine } from '../../words/assumptionWords';
import { amount, counted, percent } from '../../words/sentence';
import { Disclosure } from '../parts/Disclosure';
import { Figure, Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { siliconeRatio } from '../ticket/moldWishes';
import type { Ticket } from '../ticket/state';
import { buyKg } from '../../words/buyKg';
import { buyShort, needOf, totalKg } from '../words/moldFigures';
import { lowerFirst } from '../words/fieldWords';
import { heldMold } from './chosen';
import { findingsOf } from './findings';
import { liveSilicone } from './liveSilicone';
import { needKg, toBuyWords } from './liveWords';
import { MaterialCautions } from './MaterialCautions';
import type { MoldProps } from './moldProps';
import { PrintMoldSheet } from './PrintMoldSheet';
import { PourTable } from './PourTable';
import { PurchaseLines } from './PurchaseLines';
import { SiliconeChart } from './SiliconeChart';
import { SiliconeFigures, SiliconeToCome } from './SiliconeFigures';
import { SiliconeForm } from './SiliconeForm';
import { InBetween } from './ThicknessSlider';

export function SiliconeQuestion(props: MoldProps) {
  const { ticket, mark, now } = props;
  const mold = now.answer;
  const findings = mold === undefined ? [] : findingsOf(mold, 'silicone');
  return (
    <Question
      no={3}
      mark={mark}
      ask="How much silicone do we mix and buy?"
      busy={now.state === 'working'}
      answer={
        mold !== undefined ? (
          <SiliconeAnswer mold={mold} ticket={ticket} />
        ) : now.state === 'working' ? (
          <LiveAnswer ticket={ticket} />
        ) : (
          <Verdict>No silicone yet</Verdict>
        )
      }
      because={mold === undefined ? undefined : rubberWords(mold)}
      change={<PrintMoldSheet ticket={ticket} mold={mold} />}
    >
      {mold !== undefined ? (
        <SiliconeFigures mold={mold} ticket={ticket} />
      ) : (
        now.state === 'working' && <SiliconeToCome />
      )}
      {mold !== undefined && (
        <>
          <PourTable silicone={mold.silicone} process={mold.process} />
          <PurchaseLines silicone={mold.silicone} />
        </>
      )}
      <SiliconeChart ticket={ticket} now={now} />
      <SiliconeForm {...props} />
      <MaterialCautions
        of="silicone"
        places={['silicone', 'vacuum']}
        keys={heldMold(ticket)?.cautions ?? []}
      />
      {findings.length > 0 && <FindingsTable findings={findings} caption="Checks of mixing and buying" />}
      {mold !== undefined && (
        <div className="more">
          <Disclosure>
            <SiliconeSum mold={mold} ticket={ticket} />
          </Disclosure>
        </div>
      )}
    </Question>
  );
}

/** While another thickness is worked out: about, from the measured rungs; else in words that it is worked out. */
function LiveAnswer({ ticket }: { ticket: Ticket }) {
  const live = liveSilicone(ticket);
  if (live.state !== 'told') return <Working what="the silicone" tall />;
  const kg = needKg(live.need);
  return (
    <>
      <Figure value={`about ${kg.value}`} unit="kg" />
      <span className="rng">
        {kg.low} to {kg.high} kg, {lowerFirst(toBuyWords(live.need))}
      </span>
      <InBetween />
    </>
  );
}

function SiliconeAnswer({ mold, ticket }: { mold: Mold; ticket: Ticket }) {
  const kg = totalKg(mold);
  const { purchase, stock, totalG, assumptions } = mold.silicone;
  const needKg = needOf(stock, totalG);
  const buy =
    needKg === 0
      ? 'nothing to buy'
      : purchase === undefined
        ? `${buyKg(needKg)} to buy`
        : `to buy: ${buyShort(purchase)}`;
  return (
    <>
      <Figure value={kg.value} unit="kg" />
      <span className="rng">
        {kg.low} to {kg.high} kg, {buy}
      </span>
      <SourceTag from={mold.siliconeCm3.from} />
      {ticket.fields.siliconeDensity.text.trim() !== '' && <SourceTag from="data-sheet" />}
      {assumptions.length > 0 && <SourceTag from="assumed" />}
    </>
  );
}

/** "Skin 1.30 L, flange 0.10 L, at 1.18 kg/L, and 10 % waste." */
function rubberWords({ shape, silicone: { densityKgM3, pours } }: Mold): string {
  const parts = shape.rubber
    .filter(({ volumeMm3 }) => volumeMm3 >= 1000)
    .map(({ name, volumeMm3 }) => `${name} ${amount(volumeMm3 / 1e6, 3)} L`);
  const waste = pours[0]?.order.wasteShare ?? 0;
  return `Rubber by part: ${parts.join(', ')}; at ${amount(densityKgM3 / 1000, 4)} kg/L, with ${percent(waste)} waste.`;
}

function SiliconeSum({ mold, ticket }: { mold: Mold; ticket: Ticket }) {
  const { siliconeCm3, silicone } = mold;
  const { pours, rangeG, totalG } = silicone;
  const step = pours[0]?.order.stepG ?? 1;
  const ratio = siliconeRatio(ticket.fields);
  return (
    <>
      <p>
        Each pour or coat = volume × density × (1 + waste) + cups × what stays in a cup, rounded up to steps
        of {amount(step)} g, then split {formatRatio({ a: ratio.base, b: ratio.catalyst })} by weight, base
        first.
      </p>
      <p>
        Rubber {amount(siliconeCm3.value)} cm³ ({amount(siliconeCm3.low)} to {amount(siliconeCm3.high)} cm³,
        19 times in 20); so mixed {gramsText(Math.min(rangeG[0], totalG), step)} to{' '}
        {gramsText(rangeG[1], step)} g. In how far a hand brushes evenly is not in it.
      </p>
      <ul>
        {moldBecause(mold).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <h4>What was assumed</h4>
      <ul>
        {mold.assumptions.map((assumption) => (
          <li key={assumption.name}>
            <span className="assumed">{assumptionLine(assumption)}</span>
          </li>
        ))}
      </ul>
      <p>{counted(pours.length, 'pour or coat', 'pours or coats')} in all.</p>
    </>
  );
}
