import { useId } from 'react';
import { NOT_YET } from '../../checks';
import { counted } from '../../words/sentence';
import { STATUS_WORDS } from '../../words/statusWords';
import { Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SelectField } from '../parts/SelectField';
import { Working } from '../parts/Working';
import { FACT_ROWS, type FactField } from '../words/factFields';
import { worstFinding } from '../words/statuses';
import { findingsOf } from './findings';
import type { MoldProps } from './moldProps';

/** Plain facts about the materials, and what they do to each other. Nothing said is "Not checked", never fine. */
export function BearQuestion({ ticket, dispatch, mark, now, problemOf }: MoldProps) {
  const findings = now.answer === undefined ? [] : findingsOf(now.answer, 'bear');
  const open = findings.filter(({ status }) => status === 'unknown').length;
  const worst = worstFinding(findings);
  const field = { ticket, dispatch };
  return (
    <Question
      no={4}
      mark={mark}
      ask="Do the materials bear each other?"
      busy={now.state === 'working'}
      answer={
        now.state === 'working' ? (
          <Working what="the checks of materials" />
        ) : (
          <Verdict>
            {findings.length === 0
              ? 'Not checked yet'
              : worst === 'unknown'
                ? `${open} of ${counted(findings.length, 'check')} wait for a fact`
                : `The worst of ${counted(findings.length, 'check')} says ${STATUS_WORDS[worst]}${open === 0 ? '' : `; ${open} wait for a fact`}`}
          </Verdict>
        )
      }
      because="The cure of the silicone is on its card, in question 3; its thickest place is that of the mold."
    >
      <div className="fields">
        {FACT_ROWS.map((row) => (
          <FactInput
            key={row.fact}
            row={row}
            value={ticket.molding.facts[row.fact] ?? ''}
            onSay={(value) => dispatch({ do: 'fact', fact: row.fact, value })}
          />
        ))}
        <QuantityField
          name="barrierDry"
          label="The barrier coat has dried for"
          {...field}
          problem={problemOf('barrierDry')}
        />
        <QuantityField
          name="pigmentShare"
          label="Pigment, share of A and B together"
          {...field}
          problem={problemOf('pigmentShare')}
        />
      </div>
      {findings.length > 0 && (
        <FindingsTable findings={findings} effect={false} caption="Checks of materials" />
      )}
    </Question>
  );
}

interface FactInputProps {
  row: FactField;
  value: string;
  onSay: (value: string) => void;
}

function FactInput({ row, value, onSay }: FactInputProps) {
  if (row.kind === 'day') return <DayField label={row.label} value={value} onSay={onSay} />;
  const choices = row.kind === 'yesno' ? ['yes', 'no'] : row.choices;
  return (
    <SelectField
      label={row.label}
      value={value}
      blank="not said"
      options={choices.map((one) => ({ value: one, label: one }))}
      onChoose={onSay}
    />
  );
}

/** A day, or that it has not come. */
function DayField({ label, value, onSay }: Omit<FactInputProps, 'row'> & { label: string }) {
  const id = useId();
  const isNotYet = value === NOT_YET;
  return (
    <div className="qty">
      <label htmlFor={id}>{label}</label>
      <div className="in">
        <input
          id={id}
          type="date"
          className="day"
          disabled={isNotYet}
          value={isNotYet ? '' : value}
          onChange={(e) => onSay(e.target.value)}
        />
      </div>
      <label className="tick">
        <input type="checkbox" checked={isNotYet} onChange={(e) => onSay(e.target.checked ? NOT_YET : '')} />
        <span>
          not yet<span className="sr">: {label}</span>
        </span>
      </label>
    </div>
  );
}
