import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

export interface StaticHost {
  /** Where the page is, with a slash at its end. */
  url: string;
  port: number;
  /** Paths that were asked for, newest last. */
  asked: string[];
  /** From now on these files are served at the same address. */
  serve: (folder: string) => void;
  close: () => Promise<void>;
}

/** Files in a sub-folder and nothing else: no header that a plain web host would not send. */
export async function staticHost(
  folder: string,
  { at = '/', headers = {} }: { at?: string; headers?: Record<string, string> } = {},
): Promise<StaticHost> {
  const asked: string[] = [];
  let root = folder;
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://host').pathname);
    asked.push(path);
    const file = path.startsWith(at) ? fileIn(root, path.slice(at.length)) : undefined;
    if (file === undefined) {
      response.writeHead(404, { 'Content-Type': 'text/plain' }).end('Not here.');
      return;
    }
    const type = TYPES[extname(file)] ?? 'application/octet-stream';
    response.writeHead(200, { 'Content-Type': type, ...headers });
    createReadStream(file).pipe(response);
  });
  const port = await listening(server);
  return {
    url: `http://127.0.0.1:${port}${at}`,
    port,
    asked,
    serve: (next) => {
      root = next;
    },
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

function fileIn(root: string, path: string): string | undefined {
  const file = join(root, normalize(path === '' ? 'index.html' : path));
  return file.startsWith(root) && existsSync(file) && statSync(file).isFile() ? file : undefined;
}

const listening = (server: Server): Promise<number> =>
  new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => resolve((server.address() as AddressInfo).port));
  });
