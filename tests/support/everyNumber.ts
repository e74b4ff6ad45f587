/** Every number anywhere in plain data, with the path to it; typed arrays are looked through, too. */
export function* everyNumber(value: unknown, path = ''): Generator<readonly [path: string, value: number]> {
  if (typeof value === 'number') yield [path, value];
  else if (ArrayBuffer.isView(value)) yield* oddNumber(value as unknown as ArrayLike<number>, path);
  else if (value instanceof Map)
    for (const [key, one] of value) yield* everyNumber(one, `${path}.${String(key)}`);
  else if (typeof value === 'object' && value !== null)
    for (const [key, one] of Object.entries(value)) yield* everyNumber(one, `${path}.${key}`);
}

/** Of a long array only what is not finite, else its length. */
function* oddNumber(values: ArrayLike<number>, path: string): Generator<readonly [string, number]> {
  for (let i = 0; i < values.length; i++)
    if (!Number.isFinite(values[i])) yield [`${path}[${i}]`, values[i]!];
  yield [`${path}.length`, values.length];
}
