import { useEffect } from 'react';
import { formatLength, MM_PER_IN, numberText } from '../../units';
import { sayOnPage } from '../words/sayOnPage';
import { lowerFirst } from '../words/fieldWords';
import { heldMold } from './chosen';
import { liveSilicone, thicknessIn, type LiveSilicone, type Thickness } from './liveSilicone';
import { againstWords, needKg, nextWords, siliconeWords, toBuyWords } from './liveWords';
import type { MoldProps } from './moldProps';

/** A press of an arrow key, mm. Chosen here: no hand brushes finer. */
const STEP_MM = 0.5;

/** The thickness as a slider beside its box: it types into the box, and what it takes in silicone is told at every move. */
export function ThicknessSlider({ ticket, dispatch, now }: Pick<MoldProps, 'ticket' | 'dispatch' | 'now'>) {
  const isAsked = ticket.looking.ladder;
  useEffect(() => {
    if (!isAsked) dispatch({ do: 'look', how: { ladder: true } });
  }, [isAsked, dispatch]);
  useEffect(() => () => dispatch({ do: 'look', how: { ladder: false } }), [dispatch]);
  const thickness = thicknessIn(ticket);
  if (thickness === undefined) return null;
  const live = liveSilicone(ticket);
  const { parameter, field, mm } = thickness;
  const isInch = ticket.fields[field]?.unit === 'in';
  return (
    <div className="slide live">
      <input
        type="range"
        aria-label={`Slide the ${lowerFirst(parameter.label)}`}
        aria-valuetext={valueWords(mm, live)}
        min={parameter.low}
        max={parameter.high}
        step={STEP_MM}
        value={mm}
        onChange={(event) => {
          const to = Number(event.target.value);
          dispatch({ do: 'type', field, text: isInch ? inches(to) : `${numberText(to)}` });
        }}
      />
      <p className="ends" aria-hidden="true">
        <span>{formatLength(parameter.low ?? 0, isInch ? 'us' : 'metric')}</span>
        <span>{formatLength(parameter.high ?? 0, isInch ? 'us' : 'metric')}</span>
      </p>
      <LiveLines live={live} thickness={thickness} ticket={ticket} now={now} />
    </div>
  );
}

/** The box takes inches to the thousandth, finer than the step. */
const inches = (mm: number): string => numberText(Number((mm / MM_PER_IN).toFixed(3)));

const valueWords = (mm: number, live: LiveSilicone): string =>
  live.state === 'told'
    ? `${formatLength(mm)}, about ${needKg(live.need).value} kg of silicone`
    : formatLength(mm);

/** Four lines, whatever they say: what is below does not jump while the slider moves. */
function LiveLines({
  live,
  thickness: { mm },
  ticket,
  now,
}: { live: LiveSilicone; thickness: Thickness } & Pick<MoldProps, 'ticket' | 'now'>) {
  const exact = now.answer?.silicone;
  const need = exact ?? (live.state === 'told' ? live.need : undefined);
  if (need === undefined) return <p className="read said">{withoutWords(live, now.state)}</p>;
  const held = heldMold(ticket);
  const heldMm = held?.shape.wallMm;
  const before = live.state === 'told' && heldMm !== undefined && heldMm !== mm ? live.at(heldMm) : undefined;
  const lines = [
    before === undefined || heldMm === undefined || live.state !== 'told'
      ? live.state === 'told'
        ? nextWords(mm, live.need.totalG, live.at)
        : withoutWords(live, now.state)
      : `About ${lowerFirst(againstWords(live.need.totalG, { massG: before, mm: heldMm }))}.`,
  ];
  return (
    <div className="read said">
      <p>
        {exact === undefined && 'About '}
        <b>{needKg(need).value} kg of silicone</b> {siliconeWords(need)}.
      </p>
      <p>{toBuyWords(need)}.</p>
      {lines.map((line) => (
        <p key="line">{line}</p>
      ))}
      <p>{exact === undefined && <InBetween />}</p>
    </div>
  );
}

/** How it is known: not measured at this thickness, but between two that were. */
export const InBetween = () => <span className="tag">between measured thicknesses</span>;

function withoutWords(live: LiveSilicone, state: MoldProps['now']['state']): string {
  if (live.state === 'refused') return sayOnPage(live.problem).text;
  if (live.state === 'coming')
    return 'Silicone against thickness is still being measured: while the slider moves there is no figure yet, it comes when the slider stands still.';
  return state === 'working' ? 'The figure comes when the slider stands still.' : '';
}
