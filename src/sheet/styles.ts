import { MOLD_STYLE } from './moldSheetStyle';
import { PLACE_STYLE } from './placeCardStyle';
import { POUR_STYLE } from './style';

/** Every style that a sheet carries in itself: all that a page that opens one has to allow. */
export const SHEET_STYLES: readonly string[] = [POUR_STYLE, PLACE_STYLE, MOLD_STYLE];
