import { QuantityField } from '../parts/QuantityField';
import { filledNow } from '../ticket/now';
import { insideWords } from '../words/insideWords';
import { CoreScan } from './CoreScan';
import type { MoldProps } from './moldProps';

type Props = Pick<MoldProps, 'ticket' | 'dispatch' | 'problemOf' | 'bench'>;

/** What stands in the cavity when the foam is poured: room for less foam, and no silicone of this mold. */
export function CoreFields({ ticket, dispatch, problemOf, bench }: Props) {
  const field = { ticket, dispatch };
  const left = insideWords(filledNow(ticket).answer);
  return (
    <>
      <h3>Does something stand in it?</h3>
      <p className="why">
        A core keeps a casting hollow, an armature stays in it. Both take up room for foam; neither takes
        silicone of this mold. A core that is molded too is a piece of its own.
      </p>
      <div className="fields">
        <QuantityField
          name="coreVolume"
          label="Core in the cavity, its volume"
          {...field}
          problem={problemOf('coreVolume')}
        />
        <QuantityField
          name="coreMass"
          label="Core with its armature, weighed"
          {...field}
          problem={problemOf('coreMass')}
        />
        <QuantityField
          name="armature"
          label="Armature, its volume"
          {...field}
          problem={problemOf('armature')}
        />
      </div>
      <CoreScan ticket={ticket} dispatch={dispatch} bench={bench} />
      {left !== '' && <p className="why">{left}</p>}
    </>
  );
}
