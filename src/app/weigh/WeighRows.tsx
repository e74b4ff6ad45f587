import type { SavedField } from '../../job/piece';
import type { WeighBox, WeighState } from '../../job/weighState';
import { formatGrams } from '../../units';
import { BOX_WORDS } from '../words/weighWords';
import { SlipQuestion } from './SlipQuestion';
import { BOX_SPECS, boxOf, temperatureText, unitKey, type AtBench, type UnitMemory } from './weighBoxes';
import type { WeighNow } from './weighNow';
import { WeighRow } from './WeighRow';

interface WeighRowsProps {
  boxes: readonly WeighBox[];
  state: WeighState;
  now: WeighNow;
  bench: AtBench;
  units: UnitMemory;
  set: (how: (state: WeighState) => WeighState) => void;
  onUnit: (key: string, unit: string) => void;
}

/** Weights or temperatures, each with what is asked about it. */
export function WeighRows({ boxes, state, now, bench, units, set, onUnit }: WeighRowsProps) {
  const withBox = (name: WeighBox, box: SavedField | 'not' | undefined): void =>
    set(({ boxes: { [name]: _old, ...others }, ...rest }) => ({
      ...rest,
      boxes: box === undefined ? others : { ...others, [name]: box },
    }));
  return (
    <div className="wbs">
      {boxes.map((name) => {
        const box = boxOf(name, state, bench, units);
        const { label, hint } = BOX_WORDS[name];
        const unit = box === 'not' ? (units[unitKey(name)] ?? BOX_SPECS[name].units[0]!) : box.unit;
        return (
          <WeighRow
            key={name}
            name={name}
            label={label}
            hint={`${hint}${fromBench(name, bench, now, unit)}`}
            box={box}
            unit={unit}
            notWords={name === 'room' || name === 'mold' ? 'Did not take it' : 'Did not weigh'}
            onBox={(next) => withBox(name, next)}
            onUnit={(next) => {
              withBox(name, { text: textIn(name, box, bench, state, next), unit: next });
              onUnit(unitKey(name), next);
            }}
          >
            {now.asks
              .filter((ask) => ask.box === name)
              .map((ask) => (
                <SlipQuestion
                  key={`${ask.slip.code}-${ask.slip.field}`}
                  ask={ask}
                  onAnswer={(answered) => set(() => answered)}
                  onAgain={() => {
                    withBox(name, { text: '', unit });
                    document.getElementById(`weigh-${name}`)?.focus();
                  }}
                />
              ))}
          </WeighRow>
        );
      })}
    </div>
  );
}

/** What is typed stays as it is in the new unit; a temperature from the bench is the same one in it. */
function textIn(
  name: WeighBox,
  box: ReturnType<typeof boxOf>,
  bench: AtBench,
  { boxes }: WeighState,
  unit: string,
): string {
  const atC = name === 'room' ? bench.roomC : name === 'mold' ? bench.moldC : undefined;
  if (atC !== undefined && boxes[name] === undefined) return temperatureText(atC, unit);
  return box === 'not' ? '' : box.text;
}

/** "; 22 from the bench". */
function fromBench(name: WeighBox, bench: AtBench, { stepG, draft }: WeighNow, unit: string): string {
  if (name === 'mixed' && bench.aG !== undefined && bench.bG !== undefined)
    return `; ${formatGrams(bench.aG + bench.bG + (draft.colorG ?? 0), stepG)} at the bench`;
  const atC = name === 'room' ? bench.roomC : name === 'mold' ? bench.moldC : undefined;
  return atC === undefined ? '' : `; ${temperatureText(atC, unit)} from the bench`;
}
