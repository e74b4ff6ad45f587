import { createServer, request as ask, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** Everything that a browser asks the network for: it is the browser's proxy, so that workers, prefetching and the browser itself go through it. */
export interface RequestLog {
  /** To give to the browser as its proxy. */
  server: string;
  /** Addresses as they were asked for, newest last; a secure one by its host and port. */
  asked: string[];
  close: () => Promise<void>;
}

/** Passes on what is asked of `own`, and writes down and refuses all else. */
export async function requestLog(own: string): Promise<RequestLog> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const url = request.url ?? '';
    asked.push(url);
    if (url.startsWith(own)) passOn(url, request, response);
    else response.writeHead(403, { 'Content-Type': 'text/plain' }).end('Not here.');
  });
  server.on('connect', (request, socket) => {
    asked.push(`connect ${request.url}`);
    socket.end('HTTP/1.1 403 Forbidden\r\n\r\n');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    server: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    asked,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

function passOn(url: string, { method, headers }: IncomingMessage, response: ServerResponse): void {
  ask(url, { ...(method === undefined ? {} : { method }), headers }, (answer) => {
    response.writeHead(answer.statusCode ?? 502, answer.headers);
    answer.pipe(response);
  })
    .on('error', () => response.destroy())
    .end();
}
