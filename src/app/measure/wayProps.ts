import type { Piece } from '../../job/piece';
import type { AskProps } from './askProps';

/** What the ways in are given: the ticket, and whose piece it is. */
export interface WayProps extends Omit<AskProps, 'mark'> {
  piece: Piece;
}
