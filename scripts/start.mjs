// npm start: installs what is missing, builds the app and serves it on this machine only; prints the address.
// npm start -- --lan serves it to the network as well, and says what plain http takes away there.
import { existsSync } from 'node:fs';
import { readStart, servedWords, USUAL_PORT } from './startOptions.mjs';
import { ensureInstalled, root } from './setup.mjs';

const { lan, built, wrong } = readStart(process.argv.slice(2), process.env);
if (wrong !== undefined) {
  console.error(wrong);
  process.exit(2);
}
ensureInstalled();
const { build, preview } = await import('vite');
const configFile = `${root}/vite.config.ts`;
if (!built || !existsSync(`${root}/dist/app/index.html`)) {
  console.log('Building the app ...');
  await build({ configFile, logLevel: 'warn' });
}
// Not strict: when the port is taken, the next free one is used and printed.
const host = lan ? '0.0.0.0' : '127.0.0.1';
const server = await preview({ configFile, preview: { host, port: USUAL_PORT, strictPort: false } });
const { port } = server.httpServer.address();
console.log(`\n${servedWords({ port, network: server.resolvedUrls?.network ?? [], lan })}`);
