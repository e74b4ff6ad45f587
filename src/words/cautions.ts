/** The usual cautions, by when they apply. They point to the data sheet; they do not replace it. */
export interface Caution {
  when: string;
  what: string;
}

/** Common practice and published hazard summaries (NIOSH on MDI; ideal-gas pressure of a closed mold). */
export const POUR_CAUTIONS: readonly Caution[] = [
  { when: 'First', what: 'The data sheets, local codes and licensed practice come before anything here.' },
  {
    when: 'Part A',
    what: 'Isocyanates can make a person allergic for good, without a smell to warn of it. Outdoors or with exhaust air, gloves, goggles, and the breathing protection the data sheet names. Who is sensitized stays away.',
  },
  {
    when: 'Mixing',
    what: 'A drill mixer splashes and catches sleeves. Damp parts or a damp mold make more gas.',
  },
  {
    when: 'Mold',
    what: 'Foam that cannot vent builds pressure. Leave vents open, check straps, stand clear of the parting line, and wait before you open it.',
  },
  {
    when: 'Heat',
    what: 'Warm the mold gently; no heat gun near parts or vapors. The core of the foam gets hot by itself.',
  },
  {
    when: 'Leftover',
    what: 'Leftover mix in the cup gets hottest and can smoke or burn. Spread it thin, outdoors, and throw it away only cold.',
  },
  { when: 'Use', what: 'Not for skin contact, faces, food, toys or medical use.' },
];
