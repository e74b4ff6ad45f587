import { dirname, join } from 'node:path';
import { VitePWA } from 'vite-plugin-pwa';

const PAPER = '#fbfaf7';

/**
 * The manifest, and the service worker that keeps a copy of the page: everything but the sample scans at once, those when they are used. It is
 * made after everything else is written, as its name is the build's.
 */
export const offlineCopy = (serviceWorkerFile: () => string) =>
  VitePWA({
    registerType: 'prompt',
    injectRegister: false,
    manifest: {
      name: 'Risewright',
      short_name: 'Risewright',
      description:
        'From a scan of a sculpt to the grams of A and B to weigh, before a bucket of flexible foam is opened.',
      lang: 'en',
      id: './',
      start_url: './',
      scope: './',
      display: 'standalone',
      theme_color: PAPER,
      background_color: PAPER,
      icons: [
        { src: './icons/icon.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: './icons/icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: './icons/icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: './icons/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
    includeManifestIcons: false,
    workbox: {
      globPatterns: ['**/*.{js,css,html,wasm,svg,png,webmanifest,txt}'],
      maximumFileSizeToCacheInBytes: 4_000_000,
      // One page, whatever is asked of it after the question mark. Anything else below is the host's.
      navigateFallback: 'index.html',
      navigateFallbackAllowlist: [/\/(index\.html)?(\?.*)?$/],
      // The very first visit works offline from the moment the copy is complete.
      clientsClaim: true,
      inlineWorkboxRuntime: true,
      runtimeCaching: [
        {
          // Always the host's own word; without network it has none, which is no fault.
          urlPattern: /\/version\.json$/,
          handler: 'NetworkOnly',
          options: {
            plugins: [
              {
                handlerDidError: () =>
                  Promise.resolve(new Response('null', { headers: { 'Content-Type': 'application/json' } })),
              },
            ],
          },
        },
        {
          urlPattern: /\/assets\/[^/]+\.(stl|obj)$/,
          handler: 'CacheFirst',
          options: { cacheName: 'sample-scans', expiration: { maxEntries: 24 } },
        },
      ],
    },
    integration: {
      beforeBuildServiceWorker: ({ workbox }) => {
        workbox.swDest = join(dirname(workbox.swDest), serviceWorkerFile());
      },
    },
  });
