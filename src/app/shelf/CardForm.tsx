import type { ReactNode } from 'react';
import { useShop } from '../shop/shopContext';
import { StoreProblem } from '../shop/StoreProblem';
import { useTrying } from '../shop/useTrying';
import type { ShopCore } from '../../store';

interface CardFormProps {
  /** What it is called in the shop; undefined for a new one. */
  name: string | undefined;
  /** Why it cannot be kept yet. */
  lacks: string | undefined;
  change: (core: ShopCore) => ShopCore;
  onDone: () => void;
  children: ReactNode;
}

/** A card that is filled in; it is kept as a whole, or left as it was. */
export function CardForm({ name, lacks, change, onDone, children }: CardFormProps) {
  const { store } = useShop();
  const { attempt, isBusy, problem } = useTrying();
  return (
    <form
      className="cardform"
      aria-label={name === undefined ? 'A new card' : `The card of ${name}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (lacks !== undefined || isBusy) return;
        attempt(async () => {
          await store.changeCore(change);
          onDone();
        });
      }}
    >
      {children}
      <div className="chg">
        {lacks === undefined ? (
          <button type="submit" className="act">
            {name === undefined ? 'Keep this card' : 'Keep the change'}
          </button>
        ) : (
          <span className="note">{lacks}</span>
        )}
        <button type="button" className="act" onClick={onDone}>
          {name === undefined ? 'Keep none' : 'Leave it as it was'}
        </button>
      </div>
      <StoreProblem problem={problem} />
    </form>
  );
}
