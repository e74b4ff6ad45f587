import { useId } from 'react';
import { UP_AXES, type UpAxis } from '../../geometry';
import type { Opened } from '../../worker/protocol';
import { UpLook } from './UpLook';
import { upWords } from './upWords';

/** The six axes, each with how the piece would stand and how tall it would be. The radio is called by its axis alone. */
export function UpChoices({
  opened: { boundsUnits, looks },
  value,
  assumed,
  onChoose,
}: {
  opened: Opened;
  value: UpAxis;
  assumed: boolean;
  onChoose: (up: UpAxis) => void;
}) {
  const id = useId();
  return (
    <fieldset className="choices ups">
      <legend>Axis of the file that is up as poured</legend>
      <div className="row">
        {UP_AXES.map((up) => (
          <label key={up}>
            <input
              type="radio"
              name="up"
              value={up}
              aria-label={up}
              aria-describedby={`${id}${up}`}
              checked={value === up}
              onChange={() => onChoose(up)}
            />
            <b className={assumed && value === up ? 'assumed' : undefined}>{up}</b>
            <UpLook look={looks[up]} />
            <span className="sides" id={`${id}${up}`}>
              {upWords(boundsUnits, up).map((words, n) => (
                <span key={words}>
                  {words}
                  {n < 2 ? ', ' : ''}
                </span>
              ))}
            </span>
          </label>
        ))}
      </div>
      <p className="note">
        Seen from the front, as it would stand. The figures are units of the file, of all that is in it.
      </p>
    </fieldset>
  );
}
