import type { Outline } from '../../job/seen';

/** Around the drawing, so that the ink of its edge is not cut. */
const MARGIN = 12;

/** The piece in ink; an empty frame while none was drawn. */
export function OutlineDrawing({ outline, name }: { outline: Outline | undefined; name: string }) {
  if (outline === undefined) return <span className="blank note quiet">no outline</span>;
  const { view, wide, tall, lines } = outline;
  return (
    <svg
      role="img"
      aria-label={`Outline of ${name}, ${view === 'front' ? 'from the front' : 'from above'}`}
      viewBox={`${-MARGIN} ${-MARGIN} ${wide + 2 * MARGIN} ${tall + 2 * MARGIN}`}
      preserveAspectRatio="xMidYMid meet"
    >
      <path d={lines.map(pathOf).join('')} fillRule="evenodd" />
    </svg>
  );
}

function pathOf(line: readonly number[]): string {
  const points: string[] = [];
  for (let i = 0; i < line.length; i += 2) points.push(`${line[i]} ${line[i + 1]}`);
  return `M${points.join('L')}Z`;
}
