// For scripts that look at the built page in a browser: serves dist/app on a free port and opens an installed Chromium.
import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { chromiumPath } from './chromium.mjs';
import { root } from './setup.mjs';

/** The folder of the built page; throws where nothing was built. */
export function builtApp(folder = `${root}/dist/app`) {
  if (!existsSync(`${folder}/index.html`))
    throw new Error(`There is no built page in ${folder} yet: npm run build makes it.`);
  return folder;
}

/** The Chromium to drive; throws where there is none. */
export function installedChromium() {
  const executablePath = chromiumPath(process.env, existsSync);
  if (executablePath === undefined) throw new Error('No chromium was found. Set CHROMIUM_PATH.');
  return executablePath;
}

/** Runs `work` with a browser of its own profile and the address of the built page, then closes both. */
export async function withBuiltPage(work) {
  builtApp();
  const executablePath = installedChromium();
  const server = await preview({
    configFile: `${root}/vite.config.ts`,
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: 4600, strictPort: false },
  });
  const browser = await chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--use-angle=swiftshader',
      '--enable-unsafe-swiftshader',
      '--disable-background-networking',
    ],
  });
  try {
    return await work({ browser, url: `http://127.0.0.1:${server.httpServer.address().port}/` });
  } finally {
    await browser.close();
    await server.close();
  }
}
