import { useId } from 'react';
import type { Sentence } from '../../words/sentence';
import { QuantityBox } from '../parts/QuantityBox';
import { lowerFirst } from '../words/fieldWords';
import type { Form } from './useForm';

interface FormBoxProps<Name extends string> {
  form: Form<Name>;
  name: Name;
  label: string;
  /** What is taken while it is blank, and where that comes from. */
  assumed?: { text: string; shown: string; basis: string } | undefined;
  /** What the engine says of it. */
  complaint?: Sentence | undefined;
}

/** One box of a form. */
export function FormBox<Name extends string>({ form, name, label, assumed, complaint }: FormBoxProps<Name>) {
  return (
    <QuantityBox
      id={useId()}
      label={label}
      unitLabel={`Unit of ${lowerFirst(label)}`}
      spec={form.specs[name]}
      box={form.box(name)}
      assumed={assumed}
      complaint={complaint}
      onBox={(box) => form.type(name, box)}
    />
  );
}
