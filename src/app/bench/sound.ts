import type { Cue } from './cues';

/** Short beeps: how many, and how high in Hz. Chosen here. */
const BEEPS: Readonly<Record<Cue, { count: number; hz: number }>> = {
  'pour soon': { count: 1, hz: 880 },
  'pour by': { count: 3, hz: 1175 },
  rise: { count: 1, hz: 660 },
  open: { count: 2, hz: 880 },
};
const BEEP_S = 0.18;
const GAP_S = 0.14;
const LOUD = 0.35;
const SHAKE_MS = 250;

let audio: AudioContext | undefined;

/** Browsers let a page sound only once it was touched: to be called with a press. */
export function unlockSound(): void {
  try {
    audio ??= new AudioContext();
    void audio.resume().catch(() => undefined);
  } catch {
    // No sound here: the words are there.
  }
}

/** After a reload nobody has touched the page yet. */
export const isSoundReady = (): boolean => audio?.state === 'running';

export function sound(cue: Cue): void {
  if (audio === undefined) return;
  const { count, hz } = BEEPS[cue];
  for (let n = 0; n < count; n += 1) {
    const at = audio.currentTime + n * (BEEP_S + GAP_S);
    const tone = audio.createOscillator();
    const loud = audio.createGain();
    tone.frequency.value = hz;
    // Without an edge that clicks.
    loud.gain.setValueAtTime(0, at);
    loud.gain.linearRampToValueAtTime(LOUD, at + 0.02);
    loud.gain.setValueAtTime(LOUD, at + BEEP_S - 0.03);
    loud.gain.linearRampToValueAtTime(0, at + BEEP_S);
    tone.connect(loud).connect(audio.destination);
    tone.start(at);
    tone.stop(at + BEEP_S);
  }
}

/** Where the device can; without a word where it can not. */
export function shake(cue: Cue): void {
  const { count } = BEEPS[cue];
  (navigator as { vibrate?: (ms: number[]) => boolean }).vibrate?.(
    Array.from({ length: 2 * count - 1 }, () => SHAKE_MS),
  );
}
