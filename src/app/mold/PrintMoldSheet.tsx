import type { Mold } from '../../plan';
import { moldSheet } from '../../sheet';
import { PrintButton } from '../parts/PrintButton';
import { sizeNow } from '../ticket/now';
import { lastCutNow } from '../ticket/shownNow';
import type { Ticket } from '../ticket/state';

/** The mold as it stands, cut open where the picture is cut open. Nothing of before is ever printed. */
export function PrintMoldSheet({ ticket, mold }: { ticket: Ticket; mold: Mold | undefined }) {
  return (
    <PrintButton html={mold === undefined ? undefined : () => sheetOf(ticket, mold)}>
      Print the mold sheet
    </PrintButton>
  );
}

function sheetOf(ticket: Ticket, mold: Mold): string {
  const { scan, molding, today } = ticket;
  const section = lastCutNow(ticket);
  return moldSheet(mold, {
    ...(scan === undefined ? {} : { title: scan.source.name }),
    ...(molding.siliconeName.trim() === '' ? {} : { silicone: molding.siliconeName.trim() }),
    ...(section === undefined ? {} : { section }),
    version: __APP_VERSION__,
    date: today,
    findings: sizeNow(ticket).answer?.size.findings ?? [],
  });
}
