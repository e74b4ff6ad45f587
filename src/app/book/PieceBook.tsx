import type { Piece } from '../../job/piece';
import { StoreProblem } from '../shop/StoreProblem';
import type { KeptTicket } from '../ticket/useTicket';
import type { Nav } from '../useRoute';
import { WrittenBar } from '../weigh/WrittenBar';
import { Book } from './Book';
import { usePlan } from './usePlan';

/** The Book on a piece's ticket: its own pours first. */
export function PieceBook({ piece, change, nav }: { piece: Piece; change: KeptTicket['change']; nav: Nav }) {
  const { plan, problem } = usePlan(nav);
  return (
    <>
      <WrittenBar piece={piece} change={change} />
      <StoreProblem problem={problem} />
      <Book
        piece={piece}
        nav={nav}
        onPlan={(id, how) => {
          if (id !== piece.id) return plan(id, how);
          // By the ticket itself, which may have words that are yet to be kept.
          change(how);
          nav.go({ at: 'batch', piece: id });
        }}
      />
    </>
  );
}
