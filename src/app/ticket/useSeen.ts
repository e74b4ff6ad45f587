import { useEffect, useRef, useState } from 'react';
import { isSame } from '../../job/json';
import type { Outline } from '../../job/seen';
import type { Picture } from '../../worker/protocol';
import { outlineAside } from '../shelf/outlineAside';
import { pictureNow, pourNow, sizeNow } from './now';
import { seenNow, withSeen, type SeenNow } from './seenNow';
import type { KeptTicket } from './useTicket';

/** Keeps with the piece what the engine says of it as it stands, so that the Shelf can show it. */
export function useSeen({ piece, ticket, change }: Pick<KeptTicket, 'piece' | 'ticket' | 'change'>): void {
  const outline = useOutline(pictureNow(ticket).answer);
  const size = sizeNow(ticket).answer;
  const pour = pourNow(ticket).answer;
  const latest = useRef(ticket);
  /** Told once: a tab of another version that tells otherwise is not argued with. */
  const told = useRef<SeenNow>({});
  useEffect(() => {
    latest.current = ticket;
  });
  useEffect(() => {
    if (piece === undefined || (size === undefined && pour === undefined && outline === undefined)) return;
    const now = seenNow(latest.current, { piece, outline, version: __APP_VERSION__ });
    if (isSame(now, told.current)) return;
    told.current = now;
    if (!isSame(withSeen(piece, now), piece)) change((kept) => withSeen(kept, now));
  }, [piece, size, pour, outline, change]);
}

/** Of this picture; undefined until it is drawn. */
function useOutline(picture: Picture | undefined): Outline | undefined {
  const [drawn, setDrawn] = useState<{ of: Picture; outline: Outline | undefined }>();
  useEffect(() => {
    if (picture === undefined) return;
    let isOver = false;
    void outlineAside(picture).then((outline) => {
      if (!isOver) setDrawn({ of: picture, outline });
    });
    return () => {
      isOver = true;
    };
  }, [picture]);
  return picture !== undefined && drawn?.of === picture ? drawn.outline : undefined;
}
