import type { ReactNode } from 'react';
import type { BatchProps } from '../batch/batchProps';
import { KeptDisclosure } from './KeptDisclosure';
import { OpenedFigures } from './OpenedFigures';
import { figuresIn, type SumPart } from './sums';

interface SumOfProps {
  pour: BatchProps['pour'];
  part: SumPart;
  /** What else belongs to the sum, above and below the figures. */
  lead?: ReactNode;
  children?: ReactNode;
}

/** "Show the sum" of a question: every figure in it, opened. A question that has no figure has none. */
export function SumOf({ pour, part, lead, children }: SumOfProps) {
  const figures = figuresIn(pour.answer?.figures ?? [], part);
  return (
    <KeptDisclosure isWorking={pour.state === 'working'}>
      {figures.length > 0 && (
        <>
          {lead}
          <OpenedFigures figures={figures} />
          {children}
        </>
      )}
    </KeptDisclosure>
  );
}
