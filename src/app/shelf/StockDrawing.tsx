import type { CardLeft } from './stockOf';

const TALL = 22;
const GAP = 8;
const ROW = TALL + 8;

/** Kits as boxes, a row a part, all to one scale; black is what is left. The words beside it say the same. */
export function StockDrawing({ parts, pxPerKg }: { parts: CardLeft['parts']; pxPerKg: number }) {
  const wide = Math.max(...parts.map(({ boxes }) => widthOf(boxes, pxPerKg)), 1);
  const tall = ROW * parts.length;
  return (
    <svg
      className="kits"
      viewBox={`-1 -1 ${wide + 2} ${tall}`}
      width={wide + 2}
      height={tall}
      aria-hidden="true"
      focusable="false"
    >
      {parts.map(({ part, boxes }, row) => {
        let x = 0;
        return boxes.map(({ holdsKg, leftKg }, i) => {
          const at = x;
          x += holdsKg * pxPerKg + GAP;
          return (
            <g key={`${part} ${i}`}>
              <rect className="kit" x={at} y={row * ROW} width={holdsKg * pxPerKg} height={TALL} />
              <rect className="left" x={at} y={row * ROW} width={leftKg * pxPerKg} height={TALL} />
            </g>
          );
        });
      })}
    </svg>
  );
}

const widthOf = (boxes: CardLeft['parts'][number]['boxes'], pxPerKg: number): number =>
  boxes.reduce((sum, { holdsKg }) => sum + holdsKg * pxPerKg + GAP, -GAP);

/** One scale for all, so that the longest row fits. As in print: 22 px a kilogram where there is room. */
export function pxPerKgOf(cards: readonly CardLeft[]): number {
  const longest = Math.max(
    ...cards.flatMap(({ parts }) =>
      parts.map(({ boxes }) => boxes.reduce((sum, { holdsKg }) => sum + holdsKg, 0)),
    ),
    0,
  );
  return longest === 0 ? LARGEST_PX : Math.min(LARGEST_PX, WIDEST_PX / longest);
}

const LARGEST_PX = 22;
const WIDEST_PX = 220;
