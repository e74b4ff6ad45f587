import type { Look } from '../../geometry';

/** How the piece would stand, from its front: covered cells as they were found. */
export function UpLook({ look: { columns, rows, runs } }: { look: Look }) {
  const size = Math.max(columns, rows);
  let path = '';
  for (let i = 0; i < runs.length; i += 3)
    path += `M${runs[i + 1]} ${runs[i]}H${runs[i + 2]}v1H${runs[i + 1]}z`;
  // It stands on the lower edge, in the middle.
  const box = `${(columns - size) / 2} ${rows - size} ${size} ${size + 1}`;
  return (
    <svg className="uplook" viewBox={box} aria-hidden="true" focusable="false">
      <path d={path} />
      <path className="ground" d={`M${(columns - size) / 2} ${rows + 0.5}h${size}`} />
    </svg>
  );
}
