import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));
const { version } = JSON.parse(readFileSync(new URL('package.json', import.meta.url), 'utf8')) as {
  version: string;
};

/** Without these two a page may not share memory between its threads; it then works with one. */
const headers = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
};

export default defineConfig({
  root: 'src/app',
  base: './',
  publicDir: false,
  plugins: [react()],
  define: { __APP_VERSION__: JSON.stringify(version) },
  worker: { format: 'es' },
  // The samples lie beside src/app, not in it.
  server: { host: '127.0.0.1', headers, fs: { allow: [here] } },
  preview: { host: '127.0.0.1', headers },
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    // Samples stay files of their own: inlined they would double in size.
    assetsInlineLimit: 0,
    // three, loaded only when there is a picture to draw.
    chunkSizeWarningLimit: 1100,
    // Two workers, one inside the other, take their time; that is no fault to be told.
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});
