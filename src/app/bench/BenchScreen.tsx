import { useCallback, useState } from 'react';
import { BenchOfCasting } from './BenchOfCasting';
import type { BenchProps } from './benchProps';

/** What now? Of the casting in hand; while its clock runs here, another tab that takes up the next casting does not take it away. */
export function BenchScreen(props: BenchProps) {
  const { piece } = props;
  const [held, setHeld] = useState<string>();
  const id = held !== undefined && Object.hasOwn(piece.castings, held) ? held : piece.hand.casting;
  const hold = useCallback((is: boolean) => setHeld(is ? id : undefined), [id]);
  return <BenchOfCasting key={id} {...props} id={id} onRunning={hold} />;
}
