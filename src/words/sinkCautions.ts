import type { Caution } from './cautions';

const COMMON = 'common practice, no source';

/** What to mind before a sculpt is sunk, in water or in rice. */
export function sinkCautions(medium: 'water' | 'rice'): (Caution & { key: string; from: string })[] {
  return medium === 'water' ? [...WATER, UNDER] : [RICE, UNDER];
}

const WATER = [
  {
    key: 'soaks',
    when: 'Soaks',
    what: 'A sculpt that takes water up is not put in water: bare plaster, wood, paper, water clay, anything not sealed all over. It drinks what should have risen, and swells, softens or cracks. Seal it first and let the seal dry, or sink it in rice.',
    from: COMMON,
  },
  {
    key: 'dry-sculpt',
    when: 'Dry',
    what: 'Dry the sculpt fully before silicone goes on: water in a seam keeps rubber from lying against it.',
    from: COMMON,
  },
] as const;

const RICE = {
  key: 'rice',
  when: 'Rice',
  what: 'Pour it, tap it and level it the same way both times, and brush the sculpt clean before silicone goes on: dust prints. Soft clay takes marks from grains: it is not sunk in them.',
  from: COMMON,
} as const;

const UNDER = {
  key: 'under',
  when: 'Under',
  what: 'All of the sculpt that the foam will be goes under, and nothing else: hold it down with a thin wire, and stop an open underside, or what runs into it is not counted.',
  from: COMMON,
} as const;
