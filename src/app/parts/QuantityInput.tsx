import { unitSign } from '../../words/unitSign';
import type { BoxText } from '../ticket/readSpec';

interface QuantityInputProps {
  /** What was read of it stands below under this id and an "r", what is wrong under an "m". */
  id: string;
  /** What the menu of units is called: "Unit of the pack factor". */
  unitLabel: string;
  units: readonly string[];
  box: BoxText;
  isBad: boolean;
  /** The number pad of many phones has no minus: such a box gets all keys. */
  isSigned: boolean;
  onBox: (box: BoxText) => void;
  onEnter: () => void;
  onLeave: () => void;
}

/** What is typed, and the unit beside it. */
export function QuantityInput({
  id,
  unitLabel,
  units,
  box,
  isBad,
  isSigned,
  onBox,
  ...on
}: QuantityInputProps) {
  return (
    <>
      <input
        id={id}
        type="text"
        inputMode={isSigned ? 'text' : 'decimal'}
        autoComplete="off"
        spellCheck={false}
        value={box.text}
        aria-invalid={isBad}
        aria-describedby={`${id}r ${id}m`}
        onChange={(e) => onBox({ text: e.target.value, unit: box.unit })}
        onBlur={on.onLeave}
        onFocus={on.onEnter}
      />
      <UnitOf
        label={unitLabel}
        unit={box.unit}
        units={units}
        onUnit={(unit) => onBox({ text: box.text, unit })}
      />
    </>
  );
}

/** A menu where there is a choice; a typed unit wins over it. */
function UnitOf({
  label,
  unit,
  units,
  onUnit,
}: {
  label: string;
  unit: string;
  units: readonly string[];
  onUnit: (unit: string) => void;
}) {
  if (units.length === 0) return null;
  if (units.length === 1) return <span>{unit}</span>;
  return (
    <select aria-label={label} value={unit} onChange={(e) => onUnit(e.target.value)}>
      {units.map((one) => (
        <option key={one} value={one}>
          {unitSign(one)}
        </option>
      ))}
    </select>
  );
}
