import { fillAgainst } from '../../yield';
import { StatusMark } from '../parts/StatusMark';
import { fillNow, sculptNow } from '../ticket/now';
import { againstWords, VOLUME_BY } from '../words/wayWords';
import type { AskProps } from './askProps';

/** A water fill beside what is known of the sculpt: how far apart, and the choice between them. */
export function FillBeside({ ticket, dispatch }: Pick<AskProps, 'ticket' | 'dispatch'>) {
  const fill = fillNow(ticket).answer;
  if (fill === undefined) return null;
  const sculpt = sculptNow(ticket).answer;
  const { isAside } = ticket.filling;
  const against = sculpt === undefined ? undefined : fillAgainst(sculpt.volumeCm3, fill.volumeCm3);
  const use = isAside ? 'the water fill' : sculpt === undefined ? undefined : VOLUME_BY[sculpt.by];
  return (
    <>
      {sculpt !== undefined && against !== undefined && (
        <div className="agree" role="status">
          <StatusMark mark={against.isFar ? 'look' : 'fine'} />
          <p>{againstWords(sculpt, fill.volumeCm3, against)}</p>
        </div>
      )}
      <div className="chg">
        {use !== undefined && (
          <button
            type="button"
            className="act"
            onClick={() => dispatch({ do: 'fillAside', isAside: !isAside })}
          >
            Use {use}
          </button>
        )}
      </div>
    </>
  );
}
