/** A link that holds only up to a lower height than its runs reach. */
export interface LowerLink {
  link: number;
  levelMm: number;
}

/** Links put back until their own height comes: a heap, highest first. */
export function lowerLinks(): {
  add: (link: LowerLink) => void;
  /** The highest, if it holds at that height or above. */
  takeAbove: (heightMm: number) => LowerLink | undefined;
} {
  const heap: LowerLink[] = [];
  const isHigher = (a: LowerLink, b: LowerLink): boolean =>
    a.levelMm > b.levelMm || (a.levelMm === b.levelMm && a.link < b.link);
  const swap = (i: number, j: number): void => {
    [heap[i], heap[j]] = [heap[j]!, heap[i]!];
  };
  return {
    add: (link) => {
      heap.push(link);
      for (let i = heap.length - 1; i > 0;) {
        const above = (i - 1) >> 1;
        if (!isHigher(heap[i]!, heap[above]!)) return;
        swap(i, above);
        i = above;
      }
    },
    takeAbove: (heightMm) => {
      const first = heap[0];
      if (first === undefined || first.levelMm < heightMm) return undefined;
      const last = heap.pop()!;
      if (heap.length === 0) return first;
      heap[0] = last;
      for (let i = 0; ;) {
        let best = i;
        for (const below of [2 * i + 1, 2 * i + 2])
          if (below < heap.length && isHigher(heap[below]!, heap[best]!)) best = below;
        if (best === i) return first;
        swap(i, best);
        i = best;
      }
    },
  };
}
