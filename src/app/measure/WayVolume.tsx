import { assumptionLine } from '../../words/assumptionWords';
import { bodyWords, displaceBecause, fillBecause, girthBecause } from '../../words/volumeWayWords';
import { VOLUME_RULES, type TapedBody } from '../../yield';
import type { KnownVolume } from '../ticket/now';
import { valueIn } from '../ticket/readField';
import type { Ticket } from '../ticket/state';
import { bodyRead } from '../ticket/wayReads';
import { volumeInBoth, WAY_FORMULA } from '../words/wayWords';

/** Where a volume comes from that no scan told: the sentences of the command line. */
export function wayBecause(ticket: Ticket, known: KnownVolume): string[] {
  const { by, volumeCm3 } = known;
  const { fields, sizing } = ticket;
  if (by === 'fill')
    return fillBecause({ ...waterOf(ticket, 'fillWater', 'fillTemp'), volumeCm3: volumeCm3.value });
  if (by === 'tape') return girthBecause(bodiesOf(ticket));
  if (by !== 'displace') return [];
  if (sizing.sunk === 'overflow')
    return displaceBecause({
      by: 'overflow',
      water: { ...waterOf(ticket, 'overWater', 'overTemp'), volumeCm3: volumeCm3.value },
    });
  const readingCm3 =
    valueIn(fields, 'sunkStep') ?? (valueIn(fields, 'sunkAfter') ?? 0) / VOLUME_RULES.vesselMarks.value;
  return displaceBecause({ by: 'level', medium: sizing.sunk, readingCm3 });
}

/** The sum of a volume that no scan told: formula, why, range in both systems, and what is assumed. */
export function WaySum({ ticket, known }: { ticket: Ticket; known: KnownVolume }) {
  const { by, volumeCm3 } = known;
  return (
    <ul>
      {formulasOf(ticket, known).map((line) => (
        <li key={line}>{line}</li>
      ))}
      {by === 'tape' &&
        bodiesOf(ticket).map((body, n) => (
          <li key={n}>
            Body {n + 1}: {bodyWords(body)}
          </li>
        ))}
      <li>{volumeInBoth(by, volumeCm3)}</li>
      {wayBecause(ticket, known).map((line) => (
        <li key={line}>{line}</li>
      ))}
      {assumedOf(ticket, known).map((line) => (
        <li key={line}>
          <span className="assumed">{line}</span>
        </li>
      ))}
    </ul>
  );
}

function formulasOf({ sizing }: Ticket, { by }: KnownVolume): string[] {
  if (by === 'fill') return [WAY_FORMULA.fill];
  if (by === 'displace') return [WAY_FORMULA[sizing.sunk === 'overflow' ? 'overflow' : 'level']];
  return [...new Set(sizing.bodies.map(({ kind }) => WAY_FORMULA[kind]))];
}

function assumedOf({ fields, sizing }: Ticket, { by }: KnownVolume): string[] {
  const R = VOLUME_RULES;
  const isBlank = (name: 'fillTemp' | 'overTemp' | 'sunkStep'): boolean =>
    valueIn(fields, name) === undefined;
  const water = assumed('water_temperature', R.waterTemp);
  if (by === 'fill') return [...(isBlank('fillTemp') ? [water] : []), assumed('u_water_fill', R.waterFillU)];
  if (by === 'tape')
    return [
      ...(sizing.bodies.some(({ kind }) => kind !== 'box') ? [assumed('roundness', R.roundness)] : []),
      ...(sizing.bodies.some(({ kind }) => kind === 'box') ? [assumed('box_fill', R.boxFill)] : []),
      assumed('u_tape', R.tapeU),
    ];
  if (sizing.sunk === 'overflow')
    return [...(isBlank('overTemp') ? [water] : []), assumed('u_overflow', R.overflowU)];
  const value = (valueIn(fields, 'sunkAfter') ?? 0) / R.vesselMarks.value;
  return [
    ...(isBlank('sunkStep') ? [assumed('step_of_the_vessel', { ...R.vesselMarks, value, unit: 'cm3' })] : []),
    sizing.sunk === 'rice' ? assumed('u_rice', R.riceU) : assumed('u_level', R.levelU),
  ];
}

const assumed = (
  name: string,
  { value, unit, from }: { value: number; unit: string; from: string },
): string => assumptionLine({ name, value, unit, from: 'assumed', basis: from });

const bodiesOf = (ticket: Ticket): TapedBody[] =>
  ticket.sizing.bodies.map((_, row) => bodyRead(ticket, row)).filter((body) => body !== undefined);

function waterOf(
  { fields }: Ticket,
  water: 'fillWater' | 'overWater',
  temp: 'fillTemp' | 'overTemp',
): { waterG: number; waterTempC: number } {
  return {
    waterG: valueIn(fields, water) ?? 0,
    waterTempC: valueIn(fields, temp) ?? VOLUME_RULES.waterTemp.value,
  };
}
