import { moldType, type MoldKey } from '../../geometry';
import { thicknessOf } from '../../plan';
import type { LadderAsk } from '../../worker/protocol';
import { typeOf } from './moldState';
import { moldsAskOf } from './moldWishes';
import type { Ticket } from './state';

/** What the silicone is measured for at many thicknesses: everything said of the chosen type but its thickness. */
export function ladderAskOf(ticket: Ticket): LadderAsk | undefined {
  const asked = moldsAskOf(ticket);
  if (asked === undefined) return undefined;
  const chosen = typeOf(ticket.molding).key;
  const settings = Object.entries(asked.settings).map(([type, wish]) => {
    const thickness = thicknessOf(moldType(type as MoldKey))?.key;
    return [type, Object.fromEntries(Object.entries(wish).filter(([key]) => key !== thickness))];
  });
  // One type at a time: it takes seconds, and the others have no slider.
  const ofChosen = settings.filter(([type]) => type === chosen);
  return { settings: Object.fromEntries(ofChosen) as LadderAsk['settings'] };
}
