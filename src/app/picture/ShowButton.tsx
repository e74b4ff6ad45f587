/** Brings the place of a row into view on the picture. */
export function ShowButton({ onShow, which }: { onShow: () => void; which: string }) {
  return (
    <button type="button" className="act" onClick={onShow}>
      Show<span className="sr"> ({which})</span>
    </button>
  );
}
