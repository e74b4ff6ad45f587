import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { Working } from '../parts/Working';
import { sizeNow } from '../ticket/now';
import { worstFinding } from '../words/statuses';
import { STATUS_WORDS } from '../../words/statusWords';
import { counted } from '../../words/sentence';
import type { AskProps } from './askProps';
import { isAboutScale } from './marks';
import { soundRows } from './soundRows';
import { SoundTable } from './SoundTable';

export function SoundQuestion({ ticket, dispatch, mark }: AskProps) {
  const size = sizeNow(ticket);
  const findings = size.answer?.size.findings;
  const problem = size.problem !== undefined && !isAboutScale(size.problem) ? size.problem : undefined;
  const worst = findings === undefined ? undefined : STATUS_WORDS[worstFinding(findings)];
  return (
    <Question
      no={5}
      mark={mark}
      ask="Is the scan sound?"
      busy={size.state === 'working'}
      answer={
        size.state === 'working' ? (
          <Working what="whether it is sound" />
        ) : (
          <Verdict>
            {problem !== undefined
              ? 'No volume yet'
              : findings === undefined
                ? 'Not checked yet'
                : findings.length === 0
                  ? 'Nothing was found'
                  : `${counted(findings.length, 'finding')}, the worst says ${worst}`}
          </Verdict>
        )
      }
    >
      {problem !== undefined && <Complaint problem={problem} />}
      {problem?.code === 'NOTHING_LEFT' && (
        <div className="chg">
          <button type="button" className="act" onClick={() => dispatch({ do: 'leaveOutOnly', corners: [] })}>
            Put all pieces back
          </button>
        </div>
      )}
      {size.answer !== undefined && size.answer.size.findings.length > 0 && (
        <SoundTable rows={soundRows(size.answer.size, ticket)} dispatch={dispatch} />
      )}
    </Question>
  );
}
