import type { Piece } from '../../job/piece';
import type { StockRow } from '../../job/stockRow';
import type { ShopCore } from '../../store';
import { amount } from '../../words/sentence';
import { StatusMark } from '../parts/StatusMark';
import { useTrying } from '../shop/useTrying';
import { useShop } from '../shop/shopContext';
import { StoreProblem } from '../shop/StoreProblem';
import { localDay } from '../ticket/localDay';
import { enoughFor } from './enoughFor';
import { lotAge } from './lotAge';
import { StockDrawing, pxPerKgOf } from './StockDrawing';
import { StockForm } from './StockForm';
import { stockLeft, type CardLeft } from './stockOf';
import type { Undos } from './useUndos';

/** What is left of each card, part by part. */
export function Stock({ core, pieces, undos }: { core: ShopCore; pieces: readonly Piece[]; undos: Undos }) {
  const cards = stockLeft(core);
  const pxPerKg = pxPerKgOf(cards);
  return (
    <section className="shelf" aria-labelledby="stock">
      <h2 id="stock" tabIndex={-1}>
        What is left on the stock shelf?
      </h2>
      {cards.length === 0 ? (
        <p className="why">
          Nothing is counted yet. Stock is counted by the card: once a foam or a silicone has one, what is
          left of it can be written down here, A and B apart.
        </p>
      ) : (
        <>
          <div className="stock">
            {cards.map((left) => (
              <OneCard
                key={left.card}
                left={left}
                core={core}
                pieces={pieces}
                pxPerKg={pxPerKg}
                undos={undos}
              />
            ))}
          </div>
          <p className="note quiet">
            A row of boxes is a part: the fewest kits that hold what is left, filled as far as they are full,
            all to one scale of kilograms. Without a kit on the card, one box is what is left.
          </p>
        </>
      )}
    </section>
  );
}

interface OneCardProps {
  left: CardLeft;
  core: ShopCore;
  pieces: readonly Piece[];
  pxPerKg: number;
  undos: Undos;
}

function OneCard({ left, core, pieces, pxPerKg, undos }: OneCardProps) {
  const { store } = useShop();
  const { attempt, problem } = useTrying();
  const { card, kind, parts } = left;
  const today = localDay(new Date());
  const enough = enoughFor(left, pieces);
  return (
    <div>
      <h3>{card}</h3>
      {parts.length === 0 ? (
        <p className="quiet">not counted yet</p>
      ) : (
        <>
          <StockDrawing parts={parts} pxPerKg={pxPerKg} />
          <p>
            {parts.map(({ part, name, leftKg }, i) => (
              <span key={part} className="nb">
                {i > 0 && ', '}
                {name} <b>{amount(leftKg)} kg</b>
              </span>
            ))}
          </p>
          {enough !== undefined && <p className="note">enough for {enough}</p>}
        </>
      )}
      {core.stock
        .filter((row) => row.card === card)
        .map((row, i) => (
          <Age key={i} row={row} kind={kind} today={today} />
        ))}
      <details>
        <summary>
          Change the stock<span className="sr"> of {card}</span>
        </summary>
        <StockForm
          left={left}
          stock={core.stock}
          change={(how) => attempt(() => store.changeCore(how))}
          onDelete={(row, at, event) =>
            attempt(async () => {
              await store.changeCore((now) => ({ ...now, stock: now.stock.filter((_, i) => i !== at) }));
              undos.add(event, `A lot of ${card} is off the shelf.`, () =>
                store.changeCore((now) => ({ ...now, stock: now.stock.toSpliced(at, 0, row) })),
              );
            })
          }
        />
      </details>
      <StoreProblem problem={problem} />
    </div>
  );
}

function Age({ row, kind, today }: { row: StockRow; kind: CardLeft['kind']; today: string }) {
  const { mark, words } = lotAge(row, kind, today);
  return (
    <p className="age">
      <StatusMark mark={mark} />
      <span>{words}</span>
    </p>
  );
}
