import { Verdict } from '../parts/Figure';
import { Question } from '../parts/Question';
import { SourceTag } from '../parts/SourceTag';
import type { AskProps } from './askProps';
import { UpChoices } from './UpChoices';

export function UpQuestion({ ticket, dispatch, mark }: AskProps) {
  const { axis, confirmed } = ticket.up;
  return (
    <Question
      no={2}
      mark={mark}
      ask="Which way is up?"
      answer={
        <>
          <Verdict>
            <span className={confirmed ? undefined : 'assumed'}>{axis} of the file is up</span>
          </Verdict>
          <SourceTag from={confirmed ? 'chosen' : 'assumed'} />
        </>
      }
      because="The file does not say which way is up. Up as poured sets what the tape measures and where a cut goes."
      change={
        confirmed ? undefined : (
          <button type="button" className="act" onClick={() => dispatch({ do: 'up', axis })}>
            Confirm {axis} up
          </button>
        )
      }
    >
      {ticket.scan !== undefined && (
        <UpChoices
          opened={ticket.scan.opened}
          value={axis}
          assumed={!confirmed}
          onChoose={(value) => dispatch({ do: 'up', axis: value })}
        />
      )}
    </Question>
  );
}
