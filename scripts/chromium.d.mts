export function chromiumPath(
  env: Readonly<Record<string, string | undefined>>,
  exists: (path: string) => boolean,
): string | undefined;
