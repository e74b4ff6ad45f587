import { test as base } from './ticket';
import { staticHost, type StaticHost } from '../support/staticHost';

export const BUILT = 'dist/app';

/** As a workshop would put it: a folder below others on a host that sends no headers of its own. */
export const SUB_FOLDER = '/shop/tool/';

/** The built page in a sub-folder of a host of the test's own. A request to anywhere else, the rest of that host too, fails the test. */
export const test = base.extend<{ host: StaticHost }>({
  // eslint-disable-next-line no-empty-pattern
  host: async ({}, use) => {
    const host = await staticHost(BUILT, { at: SUB_FOLDER });
    await use(host);
    await host.close();
  },
  baseURL: async ({ host }, use) => use(host.url),
});
