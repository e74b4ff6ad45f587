import { useEffect } from 'react';
import { isNewName, nameOf } from '../shelf/pieceNames';
import { codeOf } from './newPiece';
import type { KeptTicket } from './useTicket';

/** A piece that nobody has named is called after its first scan's file. */
export function useNamedByScan({ piece, ticket, change }: KeptTicket): void {
  const source = ticket.scan?.source;
  const isUnnamed = piece !== undefined && isNewName(piece.name);
  useEffect(() => {
    if (source === undefined || source.isKept === true || !isUnnamed) return;
    const name = nameOf(source.name);
    change((now) =>
      isNewName(now.name)
        ? { ...now, name, ...(now.code === codeOf(now.name) ? { code: codeOf(name) } : {}) }
        : now,
    );
  }, [source, isUnnamed, change]);
}
