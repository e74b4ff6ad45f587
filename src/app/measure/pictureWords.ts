import { formatLength } from '../../units';
import { counted } from '../../words/sentence';
import { sizeNow } from '../ticket/now';
import type { Ticket } from '../ticket/state';

/** What the picture shows, for those who do not see it. */
export function pictureWords(ticket: Ticket): string {
  const { scan, up } = ticket;
  const name = scan?.source.name ?? 'The scan';
  const { state, answer } = sizeNow(ticket);
  const sized = answer?.size;
  if (state === 'working') return `${name} with ${up.axis} up; its size is being worked out.`;
  if (sized === undefined) return `${name} with ${up.axis} up; its size is not known yet.`;
  const [wide, deep, tall] = sized.extentsMm.map((mm) => formatLength(mm)) as [string, string, string];
  const open = sized.holes === 0 ? 'no hole' : counted(sized.holes, 'hole');
  const out = sized.shells.filter(({ isLeftOut }) => isLeftOut).length;
  const pieces = `${counted(sized.pieces, 'piece')}${out === 0 ? '' : `, ${out} of them left out`}`;
  return `${name} with ${up.axis} up: ${wide} wide, ${deep} deep, ${tall} tall; ${pieces}, ${open}.`;
}
