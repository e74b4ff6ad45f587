/** A forest over numbered things that grow together: every one points to another of its part, the one that stands for the part to itself. */
export function eachAlone(count: number): Int32Array {
  const parent = new Int32Array(count);
  for (let one = 0; one < count; one++) parent[one] = one;
  return parent;
}

/** The one that stands for the part. Path halving. */
export function partOf(parent: Int32Array, one: number): number {
  while (parent[one] !== one) one = parent[one] = parent[parent[one]!]!;
  return one;
}
