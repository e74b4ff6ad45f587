import { counted } from '../../words/sentence';
import { STATUS_WORDS } from '../../words/statusWords';
import { Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { Working } from '../parts/Working';
import { FactInput } from '../parts/FactInput';
import { FACT_ROWS } from '../words/factFields';
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
      {findings.length > 0 && <FindingsTable findings={findings} caption="Checks of materials" />}
    </Question>
  );
}
