import type { JacketParameter } from '../../yield';
import { numberText } from '../../units';
import { Disclosure } from '../parts/Disclosure';
import { QuantityField } from '../parts/QuantityField';
import { specOf } from '../ticket/fields';
import { jacketField } from '../ticket/madeFields';
import { jacketOf } from '../ticket/moldWishes';
import type { MoldProps } from './moldProps';

/** The figures of the chosen jacket material, by its own list. */
export function JacketForm({ ticket, dispatch, problemOf }: MoldProps) {
  const material = jacketOf(ticket.molding);
  if (material.parameters.length === 0) return null;
  return (
    <div className="more">
      <Disclosure title={`Figures of the jacket: ${material.title}`}>
        <div className="fields">
          {material.parameters.map((parameter) => {
            const name = jacketField(material.key, parameter.key);
            return (
              <QuantityField
                key={name}
                name={name}
                label={parameter.title}
                ticket={ticket}
                dispatch={dispatch}
                problem={problemOf(name)}
                {...(parameter.isDerived === true ? {} : { assumed: assumedOf(parameter, name) })}
              />
            );
          })}
        </div>
      </Disclosure>
    </div>
  );
}

function assumedOf(
  { rule }: JacketParameter,
  name: ReturnType<typeof jacketField>,
): { text: string; shown: string; basis: string } {
  const { kind, after } = specOf(name);
  if (kind === 'share') {
    const text = `${numberText(100 * rule.value)} %`;
    return { text, shown: text, basis: rule.from };
  }
  const text = `${numberText(rule.value)}${kind === 'plain' ? '' : ` ${rule.unit}`}`;
  return { text, shown: after === undefined ? text : `${text} ${after}`, basis: rule.from };
}
