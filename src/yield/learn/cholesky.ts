export type Matrix = readonly (readonly number[])[];

/** Solves P x = v for a symmetric positive definite P; undefined where P is not: nothing would tell the unknowns apart. */
export function solveSymmetric(p: Matrix, v: readonly number[]): number[] | undefined {
  const factor = choleskyOf(p);
  return factor === undefined ? undefined : backSolve(factor, v);
}

/** The inverse of a symmetric positive definite matrix, column by column. */
export function inverseSymmetric(p: Matrix): number[][] | undefined {
  const factor = choleskyOf(p);
  if (factor === undefined) return undefined;
  return p.map((_row, i) =>
    backSolve(
      factor,
      p.map((_other, j) => (i === j ? 1 : 0)),
    ),
  );
}

/** Lower triangle L with L L' = P. A pivot that is nothing beside its own row counts as zero. */
export function choleskyOf(p: Matrix): number[][] | undefined {
  const lower = p.map(() => p.map(() => 0));
  for (const [i, row] of p.entries()) {
    for (let j = 0; j <= i; j += 1) {
      const dot = lower[i]!.slice(0, j).reduce((sum, value, k) => sum + value * lower[j]![k]!, 0);
      const rest = row[j]! - dot;
      if (i > j) lower[i]![j] = rest / lower[j]![j]!;
      else if (rest > SINGULAR * row[i]!) lower[i]![i] = Math.sqrt(rest);
      else return undefined;
    }
  }
  return lower;
}

const SINGULAR = 1e-12;

function backSolve(lower: Matrix, v: readonly number[]): number[] {
  const x = [...v];
  for (let i = 0; i < x.length; i += 1) {
    for (let k = 0; k < i; k += 1) x[i]! -= lower[i]![k]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  for (let i = x.length - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < x.length; k += 1) x[i]! -= lower[k]![i]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  return x;
}
