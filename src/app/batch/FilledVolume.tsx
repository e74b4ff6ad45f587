import type { AskProps } from '../measure/askProps';
import { PourBySwitch } from '../parts/PourBySwitch';
import { SourceTag } from '../parts/SourceTag';
import { pourByOf } from '../ticket/moldWishes';
import { castingNow, sizeNow } from '../ticket/now';
import { rangeText } from '../words/rangeText';

/** Which volume the grams are for, with its tag, and the switch to the other. */
export function FilledVolume({ ticket, dispatch }: Omit<AskProps, 'mark'>) {
  const sculpt = sizeNow(ticket).answer?.size.volumeCm3;
  const casting = castingNow(ticket).answer;
  const isCavity = pourByOf(ticket) === 'cavity';
  if (ticket.scan === undefined) return null;
  const text = isCavity
    ? casting &&
      `Filled are ${rangeText(casting.cavityCm3).value} cm³, the cavity when the foam is poured, from Mold.`
    : sculpt &&
      `Filled are ${rangeText(sculpt).value} cm³, the sculpt as measured; what a mold shrinks or grows is not in it.`;
  return (
    <>
      <p className="why">
        {text ?? 'The volume to fill is not known yet.'}{' '}
        {isCavity && casting !== undefined && <SourceTag from={casting.shrink.from} />}
      </p>
      <PourBySwitch ticket={ticket} dispatch={dispatch} name="pour-by-batch" />
    </>
  );
}
