import { POUR_RULES } from '../../yield';
import type { PourOnPage } from '../../worker/pour';
import { amount, counted } from '../../words/sentence';
import { CAVEAT_WORDS } from '../words/pourPhrases';
import type { BatchProps } from '../batch/batchProps';
import { Disclosure } from '../parts/Disclosure';
import { Figure } from '../parts/Figure';
import { FigureTable } from '../parts/FigureTable';
import { SourceTag } from '../parts/SourceTag';
import { forceRows } from './forceRows';
import { between } from './figures';
import { PartQuestion } from './PartQuestion';
import { CautionBeside } from './PourCautions';
import { PourField } from './PourField';

/** Pressure, what it pushes with, and what holds it. */
export function ForcesQuestion(props: BatchProps) {
  const { pour } = props;
  const forces = pour.answer?.refused.forces === undefined ? pour.answer?.forces : undefined;
  const rows = forces === undefined ? [] : forceRows(forces);
  const { strapTension } = POUR_RULES;
  return (
    <PartQuestion
      of={props}
      part="forces"
      group="forces"
      ask="What does the foam do to the mold?"
      what="the pressure"
      tall
      answer={({ forces: { pressureKPa } }) => (
        <>
          <Figure value={amount(pressureKPa.value, 2)} unit="kPa" />
          <span className="rng">
            {between(pressureKPa)} kPa over the air outside; clamps are made for{' '}
            {amount(pressureKPa.designKPa, 2)} kPa
          </span>
          <SourceTag from={pressureKPa.from} />
        </>
      )}
      because={(ready) =>
        ready === undefined
          ? 'Foam packed into a closed mold presses on every part of it, on a plug and on the parting most of all.'
          : holdWords(ready)
      }
      sum="forces"
      more={{
        title: 'What the figure leaves out',
        of: ({ forces: { pressureKPa } }) => (
          <>
            <p>It is no upper bound.</p>
            <ul>
              {pressureKPa.caveats.map((key) => (
                <li key={key}>{CAVEAT_WORDS[key]}</li>
              ))}
            </ul>
          </>
        ),
      }}
    >
      {rows.length > 0 && (
        <FigureTable
          rows={rows}
          caption="Tighten, wait 5 min, tighten again, then pour; buckles on alternate sides. Straps creep: common practice, no source."
        />
      )}
      <div className="fields">
        <PourField of={props} name="projected" label="Shadow of the cavity across the parting" />
        <PourField of={props} name="plugArea" label="Plug or lid in the opening, its area; 0: none" />
        <PourField of={props} name="lidMass" label="What lies on top weighs" />
        <PourField
          of={props}
          name="strapTension"
          label="A strap is pulled to"
          assumed={{ value: strapTension.value, unit: 'N', from: strapTension.from }}
        />
        <PourField of={props} name="strapCount" label="Straps at hand" />
      </div>
      <div className="more">
        <Disclosure title="A pressure measured in this mold">
          <div className="fields">
            <PourField of={props} name="peakPressure" label="Peak, over the air outside" />
            <PourField of={props} name="peakPack" label="Measured at a pack of" />
          </div>
        </Disclosure>
      </div>
      {forces?.plugN !== undefined && <CautionBeside of="plug-force" plugN={forces.plugN} />}
    </PartQuestion>
  );
}

function holdWords({ forces: { clamp, straps, ratchets } }: PourOnPage): string {
  if (clamp === undefined)
    return 'What that pushes with is not known: type the area of the cavity’s shadow, as seen along the way the mold opens.';
  if (clamp.clampN === 0) return 'The weight on top is enough to hold it shut, twice over.';
  const many = straps === undefined ? '' : ` That is ${counted(straps.strapsNeeded, 'strap')} by hand`;
  const few = ratchets === undefined ? '' : ` or ${counted(ratchets.strapsNeeded, 'ratchet strap')}`;
  return `The clamps must hold ${amount(clamp.clampN, 2)} N, twice what the foam pushes with.${many}${few}.`;
}
