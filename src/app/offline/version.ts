/** A build of the page: the version of the program, and a name that differs between any two builds. */
export interface Version {
  version: string;
  build: string;
}

/** The one that runs. The dev server stamps none. */
export const runningVersion = (): Version => ({
  version: __APP_VERSION__,
  build: document.querySelector<HTMLMetaElement>('meta[name="build"]')?.content ?? 'dev',
});

export const versionText = ({ version, build }: Version): string => `${version}, build ${build}`;

/** The service worker of a build has its name, so that no browser puts a newer one in its place unasked. */
export const workerOf = ({ build }: Version): string => `./sw-${build}.js`;

/** What a host says it has; undefined for anything that is no such answer. */
export function readVersion(told: unknown): Version | undefined {
  if (typeof told !== 'object' || told === null) return undefined;
  const { version, build } = told as Partial<Record<keyof Version, unknown>>;
  if (typeof version !== 'string' || typeof build !== 'string') return undefined;
  return /^[0-9a-f]{8}$/.test(build) ? { version, build } : undefined;
}
