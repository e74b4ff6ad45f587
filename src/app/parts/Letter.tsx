/** A or B in a box: told apart by letter and place, never by hue. */
export function Letter({ of, small = true }: { of: 'A' | 'B'; small?: boolean }) {
  return <span className={small ? 'ltr sm' : 'ltr'}>{of}</span>;
}
