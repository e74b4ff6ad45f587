import { UndoBar } from './UndoBar';
import type { Undos } from './useUndos';

/** A bar for each delete that can be taken back, told once to those who do not see them. */
export function UndoBars({ undos, over }: Pick<Undos, 'undos' | 'over'>) {
  return (
    <>
      {undos.map((undo) => (
        <UndoBar key={undo.id} undo={undo} onOver={() => over(undo.id)} />
      ))}
      <p className="sr" role="status">
        {undos.map(({ words }) => `${words} It can be taken back for ten seconds.`).join(' ')}
      </p>
    </>
  );
}
