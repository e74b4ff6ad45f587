import { formatLength } from '../../units';
import { counted } from '../../words/sentence';
import type { Ticket } from '../ticket/state';

/** What the picture shows, for those who do not see it. */
export function pictureWords({ scan, up, size }: Ticket): string {
  const name = scan?.source.name ?? 'The scan';
  const sized = size.answer?.size;
  if (sized === undefined) return `${name} with ${up.axis} up; its size is not known yet.`;
  const [wide, deep, tall] = sized.extentsMm.map((mm) => formatLength(mm)) as [string, string, string];
  const open = sized.holes === 0 ? 'no hole' : counted(sized.holes, 'hole');
  return `${name} with ${up.axis} up: ${wide} wide, ${deep} deep, ${tall} tall; ${counted(sized.pieces, 'piece')}, ${open}.`;
}
