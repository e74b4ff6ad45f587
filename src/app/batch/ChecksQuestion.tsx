import { counted } from '../../words/sentence';
import { Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { Working } from '../parts/Working';
import { pourNow } from '../ticket/now';
import { batchChecks } from './batchProblems';
import type { BatchProps } from './batchProps';
import { Cautions } from './Cautions';

export function ChecksQuestion({ ticket, mark, card }: BatchProps) {
  const isWorking = pourNow(ticket).state === 'working';
  const findings = batchChecks(ticket, card);
  return (
    <Question
      no={5}
      mark={mark}
      ask="Anything that should stop us?"
      busy={isWorking}
      answer={
        isWorking ? (
          <Working what="the checks" />
        ) : (
          <Verdict>
            {findings === undefined
              ? 'Not checked yet'
              : findings.length === 0
                ? 'No check complains'
                : `${counted(findings.length, 'check')} to read`}
          </Verdict>
        )
      }
    >
      {findings !== undefined && findings.length > 0 && (
        <FindingsTable findings={findings} effect={false} caption="Checks of this batch" />
      )}
      <Cautions />
    </Question>
  );
}
