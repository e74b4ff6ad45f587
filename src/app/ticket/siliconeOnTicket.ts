import type { Outcome } from '../../problem';
import { readSiliconeCard, type SiliconeCard } from '../../yield';
import type { OwnField } from './fields';
import { isCloseTo } from './isCloseTo';
import { readKitsText } from './kits';
import { withSilicone } from './moldState';
import { isUnreadField } from './moldWishes';
import { valueIn } from './readField';
import type { Ticket } from './state';

/** The boxes of a silicone card. */
const BOXES = [
  'siliconeDensity',
  'siliconeBase',
  'siliconeCatalyst',
  'potLife',
  'potLifeAt',
  'viscosity',
  'sheetShrink',
] as const satisfies readonly OwnField[];

/** The card that stands on the ticket; undefined while a figure that every card has is blank, or a box cannot be read. */
export function siliconeOnTicket({ fields, molding }: Ticket): Outcome<SiliconeCard> | undefined {
  const value = (name: OwnField): number | undefined => valueIn(fields, name);
  const kits = readKitsText(molding.kits);
  const [densityKgM3, base, catalyst, potLifeMin] = [
    value('siliconeDensity'),
    value('siliconeBase'),
    value('siliconeCatalyst'),
    value('potLife'),
  ];
  const isWhole = [densityKgM3, base, catalyst, potLifeMin].every((one) => one !== undefined);
  if (!isWhole || !kits.ok || BOXES.some((name) => isUnreadField(fields, name))) return undefined;
  const cure = molding.facts.siliconeCure ?? '';
  const told = {
    potLifeAtC: value('potLifeAt'),
    mixedViscosityPaS: value('viscosity'),
    linearShrinkShare: value('sheetShrink'),
    cure: cure === '' ? undefined : cure,
  };
  return readSiliconeCard({
    name: molding.siliconeName.trim(),
    densityKgM3,
    ratio: { base, catalyst, by: 'mass' },
    potLifeMin,
    ...Object.fromEntries(Object.entries(told).filter(([, one]) => one !== undefined)),
    kits: kits.kits,
  });
}

/** What stands on the ticket, on the card of before: what the page cannot say of a card stays, what was cleared goes. */
export const onSiliconeCard = (kept: SiliconeCard, said: SiliconeCard): SiliconeCard => ({
  ...(Object.fromEntries(
    Object.entries(kept).filter(([key]) => !ON_TICKET.includes(key)),
  ) as Partial<SiliconeCard>),
  ...said,
});

const ON_TICKET: readonly string[] = [
  'cure',
  'potLifeAtC',
  'mixedViscosityPaS',
  'linearShrinkShare',
] satisfies (keyof SiliconeCard)[];

/** Whether the ticket says of the silicone what the card says, whatever unit it is typed in. */
export function isAsOnSiliconeCard({ fields, molding }: Ticket, card: SiliconeCard): boolean {
  const used = withSilicone(molding, fields, card);
  return (
    molding.siliconeName.trim() === used.molding.siliconeName.trim() &&
    (molding.facts.siliconeCure ?? '') === used.molding.facts.siliconeCure &&
    JSON.stringify(readKitsText(molding.kits)) === JSON.stringify(readKitsText(used.molding.kits)) &&
    BOXES.every((name) => isCloseTo(valueIn(fields, name), valueIn(used.fields, name)))
  );
}
