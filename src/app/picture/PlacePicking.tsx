import { useMemo, useState, type ReactNode } from 'react';
import { PickerContext, type PlacePicker } from './placePicker';

interface PlacePickingProps {
  /** What the numbers are of: with another, what was picked is forgotten, since its number means another place. */
  of: unknown;
  children: ReactNode;
}

/** Lets the picture and the tables in it point at the same place. */
export function PlacePicking({ of, children }: PlacePickingProps) {
  const [said, setSaid] = useState<Pick<PlacePicker, 'picked' | 'asked'> & { of: unknown }>({
    of,
    picked: undefined,
    asked: undefined,
  });
  const [canShow, setCanShow] = useState(false);
  const { picked, asked } = said.of === of ? said : { picked: undefined, asked: undefined };
  const picker = useMemo<PlacePicker>(
    () => ({
      picked,
      asked,
      canShow,
      pick: (label) => setSaid({ of, picked: { label, by: 'picture' }, asked: undefined }),
      show: (label) =>
        setSaid((before) => ({
          of,
          picked: { label, by: 'row' },
          asked: { label, times: (before.asked?.times ?? 0) + 1 },
        })),
      tellDrawn: setCanShow,
    }),
    [of, picked, asked, canShow],
  );
  return <PickerContext value={picker}>{children}</PickerContext>;
}
