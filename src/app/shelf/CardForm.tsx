import type { ReactNode } from 'react';
import { KeepForm } from '../parts/KeepForm';
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
  const isNew = name === undefined;
  return (
    <KeepForm
      label={isNew ? 'A new card' : `The card of ${name}`}
      lacks={lacks}
      isBusy={isBusy}
      keep={isNew ? 'Keep this card' : 'Keep the change'}
      leave={isNew ? 'Keep none' : 'Leave it as it was'}
      onKeep={() =>
        attempt(async () => {
          await store.changeCore(change);
          onDone();
        })
      }
      onLeave={onDone}
      trouble={<StoreProblem problem={problem} />}
    >
      {children}
    </KeepForm>
  );
}
