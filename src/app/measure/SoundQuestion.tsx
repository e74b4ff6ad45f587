import { Complaint } from '../parts/Complaint';
import { Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { Working } from '../parts/Working';
import { sizeNow } from '../ticket/now';
import { worstFinding } from '../words/statuses';
import { STATUS_WORDS } from '../../words/statusWords';
import { counted } from '../../words/sentence';
import type { AskProps } from './askProps';
import { isAboutScale } from './marks';

export function SoundQuestion({ ticket, mark }: Omit<AskProps, 'dispatch'>) {
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
      {findings !== undefined && findings.length > 0 && (
        <FindingsTable
          findings={findings}
          effect
          caption="The file is kept as it was. Nothing is mended without a row here."
        />
      )}
    </Question>
  );
}
