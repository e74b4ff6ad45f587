import type { Assumption } from '../../estimate';
import type { Bounds, Vector } from '../../geometry';
import type { Problem } from '../../problem';
import type { PlaceCard } from '../placeCard';
import type { Demold } from './demold';
import type { LevelFill } from './filling';
import type { OpeningSize } from './openingSize';
import type { MarkedPlace } from './places';
import type { OpeningPlace } from './placeOpening';
import type { ThicknessFound } from './thin';
import type { VentFlow } from './ventFlow';

/** Will it fill, skin over and come out? All places in mm on the placed piece, its base on the board. */
export interface OpeningPlan {
  opening: OpeningPlace & OpeningSize;
  ventMm: number;
  /** Only where it is known how long the foam rises: what the air asks of the vents, and what foam they let out. */
  ventFlow?: VentFlow;
  /** As it is poured. */
  filling: LevelFill;
  /** Other ways up, best first; only where they were asked for. */
  best?: LevelFill[];
  /** Where silicone poured over the standing sculpt shuts in air: brush a detail coat there first. Absent for a sculpt that hangs free. */
  underSilicone?: Pick<LevelFill, 'traps' | 'pinholes' | 'trappedCm3'>;
  casting?: ThicknessFound;
  /** Rubber in the gaps between parts of the sculpt. */
  rubber?: ThicknessFound;
  demold?: Demold;
  /** Everything of the above that has a place, numbered. */
  places: MarkedPlace[];
  card: { boundsMm: Bounds; views: PlaceCard['views']; upWhenPoured: Vector };
  columnStepMm: number;
  assumptions: Assumption[];
  findings: Problem[];
  /** One finding a check, fine ones and unanswered ones too. */
  checks: Problem[];
}
