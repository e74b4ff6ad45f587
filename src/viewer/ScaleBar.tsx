import { formatLength, numberText } from '../units';
import { oneTwoFive } from './oneTwoFive';

const WIDEST_PX = 120;

/** A true 1-2-5 bar: in both systems once the scale is known, before that in units of the file. */
export function ScaleBar({
  pxPerUnit,
  mmPerUnit,
  isCurrent,
}: {
  pxPerUnit: number;
  mmPerUnit: number | undefined;
  isCurrent: boolean;
}) {
  const pxPerStep = pxPerUnit / (mmPerUnit ?? 1);
  const length = oneTwoFive(WIDEST_PX / pxPerStep);
  if (!isCurrent) return <p className="scalebar">Working out the scale …</p>;
  return (
    <p className="scalebar">
      <i style={{ width: `${length * pxPerStep}px` }} aria-hidden="true" />
      <span>
        <span className="sr">The bar in the picture is </span>
        {mmPerUnit === undefined ? `${numberText(length)} of the file's units` : formatLength(length)}
      </span>
    </p>
  );
}
