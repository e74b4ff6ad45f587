import { DEMOLD_RULES, RULES } from '../../yield';
import { formatLength, numberText } from '../../units';
import { amount, percent } from '../../words/sentence';
import { SelectField } from '../parts/SelectField';
import { windowS } from '../ticket/openingWishes';
import { POUR_WAYS, type PourWay } from '../ticket/ventingState';
import { upWords, WAY_CHOICES } from '../words/openingWays';
import { Box, type Assumed } from './Box';
import type { OpeningProps } from './openingProps';
import { VentRows } from './VentRows';

/** What is said of opening, way up, vents, pour and rubber. What is blank is chosen, and said so. */
export function OpeningForm(props: OpeningProps) {
  const { now } = props;
  const thin = DEMOLD_RULES.castingStop;
  const vent = RULES.ventDiameter;
  return (
    <>
      <div className="fields">
        <Box of={props} name="openWide" label="Diameter of the opening" assumed={diameterOf(props)} />
        <WayField {...props} />
        <Box of={props} name="ventWide" label="Diameter of the vents" assumed={inMm(vent)} />
        <Box of={props} name="thinUnder" label="Foam is thin under" assumed={inMm(thin)} />
      </div>
      <fieldset className="fields">
        <legend className="note">
          Middle of the opening on the sculpt as it stands, its base on the board: x to its right, y to its
          front, z up, on the zero of the scan. {placedWords(now.answer?.opening.placedBy)}
        </legend>
        <Box of={props} name="openX" label="x of the opening" />
        <Box of={props} name="openY" label="y of the opening" />
        <Box of={props} name="openZ" label="z of the opening" />
      </fieldset>
      <VentRows {...props} />
      <div className="fields">
        <Box of={props} name="pourWithin" label="Time to pour" assumed={windowOf(props)} />
        <Box of={props} name="mixViscosity" label="Viscosity of the mix, data sheet" />
        <Box of={props} name="riseTime" label="Rise time, from full to still" />
        <Box
          of={props}
          name="breakStretch"
          label="Elongation of the rubber at break"
          assumed={{
            text: numberText(100 * DEMOLD_RULES.elongation.value),
            shown: percent(DEMOLD_RULES.elongation.value),
            basis: DEMOLD_RULES.elongation.from,
          }}
        />
      </div>
      <p className="note">Free rise and pack of the foam are asked in Batch and are the same here.</p>
    </>
  );
}

const inMm = ({ value, from }: { value: number; from: string }): Assumed => ({
  text: `${numberText(value)} mm`,
  shown: formatLength(value),
  basis: from,
});

/** The advised one, once it is known what is advised. */
function diameterOf({ now, ticket }: OpeningProps): Assumed | undefined {
  const diameterMm = now.answer?.opening.diameterMm;
  if (diameterMm === undefined || ticket.fields.openWide.text.trim() !== '') return undefined;
  return {
    text: `${numberText(diameterMm)} mm`,
    shown: formatLength(diameterMm),
    basis: 'chosen here, within what is advised',
  };
}

function windowOf({ ticket }: OpeningProps): Assumed | undefined {
  const leftS = windowS(ticket);
  if (leftS === undefined) return undefined;
  const shown = `${amount(leftS, 3)} s`;
  return {
    text: amount(leftS, 3),
    shown,
    basis: 'from Batch, cream time less mixing, carrying and a margin',
  };
}

const PLACED = {
  given: '',
  base: 'Left blank: in the middle of the base, where it has most room.',
  summit: 'Left blank: at the highest point.',
} as const;

const placedWords = (by: keyof typeof PLACED | undefined): string =>
  by === undefined ? 'Left blank, it is chosen and said here.' : PLACED[by];

/** Six ways by hand, and the one that the search found. */
function WayField({ ticket, dispatch, now }: OpeningProps) {
  const { way, foundUp } = ticket.venting;
  const usual = now.answer?.opening.usualUp;
  const options = (Object.keys(POUR_WAYS) as PourWay[]).map((key) => ({
    value: key,
    label: WAY_CHOICES[key],
  }));
  const found = foundUp === undefined ? [] : [{ value: 'found', label: `as found: ${upWords(foundUp)}` }];
  return (
    <SelectField
      label="Up when poured"
      value={way}
      blank="as the opening faces, assumed"
      note={`assumed: chosen here${usual === undefined ? '' : `, ${upWords(usual)}`}`}
      options={[...options, ...found]}
      onChoose={(value) =>
        value === 'found' && foundUp !== undefined
          ? dispatch({ do: 'takeUp', up: foundUp })
          : dispatch({ do: 'pourWay', way: value as '' | PourWay })
      }
    />
  );
}
