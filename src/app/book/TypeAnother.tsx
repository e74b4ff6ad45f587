import { useState } from 'react';
import type { AskedField, PourRow } from '../../job/book';
import { SelectField } from '../parts/SelectField';
import { TYPED_FIELDS } from '../words/bookAsk';
import { FormBox } from './FormBox';
import { useForm } from './useForm';

const SPECS = {
  massG: { kind: 'mass', units: ['g', 'oz', 'kg', 'lb'], allowZero: true },
  warmthC: { kind: 'temperature', units: ['C', 'F'] },
} as const;

type Field = (typeof TYPED_FIELDS)[number][0];

const labelOf = (field: Field): string => TYPED_FIELDS.find(([one]) => one === field)![1];

const isField = (value: string): value is Field => TYPED_FIELDS.some(([field]) => field === value);

/** One figure of a pour, typed anew. */
export function TypeAnother({
  row,
  about,
  onWrite,
}: {
  row: PourRow;
  about: AskedField;
  onWrite: (change: Partial<PourRow>) => void;
}) {
  const form = useForm(SPECS);
  const first = about === 'balance' ? 'castingG' : about;
  const [field, setField] = useState<Field>(first);
  const name = field === 'roomC' || field === 'moldC' ? 'warmthC' : 'massG';
  const value = form.value(name);
  return (
    <form
      className="fields"
      aria-label="Another figure"
      onSubmit={(event) => {
        event.preventDefault();
        if (value !== undefined) onWrite({ [field]: value, keptAsTyped: without(row, field) });
      }}
    >
      <SelectField
        label="Which figure"
        value={field === first ? '' : field}
        blank={labelOf(first)}
        options={TYPED_FIELDS.filter(([one]) => one !== first).map(([one, words]) => ({
          value: one,
          label: words,
        }))}
        onChoose={(chosen) => setField(isField(chosen) ? chosen : first)}
      />
      <FormBox form={form} name={name} label={labelOf(field)} />
      <button type="submit" className="act" disabled={value === undefined}>
        Write it
      </button>
    </form>
  );
}

/** What was kept as it was typed is typed anew, and asked about again where it has to be. */
const without = ({ keptAsTyped = [] }: PourRow, field: AskedField): AskedField[] =>
  keptAsTyped.filter((one) => one !== field);
