/** One layer of a wall: so thick, of this material, in so many slices. */
export interface Layer {
  mm: number;
  conductivityWMK: number;
  densityKgM3: number;
  heatCapacityJKgK: number;
  slices: number;
}

/**
 * A second opinion that shares nothing with the series: the wall cut into slices, each with one temperature, warmth passed
 * on from slice to slice in short steps of time (explicit finite differences). Air on the first face; the last face is
 * insulated or in the same air. `onStep` gets the minutes and the temperatures of slices and heated face until it returns
 * true. Off by the slice's share of the wall squared; the step is well under what keeps it stable.
 */
export function simulateWall(
  layers: readonly Layer[],
  {
    hWM2K,
    airTempC,
    startTempC,
    isBackInAir = false,
  }: { hWM2K: number; airTempC: number; startTempC: number; isBackInAir?: boolean },
  onStep: (minutes: number, slicesC: readonly number[], faceC: number) => boolean,
): void {
  const slices = layers.flatMap(({ slices: count, mm, ...rest }) =>
    Array.from({ length: count }, () => ({ ...rest, m: mm / 1000 / count })),
  );
  const last = slices.length - 1;
  const half = slices.map(({ m, conductivityWMK }) => m / 2 / conductivityWMK);
  const capacity = slices.map(({ m, densityKgM3, heatCapacityJKgK }) => m * densityKgM3 * heatCapacityJKgK);
  const toNext = half.slice(1).map((next, index) => 1 / (half[index]! + next));
  const fromAir = 1 / (1 / hWM2K + half[0]!);
  const behind = isBackInAir ? 1 / (1 / hWM2K + half[last]!) : 0;
  const stepS =
    0.4 *
    Math.min(...capacity.map((c, index) => c / ((toNext[index] ?? behind) + (toNext[index - 1] ?? fromAir))));
  const temps = slices.map(() => startTempC);
  for (let step = 1; step < 5_000_000; step += 1) {
    const flow = toNext.map((g, index) => g * (temps[index]! - temps[index + 1]!));
    const inflow = fromAir * (airTempC - temps[0]!);
    const fromBack = behind * (airTempC - temps[last]!);
    for (let index = 0; index <= last; index += 1) {
      const gain = (index === 0 ? inflow : flow[index - 1]!) - (index === last ? -fromBack : flow[index]!);
      temps[index]! += (gain * stepS) / capacity[index]!;
    }
    const faceC = airTempC - (fromAir * (airTempC - temps[0]!)) / hWM2K;
    if (onStep((step * stepS) / 60, temps, faceC)) return;
  }
  throw new Error('simulateWall: expected to be stopped');
}
