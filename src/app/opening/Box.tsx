import { QuantityField } from '../parts/QuantityField';
import type { FieldName } from '../ticket/fields';
import type { OpeningProps } from './openingProps';

/** What is taken while a box is blank: as it would be typed, as it is shown, and where it comes from. */
export interface Assumed {
  text: string;
  shown: string;
  basis: string;
}

interface BoxProps {
  of: OpeningProps;
  name: FieldName;
  label: string;
  assumed?: Assumed | undefined;
}

/** A box of the question, with the problem that names it. */
export function Box({ of: { ticket, dispatch, problemOf }, name, label, assumed }: BoxProps) {
  return (
    <QuantityField
      name={name}
      label={label}
      ticket={ticket}
      dispatch={dispatch}
      problem={problemOf(name)}
      {...(assumed === undefined ? {} : { assumed })}
    />
  );
}
