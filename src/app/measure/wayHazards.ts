import { typeOf } from '../ticket/moldState';
import { hasParameter, jacketOf } from '../ticket/moldWishes';
import type { Ticket } from '../ticket/state';

/** "plaster", where someone has said that the mold has such a jacket. */
export function plasterJacket({ molding }: Ticket): string | undefined {
  const isSaid = molding.jacket === 'plaster' || molding.jacket === 'bandage';
  if (!isSaid || molding.type === undefined || !hasParameter(typeOf(molding), 'jacketMm')) return undefined;
  return jacketOf(molding).title.toLowerCase();
}

/** "plaster", where the sculpt is said to be of what takes water up, and no barrier coat is said to be on it. */
export function soakingSurface({ molding: { facts } }: Ticket): string | undefined {
  const { sculptSurface, barrierCoat } = facts;
  const isSoaking = sculptSurface === 'plaster' || sculptSurface === 'wood';
  return isSoaking && barrierCoat !== 'yes' ? sculptSurface : undefined;
}
