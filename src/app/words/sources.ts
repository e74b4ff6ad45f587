import type { Source } from '../../estimate';

/** How a number is known, and the edge of its tag: measured here, read off paper, or nobody has said so. */
export const SOURCES: Record<Source, { word: string; edge: 'measured' | 'paper' | 'assumed' }> = {
  given: { word: 'given', edge: 'measured' },
  file: { word: 'file', edge: 'paper' },
  taped: { word: 'taped', edge: 'measured' },
  weighed: { word: 'weighed', edge: 'measured' },
  scanned: { word: 'scanned', edge: 'measured' },
  'water-fill': { word: 'water fill', edge: 'measured' },
  'data-sheet': { word: 'data sheet', edge: 'paper' },
  'cup-test': { word: 'cup test', edge: 'measured' },
  assumed: { word: 'assumed', edge: 'assumed' },
  learned: { word: 'learned', edge: 'measured' },
  chosen: { word: 'chosen', edge: 'measured' },
};
