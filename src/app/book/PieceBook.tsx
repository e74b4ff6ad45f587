import type { Piece } from '../../job/piece';
import { StoreProblem } from '../shop/StoreProblem';
import type { KeptTicket } from '../ticket/useTicket';
import type { Way } from '../useRoute';
import { WrittenBar } from '../weigh/WrittenBar';
import { Book } from './Book';
import { usePlan } from './usePlan';

/** The Book on a piece's ticket: its own pours first. */
export function PieceBook({ piece, change, way }: { piece: Piece; change: KeptTicket['change']; way: Way }) {
  const { plan, problem } = usePlan(way);
  return (
    <>
      <WrittenBar piece={piece} change={change} />
      <StoreProblem problem={problem} />
      <Book
        piece={piece}
        way={way}
        onPlan={(id, how) => {
          if (id !== piece.id) return plan(id, how);
          // By the ticket itself, which may have words that are yet to be kept.
          change(how);
          way.go({ at: 'batch', piece: id });
        }}
      />
    </>
  );
}
