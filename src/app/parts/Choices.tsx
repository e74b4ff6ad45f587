interface ChoicesProps<V extends string> {
  legend: string;
  name: string;
  value: V | undefined;
  options: readonly { value: V; label: string }[];
  onChoose: (value: V) => void;
  /** Marks the chosen one as nobody's word yet. */
  assumed?: boolean;
}

/** Radio buttons in a row, each a box of 44 px; native, so arrow keys work. */
export function Choices<V extends string>({
  legend,
  name,
  value,
  options,
  onChoose,
  assumed = false,
}: ChoicesProps<V>) {
  return (
    <fieldset className="choices">
      <legend>{legend}</legend>
      <div className="row">
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={value === option.value}
              onChange={() => onChoose(option.value)}
            />
            <span className={assumed && value === option.value ? 'assumed' : undefined}>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
