import type { Along } from '../../plan';

export const ALONG_NAMES: Record<Along, { label: string; word: string }> = {
  tall: { label: 'Taped height', word: 'height' },
  wide: { label: 'Taped width', word: 'width' },
  deep: { label: 'Taped depth', word: 'depth' },
};
