// npm start: installs what is missing, builds the app and serves it on this machine only; prints the address.
import { ensureInstalled, root } from './setup.mjs';

ensureInstalled();
const { build, preview } = await import('vite');
const configFile = `${root}/vite.config.ts`;
console.log('Building the app ...');
await build({ configFile, logLevel: 'warn' });
// Not strict: when the port is taken, the next free one is used and printed.
const server = await preview({ configFile, preview: { host: '127.0.0.1', port: 4173, strictPort: false } });
const address = server.resolvedUrls?.local[0] ?? 'http://127.0.0.1:4173/';
console.log(`\nRisewright is at ${address}\nNothing leaves this machine. Stop it with Ctrl+C.`);
