import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { buildStamp } from './scripts/app/buildStamp.ts';
import { contentPolicy, readPolicy } from './scripts/app/contentPolicy.ts';
import { hostHeaders } from './scripts/app/hostHeaders.ts';
import { offlineCopy } from './scripts/app/offlineCopy.ts';
import { thirdParty } from './scripts/app/thirdParty.ts';

const here = fileURLToPath(new URL('.', import.meta.url));
const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8')) as {
  version: string;
};

const stamp = buildStamp(version);
const policy = await readPolicy(here);
const notices = thirdParty(here);

export default defineConfig({
  root: 'src/app',
  base: './',
  publicDir: 'public',
  plugins: [
    react(),
    contentPolicy(policy),
    hostHeaders(policy),
    notices.page,
    stamp.plugin,
    offlineCopy(stamp.serviceWorkerFile),
  ],
  define: { __APP_VERSION__: JSON.stringify(version) },
  worker: {
    format: 'es',
    plugins: () => [notices.worker()],
    // Two workers, one inside the other, take their time; that is no fault to be told.
    rolldownOptions: { checks: { bundlerTimings: false } },
  },
  // The samples lie beside src/app, not in it.
  server: { host: '127.0.0.1', fs: { allow: [here] } },
  preview: {
    host: '127.0.0.1',
    // A phone may ask for this machine by its name; by its number it may always.
    allowedHosts: [hostname().toLowerCase(), `${hostname().toLowerCase()}.local`],
  },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    // Samples stay files of their own: inlined they would double in size.
    assetsInlineLimit: 0,
    // three, loaded only when there is a picture to draw.
    chunkSizeWarningLimit: 1100,
    rolldownOptions: { checks: { bundlerTimings: false } },
  },
});
