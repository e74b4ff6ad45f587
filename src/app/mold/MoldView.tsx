import { useCallback, useEffect } from 'react';
import type { CutPlane } from '../../worker/protocol';
import type { AskProps } from '../measure/askProps';
import { MoldPicture } from '../picture/MoldPicture';
import { typeOf } from '../ticket/moldState';
import { openingNow, pictureNow, sizeNow } from '../ticket/now';
import { cutFacesNow, paintNow, shellsNow } from '../ticket/shownNow';
import { sayOnPage } from '../words/sayOnPage';

/** The mold cut open in true thickness, its numbered places, and where the foam is thin. What it shows is worked out while it is looked at. */
export function MoldView({ ticket, dispatch }: Omit<AskProps, 'mark'>) {
  useEffect(() => {
    dispatch({ do: 'look', how: { shells: true, thickness: true } });
    return () => dispatch({ do: 'look', how: { shells: false, thickness: false } });
  }, [dispatch]);
  const onCut = useCallback(
    (plane: CutPlane | undefined) => dispatch({ do: 'look', how: { plane } }),
    [dispatch],
  );
  const [picture, size, shells] = [pictureNow(ticket), sizeNow(ticket), shellsNow(ticket)];
  const scale = (ticket.size.answer ?? ticket.size.before)?.size.scale;
  return (
    <MoldPicture
      picture={
        picture.state === 'working' ? (ticket.picture.answer ?? ticket.picture.before) : picture.answer
      }
      mmPerUnit={scale?.mmPerUnit}
      isCurrent={picture.state === 'answered' && size.state === 'answered'}
      shells={shells.answer}
      cutFaces={cutFacesNow(ticket).answer}
      paint={paintNow(ticket).answer}
      plan={openingNow(ticket).answer}
      typeWords={typeOf(ticket.molding).title}
      onCut={onCut}
      note={noteOf(ticket)}
    />
  );
}

function noteOf(ticket: AskProps['ticket']): string | undefined {
  const [picture, shells] = [pictureNow(ticket), shellsNow(ticket)];
  if (picture.state === 'working') return 'The picture is being drawn.';
  const problem = picture.problem ?? shells.problem;
  if (problem !== undefined) return sayOnPage(problem).text;
  if (shells.state === 'working') return 'The mold around it is being drawn.';
  const isLost = picture.state === 'failed' || shells.state === 'failed';
  return isLost ? 'Not all of it could be drawn: a fault of ours. The numbers do not need it.' : undefined;
}
