import type { Rule } from '../rules';
import { MOLDMAKING_RULES as R } from './rules';

/** What box walls are made of, and how stiff it is (modulus in bending, with its range). */
export interface WallMaterial {
  key: string;
  title: string;
  stiffness: Rule & { low: number; high: number };
}

export const WALL_MATERIALS: readonly WallMaterial[] = [
  { key: 'acrylic', title: 'Acrylic sheet', stiffness: R.acrylic },
  { key: 'plywood', title: 'Plywood', stiffness: R.plywood },
  { key: 'mdf', title: 'MDF', stiffness: R.mdf },
  { key: 'chipboard', title: 'Coated chipboard', stiffness: R.chipboard },
  { key: 'foam-board', title: 'Foam board', stiffness: R.foamBoard },
];
