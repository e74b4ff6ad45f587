import type { Along } from '../../plan';

export const ALONG_NAMES: Record<Along, { label: string; word: string }> = {
  tall: { label: 'Taped height', word: 'height' },
  wide: { label: 'Taped width', word: 'width' },
  deep: { label: 'Taped depth', word: 'depth' },
};

/** With a cut on, the tape goes by what is kept: that is what lies on the bench. */
export const tapeLabel = (along: Along, isCut: boolean): string =>
  `${ALONG_NAMES[along].label}${isCut ? ' of what is kept' : ''}`;
