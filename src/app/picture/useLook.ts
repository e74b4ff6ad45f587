import { useState } from 'react';
import type { OpeningPlan } from '../../plan';
import type { Look } from './LookChoice';
import type { PlacePicker } from './placePicker';

interface LookWish {
  hasMold: boolean;
  hasPaint: boolean;
  asked: PlacePicker['asked'];
  plan: OpeningPlan | undefined;
}

/** The mold where there is one, until something else is chosen. A row that wants its place seen takes the mold off, and paints for a thin place. */
export function useLook({ hasMold, hasPaint, asked, plan }: LookWish): {
  look: Look;
  looks: readonly Look[];
  setLook: (look: Look) => void;
} {
  const [chosen, setChosen] = useState<Look | undefined>(undefined);
  const [shownFor, setShownFor] = useState<PlacePicker['asked']>(undefined);
  const looks: Look[] = [
    ...(hasMold ? (['mold'] as const) : []),
    'contours',
    ...(hasPaint ? (['thickness'] as const) : []),
  ];
  const look = chosen !== undefined && looks.includes(chosen) ? chosen : hasMold ? 'mold' : 'contours';
  if (asked !== undefined && asked !== shownFor) {
    setShownFor(asked);
    const kind = plan?.places.find(({ n }) => String(n) === asked.label)?.kind;
    if (kind === 'thin foam' && hasPaint) setChosen('thickness');
    else if (look === 'mold') setChosen('contours');
  }
  return { look, looks, setLook: setChosen };
}
