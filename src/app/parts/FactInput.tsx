import { NOT_YET } from '../../checks';
import type { FactField } from '../words/factFields';
import { DayField } from './DayField';
import { SelectField } from './SelectField';

interface FactInputProps {
  row: FactField;
  value: string;
  onSay: (value: string) => void;
}

/** A fact as a menu of its words, yes or no, or a day. */
export function FactInput({ row, value, onSay }: FactInputProps) {
  if (row.kind === 'day') return <DayOrNotYet label={row.label} value={value} onSay={onSay} />;
  const choices = row.kind === 'yesno' ? ['yes', 'no'] : row.choices;
  return (
    <SelectField
      label={row.label}
      value={value}
      blank="not said"
      options={choices.map((one) => ({ value: one, label: one }))}
      onChoose={onSay}
    />
  );
}

/** A day, or that it has not come. */
function DayOrNotYet({ label, value, onSay }: Omit<FactInputProps, 'row'> & { label: string }) {
  const isNotYet = value === NOT_YET;
  return (
    <DayField label={label} day={isNotYet ? '' : value} onDay={onSay} isDisabled={isNotYet}>
      <label className="tick">
        <input type="checkbox" checked={isNotYet} onChange={(e) => onSay(e.target.checked ? NOT_YET : '')} />
        <span>
          not yet<span className="sr">: {label}</span>
        </span>
      </label>
    </DayField>
  );
}
