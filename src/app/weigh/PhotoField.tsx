import { useState } from 'react';
import { FileButton } from '../parts/FileButton';
import { MarkShape } from '../parts/StatusMark';
import { UndoBar } from '../shelf/UndoBar';
import { useUndos } from '../shelf/useUndos';
import { StoreProblem } from '../shop/StoreProblem';
import { useShop } from '../shop/shopContext';
import { useTrying } from '../shop/useTrying';
import { PourPhoto } from './PourPhoto';
import { scaledPhoto, type ScaledPhoto } from './scaledPhoto';

interface PhotoFieldProps {
  photo: string | undefined;
  /** TROLL-13. */
  code: string;
  onPhoto: (id: string | undefined) => void;
}

/** One photo of the casting: taken or chosen, made small here, and kept in the shop. */
export function PhotoField({ photo, code, onPhoto }: PhotoFieldProps) {
  const { store } = useShop();
  const { attempt, isBusy, problem } = useTrying();
  const [unopened, setUnopened] = useState<string>();
  const { undos, add, over } = useUndos();
  const take = (file: File): void => {
    setUnopened(undefined);
    attempt(async () => {
      const scaled = await opened(file);
      if (scaled === undefined) setUnopened(file.name);
      else onPhoto(await store.keepPhoto(scaled));
    });
  };
  return (
    <section className="photo" aria-label="Photo">
      <h2>A photo of the casting</h2>
      {photo !== undefined && <PourPhoto id={photo} alt={`Photo of ${code}`} />}
      <div className="chg">
        <FileButton
          label={photo === undefined ? 'Add a photo' : 'Take another photo'}
          accept="image/*"
          onFile={take}
        />
        {photo !== undefined && (
          <button
            type="button"
            className="act"
            onClick={(event) => {
              onPhoto(undefined);
              add(event, 'The photo is taken off.', () => {
                onPhoto(photo);
                return Promise.resolve();
              });
            }}
          >
            Take the photo off
          </button>
        )}
      </div>
      <div className="note" role="status">
        {isBusy && 'The photo is being made smaller …'}
        {unopened !== undefined && (
          <p className="err">
            <MarkShape mark="look" />
            <span>
              {unopened} cannot be opened as a picture here. Choose a JPEG, PNG or WebP, or take the photo
              with this device.
            </span>
          </p>
        )}
      </div>
      <p className="note quiet">
        Kept on this device at up to 1280 pixels, without place and time, and part of the backup.
      </p>
      <StoreProblem problem={problem} />
      {undos.map((undo) => (
        <UndoBar key={undo.id} undo={undo} onOver={() => over(undo.id)} />
      ))}
    </section>
  );
}

/** Undefined where the browser cannot open it. */
const opened = (file: File): Promise<ScaledPhoto | undefined> => scaledPhoto(file).catch(() => undefined);
