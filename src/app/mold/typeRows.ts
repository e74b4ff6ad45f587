import type { Mold } from '../../plan';
import { needBeyondStock } from '../../yield';
import { amount } from '../../words/sentence';
import { readKitsText } from '../ticket/kits';
import { moldsAskOf, siliconeRatio } from '../ticket/moldWishes';
import type { Ticket } from '../ticket/state';
import { buyCell, costCell, lockedCell, shellCell, thicknessCell, totalKg } from '../words/moldFigures';
import type { LiveSilicone } from './liveSilicone';
import { needKg } from './liveWords';

/** A row of the table of types. */
export interface TypeRow {
  name: string;
  cell: (mold: Mold) => string;
  /** For the chosen type while it is worked out, from the measured rungs. */
  live?: (told: Told) => string;
}

type Told = Extract<LiveSilicone, { state: 'told' }>;

export function typeRows(ticket: Ticket): TypeRow[] {
  const stock = stockKg(ticket);
  return [
    {
      name: 'Silicone, kg',
      cell: (mold) => totalKg(mold).value,
      live: ({ need }) => `about ${needKg(need).value}`,
    },
    { name: 'Volume of rubber, L', cell: ({ siliconeCm3 }) => amount(siliconeCm3.value / 1000, 3) },
    { name: 'Wall or skin, mm', cell: thicknessCell, live: ({ mm }) => amount(mm, 3) },
    { name: 'Locked behind undercuts, cm³', cell: lockedCell },
    { name: 'Outer shell', cell: shellCell },
    {
      name: stock === undefined ? 'To buy' : `To buy beyond the ${stock} kg here`,
      cell: ({ silicone }) => buyCell(silicone),
      live: ({ need }) => `about ${buyCell(need)}`,
    },
    ...(hasPrices(ticket)
      ? [
          {
            name: 'Cost of what to buy',
            cell: ({ silicone }: Mold) => costCell(silicone),
            live: ({ need }: Told) => `about ${costCell(need)}`,
          },
        ]
      : []),
  ];
}

/** What the stock makes, in words; undefined where nobody told of any. */
function stockKg(ticket: Ticket): string | undefined {
  const { silicone } = moldsAskOf(ticket) ?? {};
  if (silicone?.stock === undefined) return undefined;
  const { base, catalyst } = siliconeRatio(ticket.fields);
  const beyond = needBeyondStock({
    mixedKg: 0,
    ratio: { base, catalyst, by: 'mass' },
    stock: silicone.stock,
  });
  return beyond.ok ? amount(beyond.value.usableKg, 3) : undefined;
}

/** All kits have a price: what to buy is then the cheapest, and has one too. */
function hasPrices({ molding }: Ticket): boolean {
  const read = readKitsText(molding.kits);
  return read.ok && read.kits.length > 0 && read.kits.every(({ price }) => price !== undefined);
}
