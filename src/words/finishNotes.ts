/** What the trade knows about painting flexible foam. Reminders, not figures: nothing of it is computed. */
export interface FinishNote {
  key: string;
  when: string;
  what: string;
  from: string;
}

const from = 'common practice, no source';

export const FINISH_NOTES: readonly FinishNote[] = [
  {
    key: 'rest',
    when: 'Before paint',
    what: 'Let the casting cool and cure as long as its data sheet says; fresh foam still moves and gives off gas under a coat.',
    from,
  },
  {
    key: 'wash',
    when: 'Before paint',
    what: 'What the release leaves behind keeps paint off. Wash the casting first, rinse, let it dry through, and do not touch it with bare hands after.',
    from,
  },
  {
    key: 'seal',
    when: 'Open cells',
    what: 'Where the skin is missing, open cells drink the paint and show as dull, rough spots. Fill them and seal them with a flexible coat first.',
    from,
  },
  {
    key: 'swatch',
    when: 'Color',
    what: 'A coat of acrylic dries slightly darker than it looks wet, most of all a tint with white in it. Mix it a little lighter, and judge by a dry swatch on a scrap of the same foam.',
    from,
  },
  {
    key: 'matte',
    when: 'Color',
    what: 'A matte top coat can lighten a dark color and a glossy one deepen it: the swatch gets its top coat too.',
    from,
  },
  {
    key: 'flexible-binder',
    when: 'Binder',
    what: 'A part that bends wants a binder that bends: thin flexible coats, not one thick one. Bend the dry swatch further than the part will bend.',
    from,
  },
  {
    key: 'tack',
    when: 'After paint',
    what: 'Flexible coats can stay tacky and stick to each other. Powder them or give them a dry top coat, and do not store painted faces against each other.',
    from,
  },
];
