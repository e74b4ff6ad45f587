/** One uncertain input: what its standard uncertainty does to the result. */
export interface BudgetTerm<Input extends string = string> {
  input: Input;
  contributionG: number;
}

export interface BudgetRow<Input extends string = string> extends BudgetTerm<Input> {
  /** Part of the variance, 0..1; the rows add up to 1. */
  share: number;
}

export interface Budget<Input extends string = string> {
  combinedG: number;
  rows: BudgetRow<Input>[];
}

/**
 * First-order budget of independent inputs (JCGM 100:2008, 5.1.2): contributions |df/dx| u(x) add in quadrature. Rows
 * come back with the largest first. When nothing is uncertain every share is 0.
 */
export function combineBudget<Input extends string>(terms: readonly BudgetTerm<Input>[]): Budget<Input> {
  const combinedG = Math.hypot(...terms.map(({ contributionG }) => contributionG));
  const rows = terms.map((term) => ({
    ...term,
    share: combinedG > 0 ? (term.contributionG / combinedG) ** 2 : 0,
  }));
  return { combinedG, rows: rows.sort((one, other) => other.contributionG - one.contributionG) };
}
