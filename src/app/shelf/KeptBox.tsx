import { useId, type ReactNode } from 'react';
import { QuantityBox } from '../parts/QuantityBox';
import type { FieldSpec } from '../ticket/fieldSpec';
import type { BoxText } from '../ticket/readSpec';
import { useDraft } from './useDraft';

interface KeptBoxProps {
  label: ReactNode;
  /** What the menu of units is called. */
  unitLabel: string;
  spec: FieldSpec;
  kept: BoxText;
  onKeep: (box: BoxText | undefined, value: number | undefined) => void;
}

/** A quantity of the shop, kept as it is typed. */
export function KeptBox({ label, unitLabel, spec, kept, onKeep }: KeptBoxProps) {
  const id = useId();
  const { box, type, leave } = useDraft(spec, kept, onKeep);
  return (
    <QuantityBox
      id={id}
      label={label}
      unitLabel={unitLabel}
      spec={spec}
      box={box}
      onBox={type}
      onLeave={leave}
    />
  );
}
