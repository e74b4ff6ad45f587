import { JACKET_MATERIALS, MOLDMAKING_RULES, WALL_MATERIALS } from '../../yield';
import { formatLength, formatVolume, numberText } from '../../units';
import { amount } from '../../words/sentence';
import { Verdict } from '../parts/Figure';
import { FigureTable } from '../parts/FigureTable';
import { FindingsTable } from '../parts/FindingsTable';
import { Question } from '../parts/Question';
import { QuantityField } from '../parts/QuantityField';
import { SelectField } from '../parts/SelectField';
import { SourceTag } from '../parts/SourceTag';
import { Working } from '../parts/Working';
import { moldField } from '../ticket/madeFields';
import { typeOf } from '../ticket/moldState';
import { hasParameter, isPoured, jacketOf } from '../ticket/moldWishes';
import type { Mold } from '../../plan';
import { lowerFirst } from '../words/fieldWords';
import { boxRows, jacketRows, moldRows } from '../words/holdRows';
import { sidesWords } from '../words/moldFigures';
import { heldMold } from './chosen';
import { findingsOf } from './findings';
import { JacketForm } from './JacketForm';
import { MaterialCautions } from './MaterialCautions';
import type { MoldProps } from './moldProps';
import { UndercutTable } from './UndercutTable';

/** Walls, jacket, weight: what has to bear the rubber and the hands. */
export function HoldQuestion(props: MoldProps) {
  const { ticket, mark, now } = props;
  const mold = now.answer;
  const rows = mold === undefined ? [] : [...boxRows(mold), ...jacketRows(mold), ...moldRows(mold)];
  const findings = mold === undefined ? [] : findingsOf(mold, 'hold');
  return (
    <Question
      no={2}
      mark={mark}
      ask="What must hold while it is made?"
      busy={now.state === 'working'}
      answer={
        mold === undefined ? (
          now.state === 'working' ? (
            <Working what="walls and weight" />
          ) : (
            <Verdict>Nothing to hold yet</Verdict>
          )
        ) : (
          <>
            <Verdict>{holdWords(mold)}</Verdict>
            <SourceTag from={mold.siliconeCm3.from} />
            {isMaterialAssumed(props) && <SourceTag from="assumed" />}
          </>
        )
      }
      because={becauseWords(mold)}
    >
      <HoldForm {...props} />
      <MaterialCautions
        of="walls, jacket and weight"
        places={['first', 'clay', 'jacket', 'weight']}
        keys={heldMold(ticket)?.cautions ?? []}
      />
      {rows.length > 0 && (
        <FigureTable rows={rows} caption="Sizes are those of the scan as placed: x, y, z." />
      )}
      {mold?.shape.undercut !== undefined && <UndercutTable undercut={mold.shape.undercut} />}
      {findings.length > 0 && (
        <FindingsTable findings={findings} caption="Checks of box, jacket and sculpt" />
      )}
    </Question>
  );
}

function HoldForm(props: MoldProps) {
  const { ticket, dispatch, problemOf } = props;
  const { molding } = ticket;
  const type = typeOf(molding);
  const wall = MOLDMAKING_RULES.boxWall;
  const assumedWall = `${numberText(wall.value)} mm`;
  return (
    <>
      <div className="fields">
        {hasParameter(type, 'wallMm') && (
          <>
            <SelectField
              label="Walls of the box"
              value={molding.box ?? ''}
              blank="Plywood, assumed"
              note="assumed: chosen here"
              options={WALL_MATERIALS.map(({ key, title }) => ({ value: key, label: title }))}
              onChoose={(value) =>
                dispatch({ do: 'molding', molding: { box: value === '' ? undefined : value } })
              }
            />
            <QuantityField
              name="boxWall"
              label="Thickness of the walls"
              ticket={ticket}
              dispatch={dispatch}
              problem={problemOf('boxWall')}
              assumed={{ text: assumedWall, shown: assumedWall, basis: wall.from }}
            />
          </>
        )}
        {hasParameter(type, 'jacketMm') && (
          <SelectField
            label="Jacket made of"
            value={molding.jacket ?? ''}
            blank={`${JACKET_MATERIALS[0]!.title}, assumed`}
            note="assumed: the first of the list"
            options={JACKET_MATERIALS.map(({ key, title }) => ({ value: key, label: title }))}
            onChoose={(value) =>
              dispatch({ do: 'molding', molding: { jacket: value === '' ? undefined : value } })
            }
          />
        )}
        {isPoured(type) && (
          <QuantityField
            name="sculptMass"
            label="Mass of the sculpt with its board (if known)"
            ticket={ticket}
            dispatch={dispatch}
            problem={problemOf('sculptMass')}
          />
        )}
      </div>
      {hasParameter(type, 'jacketMm') && (
        <>
          <UsualThickness {...props} />
          <JacketForm {...props} />
        </>
      )}
    </>
  );
}

/** The jacket's thickness is a parameter of the mold; another material is laid thinner or thicker. Taken only when asked. */
function UsualThickness({ ticket, dispatch, now }: MoldProps) {
  const { title, thickness } = jacketOf(ticket.molding);
  const takenMm = now.answer?.settings.jacketMm;
  const parameter = typeOf(ticket.molding).parameters.find(({ key }) => key === 'jacketMm');
  if (parameter === undefined || takenMm === undefined || takenMm === thickness.value) return null;
  const usual = `${numberText(thickness.value)} mm`;
  return (
    <>
      <p className="why">
        {title} is usually {usual} thick; this jacket is {amount(takenMm)} mm.
      </p>
      <div className="chg">
        <button
          type="button"
          className="act"
          onClick={() =>
            dispatch({ do: 'type', field: moldField(typeOf(ticket.molding), parameter), text: usual })
          }
        >
          Take {usual}
        </button>
      </div>
    </>
  );
}

function isMaterialAssumed({ ticket: { molding } }: MoldProps): boolean {
  const type = typeOf(molding);
  return hasParameter(type, 'jacketMm') ? molding.jacket === undefined : molding.box === undefined;
}

function holdWords({ shape: { box, jacket }, surroundings }: Mold): string {
  if (jacket !== undefined && surroundings.jacket !== undefined)
    return `A jacket of ${lowerFirst(surroundings.jacket.title)}, ${amount(surroundings.jacket.dryMassG / 1000, 3)} kg dry`;
  if (box === undefined) return 'Nothing around the rubber';
  return box.kind === 'cylinder'
    ? `A cylinder of ${formatLength(box.innerMm[0], 'metric')} inside`
    : `A box of ${sidesWords(box.innerMm)} inside`;
}

function becauseWords(mold: Mold | undefined): string {
  if (mold === undefined)
    return 'Poured rubber pushes on its walls and lifts the sculpt; a jacket keeps a skin in shape.';
  const { shape } = mold;
  return shape.jacket === undefined
    ? `Rubber stands ${formatLength(shape.outerMm[2])} tall in it and pushes like a heavy liquid until it cures.`
    : `A skin alone does not keep its shape; the jacket takes ${formatVolume(shape.jacket.volumeMm3 / 1000)} of material and holds the skin while foam presses on it.`;
}
