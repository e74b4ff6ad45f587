import { useId } from 'react';
import { QuantityBox } from '../parts/QuantityBox';
import { ASSUMED_WATER } from '../words/assumedWater';
import { CUP_SPECS, MOST_CUPS, oneMoreCup, type CupDraft } from './cupDraft';

interface CupBoxesProps {
  draft: CupDraft;
  onDraft: (draft: CupDraft) => void;
}

/** The boxes of a cup test: the water of one cup, and the foam of each. */
export function CupBoxes({ draft, onDraft }: CupBoxesProps) {
  const id = useId();
  return (
    <>
      <div className="fields">
        <QuantityBox
          id={`${id}w`}
          label="Water that fills the cup to its rim"
          unitLabel="Unit of water that fills the cup"
          spec={CUP_SPECS.mass}
          box={draft.water}
          onBox={(water) => onDraft({ ...draft, water })}
        />
        <QuantityBox
          id={`${id}t`}
          label="Temperature of the water in the cup"
          unitLabel="Unit of temperature of the water in the cup"
          spec={CUP_SPECS.temp}
          box={draft.temp}
          onBox={(temp) => onDraft({ ...draft, temp })}
          assumed={ASSUMED_WATER}
        />
        {draft.foams.map((foam, n) => (
          <QuantityBox
            key={n}
            id={`${id}f${n}`}
            label={`Foam of cup ${n + 1}, trimmed flush`}
            unitLabel={`Unit of foam of cup ${n + 1}`}
            spec={CUP_SPECS.mass}
            box={foam}
            onBox={(box) =>
              onDraft({ ...draft, foams: draft.foams.map((one, at) => (at === n ? box : one)) })
            }
          />
        ))}
      </div>
      {draft.foams.length < MOST_CUPS && (
        <div className="chg">
          <button type="button" className="act" onClick={() => onDraft(oneMoreCup(draft))}>
            Another cup
          </button>
        </div>
      )}
    </>
  );
}
