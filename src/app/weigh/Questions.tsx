import { useId } from 'react';
import type { Answers, WeighState } from '../../job/weighState';
import { formatVolume } from '../../units';
import { QuantityBox } from '../parts/QuantityBox';
import { VOID_PLACES } from '../words/weighPlaces';
import { FILLED_OPTIONS, OPENING_OPTIONS, SKINS, SKIN_WORDS } from '../words/weighWords';
import { BigChoices } from './BigChoices';
import { missingBox, missingCm3, missingSpec, type AtBench, type UnitMemory } from './weighBoxes';

interface QuestionsProps {
  state: WeighState;
  bench: AtBench;
  units: UnitMemory;
  cavityCm3: number | undefined;
  onSay: (more: Answers) => void;
  onUnit: (unit: string) => void;
}

const one = (value: string | number | undefined): string[] => (value === undefined ? [] : [String(value)]);

/** How the opening was, whether it filled, the skin, and where voids are. Any of them can be skipped. */
export function Questions(props: QuestionsProps) {
  const { state, bench, onSay } = props;
  const { skin } = state;
  return (
    <>
      <BigChoices
        legend="How was the opening?"
        name="weigh-opening"
        options={OPENING_OPTIONS}
        chosen={one(state.opening ?? bench.opening)}
        onChoose={(value) => onSay({ opening: value as WeighState['opening'] })}
      />
      <BigChoices
        legend="Did it fill?"
        name="weigh-filled"
        options={FILLED_OPTIONS}
        chosen={one(state.filled)}
        onChoose={(value) => onSay({ filled: value as WeighState['filled'] })}
      />
      {state.filled === 'short' && <Missing {...props} />}
      <BigChoices
        legend="How is the skin?"
        name="weigh-skin"
        five
        options={SKINS.map((score) => ({
          value: String(score),
          label: score,
          more: SKIN_WORDS[score].short,
        }))}
        chosen={one(skin)}
        onChoose={(value) => onSay({ skin: SKINS.find((score) => String(score) === value) })}
      />
      <div className="skinsaid">
        <p>
          {typeof skin === 'number' && (
            <>
              <b>{skin}</b>: {SKIN_WORDS[skin].long}
            </>
          )}
        </p>
        <button
          type="button"
          className="act not"
          aria-pressed={skin === 'not'}
          onClick={() => onSay({ skin: skin === 'not' ? undefined : 'not' })}
        >
          Did not look<span className="sr"> at the skin</span>
        </button>
      </div>
      <Voids {...props} />
    </>
  );
}

function Missing({ state, units, cavityCm3, onSay, onUnit }: QuestionsProps) {
  const id = useId();
  const box = missingBox(state.missing, units);
  const cm3 = missingCm3(box, cavityCm3);
  const isShare = missingSpec(box).kind === 'share';
  const shown = isShare ? { ...box, unit: '%' } : box;
  return (
    <div className="missing">
      <QuantityBox
        id={id}
        label="What is missing, about?"
        unitLabel="Unit of what is missing"
        spec={missingSpec(box)}
        box={shown}
        onBox={(next) => {
          const isSame = next.unit === shown.unit;
          onSay({ missing: isSame ? { ...next, unit: box.unit } : next });
          if (!isSame) onUnit(next.unit);
        }}
        complaint={
          cm3 !== undefined && cavityCm3 !== undefined && cm3 > cavityCm3
            ? {
                text: `The cavity holds ${Math.round(cavityCm3)} cm³, so no more than that can be missing.`,
                hint: 'Look at the unit.',
              }
            : isShare && cavityCm3 === undefined && box.text.trim() !== ''
              ? {
                  text: 'A share of what is not known here: the cavity has no volume on the ticket.',
                  hint: 'Say it in cm³.',
                }
              : undefined
        }
      />
      <p className="note quiet">
        {isShare && cm3 !== undefined
          ? `That is ${formatVolume(cm3)} of the cavity.`
          : 'In cm³ or as a share of the cavity.'}{' '}
        From a short pour it is the best there is to learn from.
      </p>
    </div>
  );
}

function Voids({ state: { voids, note = '' }, onSay }: QuestionsProps) {
  const id = useId();
  const chosen = voids === undefined ? [] : voids.length === 0 ? ['none'] : voids;
  const others = (voids ?? []).filter((place) => !VOID_PLACES.some((known) => known === place));
  const choose = (place: string): void => {
    if (place === 'none') return onSay({ voids: voids?.length === 0 ? undefined : [] });
    const rest = (voids ?? []).filter((one) => one !== place);
    const next = chosen.includes(place) ? rest : [...rest, place];
    onSay({ voids: next.length === 0 ? undefined : next });
  };
  return (
    <>
      <BigChoices
        legend="Any voids? Where?"
        name="weigh-voids"
        many
        options={[
          { value: 'none', label: 'None' },
          ...[...VOID_PLACES, ...others].map((place) => ({ value: place, label: upper(place) })),
        ]}
        chosen={chosen}
        onChoose={choose}
      />
      <p className="note quiet">Left and right are the piece’s own.</p>
      <div className="words">
        <label htmlFor={id}>Elsewhere, or what else is worth writing down</label>
        <input id={id} type="text" value={note} onChange={(e) => onSay({ note: e.target.value })} />
      </div>
    </>
  );
}

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
