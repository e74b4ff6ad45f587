import { numberText } from '../../units';
import { SILICONE_RULES, type Rule } from '../../yield';
import { Disclosure } from '../parts/Disclosure';
import { QuantityField } from '../parts/QuantityField';
import type { OwnField } from '../ticket/fields';
import { halfRatio } from '../ticket/moldWishes';
import { KitsField } from './KitsField';
import { SiliconeNameAndCure } from './SiliconeNameAndCure';
import type { MoldProps } from './moldProps';
import { SiliconeCardVerbs } from './SiliconeCardVerbs';

const assumedRule = ({ value, unit, from }: Rule, by = 1, as = unit) => {
  const text = `${numberText(value * by)}${as === '' ? '' : ` ${as}`}`;
  return { text, shown: text, basis: from };
};

const R = SILICONE_RULES;

/** The card of the silicone and how it is mixed: everything from the user's own data sheet, what is blank is assumed and said so. */
export function SiliconeForm(props: MoldProps) {
  const { ticket, dispatch } = props;
  const half = halfRatio(ticket.fields);
  const { value: parts, from: partsFrom } = R.basePerCatalyst;
  return (
    <>
      <SiliconeCardVerbs ticket={ticket} dispatch={dispatch} />
      <div className="fields">
        <SiliconeNameAndCure ticket={ticket} dispatch={dispatch} />
        <Box
          {...props}
          name="siliconeDensity"
          label="Density of the mix"
          assumed={assumedRule(R.density, 0.001, 'g/cm3')}
        />
      </div>
      <div className="fields">
        <Box
          {...props}
          name="siliconeBase"
          label="Parts of base, by weight"
          assumed={{ text: numberText(parts), shown: numberText(parts), basis: partsFrom }}
        />
        <Box
          {...props}
          name="siliconeCatalyst"
          label="Parts of catalyst, by weight"
          assumed={{ text: '1', shown: '1', basis: partsFrom }}
        />
        <Box
          {...props}
          name="potLife"
          label="Pot life"
          assumed={plain(assumedRule(R.potLife, 1, ''), 'min')}
        />
      </div>
      {half !== undefined && (
        <p className="note">
          The ratio has one side only. Type the {half === 'siliconeBase' ? 'base' : 'catalyst'} too, or leave
          both blank.
        </p>
      )}
      <div className="fields">
        <KitsField {...props} />
        <Box {...props} name="stockBase" label="Base in stock" />
        <Box {...props} name="stockCatalyst" label="Catalyst in stock" />
      </div>
      <div className="more">
        <Disclosure title="How it is mixed">
          <div className="fields">
            <Box
              {...props}
              name="siliconeWaste"
              label="Waste on tools and in the pour"
              assumed={wasteOf(props)}
            />
            <Box
              {...props}
              name="cupLoss"
              label="Silicone left in each cup"
              assumed={assumedRule(R.cupLoss)}
            />
            <Box {...props} name="mixingCup" label="Mixing cup holds (if it sets the limit)" />
            <Box
              {...props}
              name="room"
              label="Temperature of the room"
              assumed={{
                ...assumedRule(R.potLifeTemperature),
                basis: 'the room as warm as the data sheet’s pot life',
              }}
            />
            <Box
              {...props}
              name="potLifeAt"
              label="The pot life holds at"
              assumed={assumedRule(R.potLifeTemperature)}
            />
            <Box {...props} name="stays" label="What stays on a stick held upright for a minute" />
            <Box
              {...props}
              name="viscosity"
              label="Viscosity of the mix"
              assumed={plain(assumedRule(R.viscosity, 1, ''), 'Pa s')}
            />
            <Box {...props} name="degasPressure" label="Vacuum, absolute pressure" />
            <label className="tick">
              <input
                type="checkbox"
                checked={ticket.molding.degassed}
                onChange={(e) => dispatch({ do: 'molding', molding: { degassed: e.target.checked } })}
              />
              <span>Degassed under vacuum</span>
            </label>
          </div>
          <p className="note">The step of the scale is asked in Batch and is the same here.</p>
        </Disclosure>
      </div>
    </>
  );
}

/** The box shows its unit behind it: the text has none. */
const plain = (assumed: ReturnType<typeof assumedRule>, after: string) => ({
  ...assumed,
  shown: `${assumed.text} ${after}`,
});

/** Brushing wastes more than pouring: the default follows the type's way, told by the mold that stands. */
function wasteOf({ now }: MoldProps) {
  const isBrushed = now.answer?.shape.coats !== undefined;
  if (now.answer === undefined) {
    const both = `${numberText(100 * R.wastePour.value)} % poured, ${numberText(100 * R.wasteBrush.value)} % brushed`;
    return { text: '', shown: both, basis: R.wastePour.from };
  }
  return assumedRule(isBrushed ? R.wasteBrush : R.wastePour, 100, '%');
}

function Box({
  name,
  label,
  assumed,
  ticket,
  dispatch,
  problemOf,
}: MoldProps & { name: OwnField; label: string; assumed?: ReturnType<typeof assumedRule> }) {
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
