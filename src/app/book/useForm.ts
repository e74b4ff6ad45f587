import { useState } from 'react';
import type { FieldSpec } from '../ticket/fieldSpec';
import { readSpec, type BoxText, type FieldRead } from '../ticket/readSpec';

/** Boxes of a form that is written down as a whole: what stands in them is of the page, until then. */
export interface Form<Name extends string> {
  specs: Readonly<Record<Name, FieldSpec>>;
  box: (name: Name) => BoxText;
  type: (name: Name, box: BoxText) => void;
  read: (name: Name) => FieldRead;
  /** In the inside unit of its kind; undefined where it is blank or cannot be read. */
  value: (name: Name) => number | undefined;
  /** A box that says something nobody can read. */
  isUnread: boolean;
  clear: () => void;
}

export function useForm<Name extends string>(specs: Readonly<Record<Name, FieldSpec>>): Form<Name> {
  const [boxes, setBoxes] = useState<Partial<Record<Name, BoxText>>>({});
  const box = (name: Name): BoxText => boxes[name] ?? { text: '', unit: specs[name].units[0] ?? '' };
  const read = (name: Name): FieldRead => readSpec(specs[name], box(name));
  return {
    specs,
    box,
    type: (name, typed) => setBoxes((all) => ({ ...all, [name]: typed })),
    read,
    value(name) {
      const known = read(name);
      return known.kind === 'one' ? known.value : undefined;
    },
    isUnread: (Object.keys(specs) as Name[]).some((name) => ['ask', 'error'].includes(read(name).kind)),
    clear: () => setBoxes({}),
  };
}
