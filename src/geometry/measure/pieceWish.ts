/** What is decided of the pieces of a scan, against the rule of `assignRoles`. Nothing of it is ever taken for granted. */
export interface PieceWish {
  /** Pieces that are left out, each named by a vertex of the mesh that is measured. A vertex that no piece has decides nothing. */
  leaveOut?: readonly number[];
  /** Specks count like any other piece. */
  countSpecks?: boolean;
  /** Inner surfaces are left out, so that the piece is as if it were full. */
  fillHollows?: boolean;
  /** Solids that lie whole inside a solid are taken off as hollows. */
  hollowInner?: boolean;
}
