import { useEffect, useState } from 'react';
import type { Drawable } from '../../viewer/drawable';
import { levelEnds, type Level } from '../../viewer/levelEnds';

/** The levels as lines on the surface, one after another, so that the page answers in between. None of another surface or plan is ever given. */
export function useLevelEnds(
  picture: Drawable | undefined,
  levels: readonly Level[],
): Float32Array | undefined {
  const [found, setFound] = useState<{ of: readonly Level[]; on: Drawable; ends: Float32Array } | undefined>(
    undefined,
  );
  useEffect(() => {
    if (picture === undefined || levels.length === 0) return;
    const parts: Float32Array[] = [];
    let timer: ReturnType<typeof setTimeout> | undefined;
    const next = (): void => {
      const level = levels[parts.length];
      if (level === undefined) return setFound({ of: levels, on: picture, ends: joined(parts) });
      parts.push(levelEnds(picture, level));
      timer = setTimeout(next);
    };
    timer = setTimeout(next);
    return () => clearTimeout(timer);
  }, [picture, levels]);
  return found?.of === levels && found.on === picture ? found.ends : undefined;
}

function joined(parts: readonly Float32Array[]): Float32Array {
  const all = new Float32Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
