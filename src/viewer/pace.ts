/** Beats further apart than this keep no hand company: 30 a second. */
const LATE_MS = 34;

/** So many late beats in a drag tell that this machine is slow. Chosen here. */
const LATE_FRAMES = 3;

/** Draws coarsely while a hand turns the piece, where the machine does not keep up, and finely again when it rests. */
export interface Pace {
  dragging: (isDragging: boolean) => void;
  watch: (onChange: (isCoarse: boolean) => void) => () => void;
}

/** What one picture found out holds for the next one. */
let isSlow = false;

/** `known`: that the machine is slow is known before. */
export function openPace(known: boolean): Pace {
  isSlow ||= known;
  const watchers = new Set<(isCoarse: boolean) => void>();
  let [isDragging, isCoarse] = [false, false];
  let late = 0;
  let lastMs: number | undefined;
  const tell = (): void => {
    if ((isDragging && isSlow) === isCoarse) return;
    isCoarse = !isCoarse;
    watchers.forEach((onChange) => onChange(isCoarse));
  };
  // The page's own beat, which the graphics hold up.
  const beat = (nowMs: number): void => {
    if (!isDragging || isSlow) return;
    if (lastMs !== undefined && nowMs - lastMs > LATE_MS) late++;
    lastMs = nowMs;
    if (late >= LATE_FRAMES) isSlow = true;
    tell();
    requestAnimationFrame(beat);
  };
  return {
    dragging: (is) => {
      isDragging = is;
      [late, lastMs] = [0, undefined];
      tell();
      if (is && !isSlow) requestAnimationFrame(beat);
    },
    watch: (onChange) => {
      watchers.add(onChange);
      return () => watchers.delete(onChange);
    },
  };
}
