import { UP_AXES, type MoldParameter, type MoldType } from '../../geometry';
import { thicknessOf } from '../../plan';
import { Disclosure } from '../parts/Disclosure';
import { QuantityField } from '../parts/QuantityField';
import { SelectField } from '../parts/SelectField';
import { isPicked, moldField } from '../ticket/madeFields';
import { choiceWords } from '../words/moldChoices';
import type { MoldProps } from './moldProps';
import { ThicknessSlider } from './ThicknessSlider';

type FormProps = Pick<MoldProps, 'ticket' | 'dispatch' | 'problemOf' | 'now'> & { type: MoldType };

/** The parameter list of a type as boxes and menus; what few people change is folded away. */
export function ParameterForm({ type, ...props }: FormProps) {
  const fine = type.parameters.filter(({ isFine }) => isFine === true);
  const thickness = thicknessOf(type);
  return (
    <>
      {thickness !== undefined && (
        <div className="fields thick">
          <ParameterField {...{ type, parameter: thickness, ...props }} />
          <ThicknessSlider {...props} />
        </div>
      )}
      <div className="fields">
        {type.parameters
          .filter((parameter) => parameter.isFine !== true && parameter !== thickness)
          .map((parameter) => (
            <ParameterField key={parameter.key} {...{ type, parameter, ...props }} />
          ))}
      </div>
      {fine.length > 0 && (
        <div className="more">
          <Disclosure title="More choices">
            <div className="fields">
              {fine.map((parameter) => (
                <ParameterField key={parameter.key} {...{ type, parameter, ...props }} />
              ))}
            </div>
          </Disclosure>
        </div>
      )}
    </>
  );
}

function ParameterField({
  type,
  parameter,
  ticket,
  dispatch,
  problemOf,
}: FormProps & { parameter: MoldParameter }) {
  const { label, from } = parameter;
  const name = moldField(type, parameter);
  if (isPicked(parameter)) {
    const options = parameter.choices ?? ['best', ...UP_AXES];
    return (
      <SelectField
        label={label}
        value={ticket.molding.picks[name] ?? ''}
        blank={`${choiceWords(String(parameter.default))}, assumed`}
        note={`assumed: ${from}`}
        options={options.map((value) => ({ value, label: choiceWords(value) }))}
        onChoose={(value) => dispatch({ do: 'moldPick', field: name, value })}
      />
    );
  }
  const text = `${parameter.default}${UNIT_OF[parameter.kind] ?? ''}`;
  return (
    <QuantityField
      name={name}
      label={label}
      ticket={ticket}
      dispatch={dispatch}
      problem={problemOf(name)}
      assumed={{
        text,
        shown: parameter.kind === 'angle' ? `${text} degrees` : text,
        basis: from,
      }}
    />
  );
}

const UNIT_OF: Partial<Record<MoldParameter['kind'], string>> = { length: ' mm', height: ' mm' };
