import { CHECKS } from '../../checks';
import type { Problem } from '../../problem';
import { counted } from '../../words/sentence';
import type { STATUS_WORDS } from '../../words/statusWords';
import { batchChecks } from '../batch/batchProblems';
import type { BatchProps } from '../batch/batchProps';
import { Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { Working } from '../parts/Working';
import { worstFinding } from '../words/statuses';
import { POUR_FACT_ROWS } from '../words/factFields';
import { FactInput } from '../parts/FactInput';
import { PourCautions } from './PourCautions';
import { PourField } from './PourField';
import { ReadyToPour } from './ReadyToPour';
import { SumOf } from './SumOf';

/** Every check of the pour, the facts they wait for, and the cautions. Nothing said is "Not checked", never fine. */
export function ReadyQuestion(props: BatchProps) {
  const { no, mark, ticket, dispatch, card, pour } = props;
  const checks = batchChecks(ticket, card);
  return (
    <Question
      no={no}
      mark={mark}
      ask="Is everything ready?"
      busy={pour.state === 'working'}
      answer={
        pour.state === 'working' ? (
          <Working what="the checks" />
        ) : (
          <Verdict>{checks === undefined ? 'Not checked yet' : readyWords(checks)}</Verdict>
        )
      }
      because="What the figures above tell is checked by itself; the rest only you can say."
    >
      <div className="fields">
        {POUR_FACT_ROWS.map((row) => (
          <FactInput
            key={row.fact}
            row={row}
            value={ticket.pouring.facts[row.fact] ?? ''}
            onSay={(value) => dispatch({ do: 'pourFact', fact: row.fact, value })}
          />
        ))}
        <PourField of={props} name="ventCount" label="Vents beside the opening" />
        <PourField of={props} name="ventMm" label="Each is wide" />
        <PourField of={props} name="panelSpan" label="Widest flat part of the jacket without rib; 0: none" />
        <PourField of={props} name="strapWorking" label="A strap may bear, its label" />
      </div>
      {checks !== undefined && checks.length > 0 && (
        <FindingsTable findings={checks} caption="Checks of this pour" />
      )}
      <div className="chg">
        <SumOf pour={pour} part="ready">
          {checks !== undefined && <LimitSources checks={checks} />}
        </SumOf>
      </div>
      <PourCautions pour={pour.answer} />
      <ReadyToPour {...props} />
    </Question>
  );
}

/** Every check by its question, with whose limit it holds a figure against. */
const LimitSources = ({ checks }: { checks: readonly Problem[] }) => (
  <section className="opened">
    <h3>Where the limits of the checks come from</h3>
    <ul>
      {checks.flatMap(({ code, values }) => {
        const title = CHECKS.find((check) => check.code === code)?.title;
        return title === undefined || values.source === undefined
          ? []
          : [
              <li key={code}>
                {title} <small className="where">{values.source}</small>
              </li>,
            ];
      })}
    </ul>
  </section>
);

function readyWords(checks: readonly { status: keyof typeof STATUS_WORDS }[]): string {
  const of = (status: keyof typeof STATUS_WORDS): number =>
    checks.filter((check) => check.status === status).length;
  const worst = worstFinding(checks as Parameters<typeof worstFinding>[0]);
  const open = of('unknown');
  if (worst === 'fine') return `All ${counted(checks.length, 'check')} say Fine`;
  const said = [
    ...(of('stop') > 0 ? [`${counted(of('stop'), 'check')} ${of('stop') === 1 ? 'says' : 'say'} Stop`] : []),
    ...(of('look') > 0 ? [`${of('look')} to read`] : []),
    ...(open > 0 ? [`${open} of ${checks.length} not checked`] : []),
  ];
  return said.join(', ');
}
