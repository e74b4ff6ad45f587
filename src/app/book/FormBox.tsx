import { useId } from 'react';
import { QuantityBox } from '../parts/QuantityBox';
import type { Form } from './useForm';

interface FormBoxProps<Name extends string> {
  form: Form<Name>;
  name: Name;
  label: string;
  /** What is taken while it is blank, and where that comes from. */
  assumed?: { text: string; shown: string; basis: string } | undefined;
}

/** One box of a form. */
export function FormBox<Name extends string>({ form, name, label, assumed }: FormBoxProps<Name>) {
  const id = useId();
  const box = form.box(name);
  return (
    <QuantityBox
      id={id}
      label={label}
      unitLabel={`Unit of ${label.toLowerCase()}`}
      spec={form.specs[name]}
      box={box}
      assumed={assumed}
      onText={(text) => form.type(name, { text, unit: box.unit })}
      onUnit={(unit) => form.type(name, { text: box.text, unit })}
      onPick={({ text, value }) => form.type(name, { text, unit: box.unit, picked: value })}
    />
  );
}
