import type { AskProps } from '../measure/askProps';
import { WayTag } from '../measure/WayTag';
import { PourBySwitch } from '../parts/PourBySwitch';
import { SourceTag } from '../parts/SourceTag';
import { pourByOf } from '../ticket/moldWishes';
import { castingNow, filledNow, volumeNow, type KnownVolume } from '../ticket/now';
import type { Ticket } from '../ticket/state';
import { warmedFill } from '../ticket/wayReads';
import { insideWords } from '../words/insideWords';
import { rangeText } from '../../words/rangeText';
import { VOLUME_BY, volumeText } from '../words/wayWords';

/** Which volume the grams are for, with its tag, and the switch to the other. */
export function FilledVolume({ ticket, dispatch }: Omit<AskProps, 'mark'>) {
  const known = volumeNow(ticket).answer;
  const casting = castingNow(ticket).answer;
  const pourBy = pourByOf(ticket);
  const isCavity = pourBy === 'cavity' && known?.by !== 'fill';
  if (ticket.scan === undefined && known === undefined) return null;
  return (
    <>
      <p className="why">
        {textOf(ticket) ?? 'The volume to fill is not known yet.'} {insideWords(filledNow(ticket).answer)}{' '}
        {isCavity && casting !== undefined && <SourceTag from={casting.shrink.from} />}
        {known !== undefined && known.by !== 'scan' && <WayTag {...known} />}
      </p>
      {/* What water fills has shrunk already: there is nothing to switch. */}
      {known?.by !== 'fill' && (
        <>
          <PourBySwitch ticket={ticket} dispatch={dispatch} name="pour-by-batch" />
          {ticket.molding.pourBy === undefined && (
            <button
              type="button"
              className="act"
              onClick={() => dispatch({ do: 'molding', molding: { pourBy } })}
            >
              Confirm the {isCavity ? 'cavity at casting temperature' : 'sculpt, as measured'}
            </button>
          )}
        </>
      )}
    </>
  );
}

function textOf(ticket: Ticket): string | undefined {
  const { coreVolume, armature } = ticket.fields;
  const isWhole = coreVolume.text.trim() === '' && armature.text.trim() === '';
  const lead = isWhole ? 'Filled are' : 'The mold holds';
  const known = volumeNow(ticket).answer;
  if (known?.by === 'fill') return fillText(lead, known, ticket);
  if (pourByOf(ticket) === 'cavity') {
    const casting = castingNow(ticket).answer;
    return (
      casting &&
      `${lead} ${rangeText(casting.cavityCm3).value} cm³, the cavity when the foam is poured, from Mold.`
    );
  }
  if (known === undefined) return undefined;
  const by = known.by === 'scan' ? 'as measured' : `by ${VOLUME_BY[known.by]}`;
  return `${lead} ${volumeText(known.by, known.volumeCm3).value} cm³, the sculpt ${by}; what a mold shrinks or grows is not in it.`;
}

function fillText(lead: string, { by, volumeCm3 }: KnownVolume, ticket: Ticket): string {
  const warm = warmedFill(volumeCm3, ticket);
  const text = `${lead} ${volumeText(by, warm).value} cm³, the mold by its water fill`;
  return warm === volumeCm3
    ? `${text}; what it grows when it is warmed is not in it.`
    : `${text}, grown from ${volumeText(by, volumeCm3).value} cm³ as it is warmed.`;
}
