import type { Undos } from '../shelf/useUndos';
import type { Nav } from '../useRoute';
import type { OpenBook } from './useBook';

/** What every question of the Book is given. */
export interface BookProps {
  /** Its number on the page. */
  no: number;
  book: OpenBook;
  nav: Nav;
  undos: Undos;
}
