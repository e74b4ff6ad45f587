import type { Along } from '../../plan';
import type { SecondBy } from '../ticket/measuringState';

/** "its width", "two points on the picture": what a second distance is. */
export const SECOND_NAMES: Record<SecondBy, string> = {
  tall: 'its height',
  wide: 'its width',
  deep: 'its depth',
  points: 'two points on the picture',
};

export const ALONG_NAMES: Record<Along, { label: string; word: string }> = {
  tall: { label: 'Taped height', word: 'height' },
  wide: { label: 'Taped width', word: 'width' },
  deep: { label: 'Taped depth', word: 'depth' },
};

/** With a cut on, the tape goes by what is kept: that is what lies on the bench. */
export const tapeLabel = (along: Along, isCut: boolean): string =>
  `${ALONG_NAMES[along].label}${isCut ? ' of what is kept' : ''}`;
