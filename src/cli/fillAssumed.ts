import type { BatchAssumption, Rule } from '../yield';

/** A rule as it stands under the assumptions of an answer. */
export const assumedOf = (name: string, { value, unit, from }: Rule): BatchAssumption => ({
  name,
  value,
  unit,
  from: 'assumed',
  basis: from,
});
