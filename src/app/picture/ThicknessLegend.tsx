import type { StepBorders } from '../../viewer/paintMaterial';
import { thicknessSteps } from './thicknessSteps';

interface ThicknessLegendProps {
  borders: StepBorders;
  cappedMm: number;
  mostMm: number;
  hasUnknown: boolean;
}

/** What the steps of the surface mean, in HTML: words keep their size. */
export function ThicknessLegend({ borders, hasUnknown, ...ends }: ThicknessLegendProps) {
  return (
    <div className="legend">
      <p className="note">Thickness of the foam, dark is thin:</p>
      <ul>
        {thicknessSteps(borders, ends).map((words, i) => (
          <li key={words}>
            <i className={`step${i + 1}`} aria-hidden="true" />
            {words}
          </li>
        ))}
        {hasUnknown && (
          <li>
            <i className="unknown" aria-hidden="true" />
            hatched: no figure, as no face lies across from it
          </li>
        )}
      </ul>
    </div>
  );
}
