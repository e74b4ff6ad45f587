import type { ShopView } from '../../store';
import { counted } from '../../words/sentence';

/** "4 pieces with 13 castings, 3 cards, 3 lots of stock, the scale": what stands in a shop. */
export function shopContents({ core, pieces }: ShopView): string {
  const castings = pieces.reduce((sum, { castings: of }) => sum + Object.keys(of).length, 0);
  const scans = new Set(pieces.map(({ sculpt }) => sculpt.scan).filter((id) => id !== undefined)).size;
  const rows = Array.isArray(core.book) ? core.book.length : 0;
  const cards = core.foams.length + core.silicones.length;
  return listed([
    pieces.length > 0 && `${counted(pieces.length, 'piece')} with ${counted(castings, 'casting')}`,
    scans > 0 && counted(scans, 'scan'),
    cards > 0 && counted(cards, 'card'),
    rows > 0 && `${counted(rows, 'row')} of the Book`,
    core.stock.length > 0 && `${counted(core.stock.length, 'lot')} of stock`,
    (core.scale !== undefined || core.settings !== undefined) && 'the settings',
  ]);
}

function listed(parts: readonly (string | false)[]): string {
  const said = parts.filter((part) => part !== false);
  if (said.length === 0) return 'nothing';
  if (said.length === 1) return said[0]!;
  return `${said.slice(0, -1).join(', ')} and ${said.at(-1)!}`;
}
