import { counted } from '../../words/sentence';
import { Verdict } from '../parts/Figure';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import type { BatchProps } from './batchProps';
import { Cautions } from './Cautions';

export function ChecksQuestion({ ticket, mark }: BatchProps) {
  const findings = ticket.pour.answer?.batch.findings;
  return (
    <Question
      no={5}
      mark={mark}
      ask="Anything that should stop us?"
      busy={ticket.pour.state === 'running'}
      answer={
        <Verdict>
          {findings === undefined
            ? 'Checked with the batch'
            : findings.length === 0
              ? 'No check complains'
              : counted(findings.length, 'check') + ' to read'}
        </Verdict>
      }
    >
      {findings !== undefined && findings.length > 0 && (
        <FindingsTable findings={findings} effect={false} caption="Checks of this batch" />
      )}
      <Cautions />
    </Question>
  );
}
