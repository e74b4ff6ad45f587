import type { ReactNode } from 'react';
import { numberText } from '../../units';
import { unitSign } from '../../words/unitSign';
import { QuantityField } from '../parts/QuantityField';
import type { BatchProps } from '../batch/batchProps';
import { specOf, type FieldName } from '../ticket/fields';

interface PourFieldProps {
  of: Pick<BatchProps, 'ticket' | 'dispatch' | 'problemOf'>;
  name: FieldName;
  label: ReactNode;
  /** What is taken while the box is empty, in the unit shown, and where that comes from. */
  assumed?: { value: number; unit: string; from: string };
}

/** A box of the pour with the problem that names it. */
export function PourField({ of: { ticket, dispatch, problemOf }, name, label, assumed }: PourFieldProps) {
  return (
    <QuantityField
      name={name}
      label={label}
      ticket={ticket}
      dispatch={dispatch}
      problem={problemOf(name)}
      {...(assumed === undefined ? {} : { assumed: typedAs(name, assumed) })}
    />
  );
}

/** A plain number is typed without the unit that stands behind its box. */
function typedAs(
  name: FieldName,
  { value, unit, from }: { value: number; unit: string; from: string },
): { text: string; shown: string; basis: string } {
  const { kind } = specOf(name);
  const number = kind === 'packFactor' ? value.toFixed(2) : numberText(Number(value.toPrecision(3)));
  const text = kind === 'plain' || unit === '' ? number : `${number} ${unit}`;
  const shown = unit === '' ? number : `${number} ${unitSign(unit)}`;
  return { text, shown, basis: from };
}
