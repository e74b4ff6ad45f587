/** Stands where a figure will be: in words, since a figure of before would be taken for the one of now. */
export function Working({ what, tall = false }: { what: string; tall?: boolean }) {
  return <span className={tall ? 'fig s wait' : 'fig s'}>Working out {what} …</span>;
}
