import { saveFile } from '../shop/saveFile';
import { csvText } from './csvText';
import type { Sheet } from './sheet';

/** Spreadsheets read a file as UTF-8 by this mark at its start. */
const UTF8_MARK = '\ufeff';

/** Puts the sheet among the user's downloads. */
export const saveCsv = (name: string, sheet: Sheet): void =>
  saveFile(new Blob([UTF8_MARK, csvText(sheet)], { type: 'text/csv;charset=utf-8' }), name);
